import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { assembleCourse } from '../../src/golf/course/assemble-course.ts'
import { REFERENCE_DAY } from '../../src/golf/course/day.ts'
import { holeFromCourse } from '../../src/golf/course/hole-from-course.ts'
import { completePlayer } from '../../src/golf/player/complete-player.ts'
import { parsePlayer } from '../../src/golf/player/parse-player.ts'
import { rulesOfThumb } from '../../src/golf/strategy/rules-of-thumb.ts'
import { readSource } from '../../src/outside/formats/read-source.ts'

// The tenth of the example course has a burn across the line 60 m before the pin (docs/method.md, "Rules of thumb").

const reading = readSource(readFileSync('examples/sandrel-ness.course.geojson'), 'sandrel-ness')
const { course } = assembleCourse(reading.features, reading)
const hole = holeFromCourse(course, '10', {})
const player = completePlayer(
  parsePlayer(readFileSync('examples/aldous-brack.player.json', 'utf8'), 'aldous-brack'),
)
// Cells that hold the burn, which is 9 m wide, and few strikes: with 3 m and all of them the rule turns 1 m further out.
const thumb = rulesOfThumb({
  courseName: course.name,
  hole,
  player,
  day: REFERENCE_DAY,
  lies: ['fairway'],
  cellMetres: 6,
  quadrature: { good: 24, mishit: 8 },
})
const fairway = thumb.lies.find(({ lie }) => lie === 'fairway')

describe('rules of thumb on an example hole', () => {
  it('finds a rule that is right at one distance and wrong 30 m nearer, with both distances', () => {
    const rule = fairway?.rules.find(({ rule }) => rule === 'short-of-water')
    expect(rule?.hazard).toBe('burn')
    const at = (metres: number): string | undefined =>
      rule?.bands.find(({ from_m, to_m }) => metres <= from_m + 0.5 && metres >= to_m - 0.5)?.verdict
    expect([230, 200].map(at)).toEqual(['right', 'wrong'])
    expect(rule?.turns).toHaveLength(1)
    const [turn] = rule?.turns ?? []
    expect((turn?.right_m ?? 0) - (turn?.wrong_m ?? 0)).toBeLessThan(30)
    expect(turn?.at_m).toBeLessThan(turn?.right_m ?? 0)
    expect(turn?.at_m).toBeGreaterThan(turn?.wrong_m ?? 0)
  })

  it('prices every band on the side of its verdict, and by at least what is too close to call', () => {
    for (const { rules } of thumb.lies)
      for (const { bands } of rules)
        for (const { verdict, saves, from_m, to_m } of bands) {
          expect(from_m).toBeGreaterThanOrEqual(to_m)
          if (verdict === 'right') expect(saves.least).toBeGreaterThanOrEqual(0.03)
          if (verdict === 'wrong') expect(saves.most).toBeLessThanOrEqual(-0.03)
          if (verdict === 'indifferent') expect(Math.max(-saves.least, saves.most)).toBeLessThan(0.03)
        }
  })

  it('goes for the green from somewhere on, never lays up nearer, and then plays to a number', () => {
    const green = fairway?.go.find(({ over }) => over === null)
    expect(green?.switches.map(({ to }) => to)).toEqual(['go'])
    const at = green?.switches[0]?.at_m ?? Number.NaN
    for (const { from_m, number } of fairway?.places ?? [])
      expect(number === 'layup', String(from_m)).toBe(from_m > at + 0.5)
  })

  it('draws both choices as curves, the lower of which is what the best stroke costs', () => {
    const green = fairway?.go.find(({ over }) => over === null)
    const best = new Map(fairway?.places.map(({ from_m, strokes }) => [from_m, strokes]))
    expect(green?.curve.length).toBe(best.size)
    for (const { from_m, go, lay_up } of green?.curve ?? [])
      expect(Math.min(go ?? Number.POSITIVE_INFINITY, lay_up ?? Number.POSITIVE_INFINITY)).toBe(
        best.get(from_m),
      )
  })

  it('goes over the burn from where staying short of it turns wrong', () => {
    const burn = fairway?.go.find(({ over }) => over === 'burn')
    expect(burn?.switches.map(({ to }) => to)).toEqual(['go'])
    const [turn] = fairway?.rules.find(({ rule }) => rule === 'short-of-water')?.turns ?? []
    expect(Math.abs((burn?.switches[0]?.at_m ?? 0) - (turn?.at_m ?? 0))).toBeLessThan(10)
  })

  it('knows what is left best: every leave costs more than a shorter one but where it says so', () => {
    const { strokes, worseThanLonger } = thumb.leave
    expect(strokes.length).toBeGreaterThan(12)
    const excused = new Set(worseThanLonger.map(({ leave_m }) => leave_m))
    for (const [index, { leave_m, strokes: here }] of strokes.entries())
      if (!excused.has(leave_m))
        expect(here).toBeLessThan(Math.min(...strokes.slice(0, index).map((one) => one.strokes)) + 0.03)
  })
})

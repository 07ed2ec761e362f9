import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { assembleCourse } from '#golf/course/assemble-course.ts'
import { checkCourse } from '#golf/course/check-course.ts'
import { greenSurface } from '#golf/course/green-surface.ts'
import { greenSurvey } from '#golf/course/green-survey.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import { BLANK_GREEN, encodeGreenNote, parseGreenNote } from './green-note.ts'
import { parseHoleTable } from './hole-table.ts'

/** A straight hole in metres: the green is 30 deep and 24 wide, its front 300 from the tee, its middle on the line. */
function table(note: string, more = ''): string {
  return `hole,what,side,from_m,to_m,near_m,far_m,note\n3,tee,,0,,,,\n${more}3,green,,300,330,,24,"par 4, ${note}"\n`
}

function read(text: string): {
  readonly hole: Hole
  readonly faults: readonly { code: string; place: string; message: string }[]
} {
  const reading = parseHoleTable(text, 'typed.csv')
  const { course, faults } = assembleCourse(reading.features, reading)
  return { hole: holeFromCourse(course, '3'), faults: [...reading.faults, ...faults, ...checkCourse(course)] }
}

describe('the slope of a green in a hole table', () => {
  it('gives a typed fall back as it was typed, by side or by degrees', () => {
    for (const [toward, degrees] of [
      ['front', 180],
      ['back right', 45],
      ['200', 200],
      ['312.5 deg', 312.5],
    ] as const) {
      const { hole, faults } = read(table(`fall 2.5 % toward ${toward}`))
      const survey = greenSurvey(hole)
      expect(survey?.source).toBe('mean-fall')
      expect(survey?.fallPercent).toBe(2.5)
      expect(survey?.fallTowardDegrees).toBeCloseTo(degrees, 9)
      expect(faults.filter(({ place }) => place === 'line 3')).toEqual([])
    }
  })

  it('counts the side from the line of approach behind a bend', () => {
    const { hole } = read(table('fall 2 toward front', '3,bend,right,150,,,,60 deg\n'))
    expect(greenSurvey(hole)?.fallTowardDegrees).toBeCloseTo(180, 6)
    // The last leg runs 60 degrees to the right of the first, so that the front lies towards 240.
    expect(hole.greenFallTowardDegrees + hole.bearingDegrees).toBeCloseTo(240, 6)
  })

  it('gives back the fall of a plane from heights on it', () => {
    // A plane z = a + b·on + c·beside falls √(b² + c²) towards −(b, c): the yardstick is the plane itself.
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 6, noNaN: true }),
        fc.double({ min: 0, max: 359, noNaN: true }),
        (percent, degrees) => {
          const [ahead, aside] = [Math.cos(degreesToRadians(degrees)), Math.sin(degreesToRadians(degrees))]
          const heights = [
            [1, 0],
            [15, -11],
            [14, 10.5],
            [29, 2],
            [20, 5],
            [7, -4],
          ].map(([on = 0, beside = 0]) => ({
            on: String(on),
            beside: String(beside),
            height: (140 - percent * (on * ahead + beside * aside)).toFixed(9),
          }))
          const survey = greenSurvey(read(table(encodeGreenNote({ ...BLANK_GREEN, heights }, ''))).hole)
          expect(survey?.source).toBe('spot-heights')
          expect(survey?.spots).toBe(6)
          expect(survey?.fallPercent).toBeCloseTo(percent, 6)
          const apart = Math.abs((survey?.fallTowardDegrees ?? 0) - degrees)
          expect(Math.min(apart, 360 - apart)).toBeLessThan(1e-4)
        },
      ),
      { numRuns: 25 },
    )
  })

  it('makes a step of a tier: level before and behind it, as high as was typed, steepest in its middle', () => {
    const { hole, faults } = read(table('tier 16:40:5'))
    expect(faults.filter(({ place }) => place === 'line 3')).toEqual([])
    const { heightAt, gradientAt, source } = greenSurface(hole)
    expect(source).toBe('grid')
    const rise = heightAt(0, 324) - heightAt(0, 306)
    expect(rise).toBeCloseTo(0.4, 4)
    for (const [x, y] of [
      [-6, 308],
      [5, 311],
      [0, 321],
      [4, 325],
    ] as const)
      expect(Math.hypot(...gradientAt(x, y))).toBeLessThan(0.002)
    // A step is 3t² − 2t³ from foot to head. Cells of 1 m tell the mean slope over the two about its middle.
    const step = (t: number): number => 3 * t ** 2 - 2 * t ** 3
    expect(gradientAt(0, 316)[1]).toBeCloseTo((0.4 * (step(0.7) - step(0.3))) / 2, 5)
    expect(gradientAt(0, 316)[0]).toBeCloseTo(0, 6)
  })

  it('keeps the fall of the ground between steps', () => {
    const { heightAt, gradientAt } = greenSurface(read(table('fall 2 toward front, tier 16:40:5')).hole)
    expect(gradientAt(0, 307)[1]).toBeCloseTo(0.02, 3)
    expect(heightAt(0, 324) - heightAt(0, 306)).toBeCloseTo(0.4 + 0.02 * 18, 3)
  })

  it.each([
    ['fall x toward front', '“fall” is “x”, which is no number'],
    ['fall 2 toward the sea', '“toward” is “the sea”'],
    ['fall 45 toward front', '“fall” is 45; it lies between 0 and 30'],
    ['tier 70:40:5', 'a tier lies before the front or behind the back'],
    ['tier 12', null],
    ['tier 12:?:4', 'tier 1: “up” is blank'],
    ['heights 2:0:0 12:1o:4 20:3:9 9:-6:2', 'height 2: “beside” is “1o”, which is no number'],
    ['heights 2:0', 'height 1: “height” is blank'],
  ])('says what is wrong with “%s”, where, and keeps the rest', (note, words) => {
    const { hole, faults } = read(table(note))
    const wrong = faults.filter(({ code }) => code === 'MAR-IMPORT-039')
    expect(wrong.map(({ message, place }) => [message.includes(words ?? ''), place])).toEqual(
      words === null ? [] : [[true, 'line 3']],
    )
    expect(hole.green).not.toBeNull()
  })

  it('uses the heights that can be read beside one that cannot', () => {
    const survey = greenSurvey(read(table('heights 2:0:0 12:1o:4 28:3:26 14:-9:12')).hole)
    expect(survey?.spots).toBe(3)
  })
})

describe('the note of a green', () => {
  const text = fc.stringMatching(/^[0-9a-z.,:; -]{0,6}$/)
  it('is read back as it was typed, signs that part it apart', () => {
    fc.assert(
      fc.property(
        fc.record({
          fall: text,
          toward: fc.constantFrom('', 'front left', 'back', '200'),
          tiers: fc.array(fc.record({ on: text, rise: text, over: text }), { maxLength: 3 }),
          heights: fc.array(fc.record({ on: text, beside: text, height: text }), { maxLength: 4 }),
        }),
        (green) => {
          const once = parseGreenNote(encodeGreenNote(green, 'the shelf'))
          expect(once.words).toBe('the shelf')
          expect(parseGreenNote(encodeGreenNote(once.green, once.words))).toEqual(once)
          if (/^[0-9.]+$/.test(green.fall)) expect(once.green.fall).toBe(green.fall)
          expect(once.green.toward).toBe(green.toward)
          const filled = green.heights.filter((row) => Object.values(row).some((cell) => cell.trim() !== ''))
          expect(once.green.heights).toHaveLength(filled.length)
        },
      ),
    )
  })
})

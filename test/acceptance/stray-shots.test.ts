import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { assembleCourse } from '#golf/course/assemble-course.ts'
import { REFERENCE_DAY } from '#golf/course/day.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { bagOfShots } from '#golf/player/bag-of-shots.ts'
import { completePlayer } from '#golf/player/complete-player.ts'
import { type LearnedPlayer, learnPlayer } from '#golf/player/learn-player.ts'
import { parsePlayer } from '#golf/player/parse-player.ts'
import type { Player } from '#golf/player/player.ts'
import { questionsOfShots } from '#golf/player/questions-of-shots.ts'
import { holeGround, holeModel } from '#golf/strategy/hole-model.ts'
import { holeProblem } from '#golf/strategy/hole-problem.ts'
import { placeAt } from '#golf/strategy/places.ts'
import { shotsOf } from '#golf/strategy/shots.ts'
import { solveShortestPath } from '#numbers/solver/solve-shortest-path.ts'
import { readSource } from '#outside/formats/read-source.ts'
import { readShotTables, type ShotReading } from '#outside/formats/shot-table.ts'

// What goes wrong with a season that people write down themselves: it moves no club by as much as a yard, or it is told.

const METRES_PER_YARD = 0.9144
const file = parsePlayer(readFileSync('examples/wren.player.json', 'utf8'), 'wren.player.json')
const season = readFileSync('examples/wren.shots.csv', 'utf8').trimEnd().split('\n')

function learned(rows: readonly string[], who = file): { reading: ShotReading; after: LearnedPlayer } {
  const reading = readShotTables([{ text: rows.join('\n'), name: 'season.csv' }], null)
  const bag = bagOfShots(who, reading.shots)
  return { reading, after: learnPlayer(completePlayer(bag.file), bag.shots) }
}

const clean = learned(season)

/** The most that the carry of any club differs from the clean season's, yards. */
function mostMoved({ after }: ReturnType<typeof learned>): number {
  const carries = new Map(clean.after.player.clubs.map(({ name, carryMetres }) => [name, carryMetres]))
  const moves = after.player.clubs.map(({ name, carryMetres }) =>
    Math.abs(carryMetres - (carries.get(name) ?? Number.NaN)),
  )
  return Math.max(...moves) / METRES_PER_YARD
}

const course = assembleCourse(
  readSource(readFileSync('examples/sandrel-ness.course.geojson'), 'sandrel-ness.course.geojson').features,
  {},
).course
const ground = holeGround(holeFromCourse(course, '7', {}), 20)

const HIT = new Set(clean.reading.shots.map(({ club }) => club))
/** The clubs of the season alone: they keep this to seconds. */
const withClubsHit = (player: Player): Player => ({
  ...player,
  clubs: player.clubs.filter(({ name }) => HIT.has(name)),
})
const first = holeModel(ground, withClubsHit(clean.after.player), REFERENCE_DAY)

/** Expected strokes from the tee of a par 4, by the best plan for who was learned; large cells and few strikes, the same for all. */
function strokesOf({ after }: { readonly after: Pick<LearnedPlayer, 'player'> }): number {
  const player = withClubsHit(after.player)
  const model = holeModel(ground, player, REFERENCE_DAY, first.flights, first.nearGreen)
  const problem = holeProblem(model, { quadrature: { good: 12, mishit: 4 }, shots: shotsOf(player) })
  return solveShortestPath(problem, { tolerance: 1e-4 }).values[placeAt(model.places, 0, 0)] as number
}

describe('a season with slips of the pen', () => {
  it('is clean to begin with', () => {
    expect(clean.reading.faults).toEqual([])
    expect(clean.reading.shots).toHaveLength(season.length - 1)
  })

  it.each([
    ['a topped drive', '2026-08-02,driver,tee,8,40,3,,'],
    ['a misread distance', '2026-08-02,7-iron,fairway,210,,0,,'],
    ['another club', '2026-08-02,sand-wedge,fairway,150,,0,,'],
    ['a ball far off the line', '2026-08-02,9-iron,fairway,60,,58,,'],
  ])('is hardly moved by %s', (_title, row) => {
    expect(mostMoved(learned([...season, row]))).toBeLessThan(1)
  })

  it('leaves the plan of a hole where it was, with a topped drive and a misread distance in it', () => {
    const before = strokesOf(clean)
    const strays = ['2026-08-02,driver,tee,8,40,3,,', '2026-08-02,7-iron,fairway,210,,0,,']
    expect(Math.abs(strokesOf(learned([...season, ...strays])) - before)).toBeLessThan(0.02)
  })

  it('is not moved at all by a batch that was pasted twice, which is told', () => {
    const twice = learned([...season, ...season.slice(40, 90)])
    expect(twice.reading).toMatchObject({ repeated: 50 })
    expect(twice.reading.faults.map(({ code }) => code)).toEqual(['MAR-SHOTS-014'])
    expect(mostMoved(twice)).toBe(0)
  })

  it('is asked about where three of its days were written in metres', () => {
    const days = new Set(season.slice(1).map((row) => row.slice(0, 10)))
    const inMetres = [...days].slice(3, 6)
    const mixed = season.map((row) => {
      const [date = '', club = '', lie = '', carry = '', total = '', ...rest] = row.split(',')
      if (!inMetres.includes(date)) return row
      const metres = (yards: string): string =>
        yards === '' ? '' : String(Math.round(Number(yards) * METRES_PER_YARD))
      return [date, club, lie, metres(carry), metres(total), ...rest].join(',')
    })
    const { faults } = learned(mixed).reading
    expect(faults.map(({ code }) => code)).toEqual(['MAR-SHOTS-016'])
    for (const day of inMetres) expect(faults[0]?.message).toContain(day)
  })

  it('is asked about when a right-hander’s file is learned for a left-hander of whom no side was known', () => {
    const bag = bagOfShots({ ...file, hand: 'left' }, clean.reading.shots)
    const before = completePlayer(bag.file)
    const asked = questionsOfShots({ before, bag, learned: learnPlayer(before, bag.shots) })
    expect(asked).toEqual([expect.stringContaining('Were they hit left-handed')])
  })

  it('is told to have changed its side when the file of another hand is read', () => {
    const sided = {
      ...file,
      clubs: file.clubs.map((club) => ({ ...club, left_share: 0.8, right_share: 1.25 })),
    }
    const mirrored = season.map((row, index) => {
      const cells = row.split(',')
      return index === 0 ? row : cells.map((cell, at) => (at === 5 ? String(-Number(cell)) : cell)).join(',')
    })
    const chanceOf = (rows: readonly string[]): number =>
      learned(rows, sided).after.clubs.find(({ name }) => name === '7-iron')?.numbers.side.chanceOfChange ?? 0
    expect(chanceOf(mirrored)).toBeGreaterThan(0.8)
    expect(chanceOf(season)).toBeLessThan(0.5)
  })
})

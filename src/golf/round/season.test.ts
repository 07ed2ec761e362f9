import { describe, expect, it } from 'vitest'
import type { Lie } from '#golf/player/player.ts'
import { normalQuantile } from '#numbers/statistics/normal.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import type { StrokeSplit } from './recap.ts'
import { recapRound } from './recap-round.ts'
import { type Season, seasonOf } from './season.ts'
import { seasonWords } from './season-words.ts'
import { struckHole, struckStroke } from './struck-holes.fixture.ts'

const player = { putting: { directionSdDegrees: 1.6, distanceSdShare: 0.08 } }
const ROUNDS = 20

/** Strokes of a season by part and lie, and by how much each is worse than the profile. */
type Played = readonly (readonly [part: StrokeSplit['part'], lie: Lie, count: number, worse: number])[]
const SOUND: Played = [
  ['tee', 'tee', 280, 0],
  ['approach', 'fairway', 300, 0],
  ['approach', 'bunker', 11, 0],
  ['approach', 'trees', 12, 0],
  ['around', 'rough', 120, 0],
  ['around', 'bunker', 10, 0],
]

function season(played: Played, random: () => number, sd = 0.5): Season {
  const strokes = played.flatMap(([part, lie, count, worse]) =>
    Array.from({ length: count }, () =>
      struckStroke(part, {
        from: { point: [0, 0], lie, ground: 'rough' },
        execution: worse + sd * normalQuantile(random()),
      }),
    ),
  )
  const rounds = Array.from({ length: ROUNDS }, (_, round) =>
    recapRound([struckHole(strokes.filter((_, index) => index % ROUNDS === round))]),
  )
  return seasonOf(rounds, player)
}

const worseFrom = (lie: Lie, worse: number): Played =>
  SOUND.map(([part, from, count]) => [part, from, count, from === lie ? worse : 0])

describe('a season', () => {
  it('tells about one of twenty sound players of a part that is worse', () => {
    const random = seededGenerator(31)
    const named = Array.from({ length: 200 }, () => season(SOUND, random)).filter(
      ({ findings }) => findings.length > 0,
    ).length
    // Ten of 200 and three standard errors; what is left for the model's own grid makes it stricter.
    expect(named).toBeLessThan(10 + 3 * Math.sqrt(9.5))
    expect(named).toBeGreaterThan(1)
  })

  it('counts every stroke from sand as one part, and none of them among the strokes to the green', () => {
    const { parts, sand } = season(SOUND, seededGenerator(4))
    const count = (name: string): number => parts.find(({ part }) => part === name)?.count ?? Number.NaN
    expect(count('sand')).toBe(21)
    expect(count('approach')).toBe(300)
    expect(count('recovery')).toBe(12)
    expect(count('around')).toBe(120)
    expect(sand.map(({ where, count: strokes }) => [where, strokes])).toEqual([
      ['beside-green', 10],
      ['further', 11],
    ])
    const total = sand.reduce((sum, { strokes }) => sum + strokes, 0)
    expect(total).toBeCloseTo(parts.find(({ part }) => part === 'sand')?.strokes ?? Number.NaN, 12)
  })

  it('names sand of who loses 0.6 with each stroke from it, and says where it lies', () => {
    const told = season(worseFrom('bunker', 0.6), seededGenerator(12))
    const [first] = told.findings
    expect(first?.kind === 'part' && first.part.part).toBe('sand')
    expect(seasonWords(told).join(' ')).toMatch(
      /Strokes from sand: 0\.\d[05] of a stroke a round more than .* Of it \+0\.\d[05] a round beside the green \(10 strokes\), \+0\.\d[05] a round from further away \(11 strokes\)\./,
    )
  })

  it('does not tell sand apart by where it lies from too few strokes', () => {
    const few: Played = [
      ['approach', 'bunker', 4, 0.6],
      ['around', 'bunker', 30, 0.6],
    ]
    const words = seasonWords(season(few, seededGenerator(2))).join(' ')
    expect(words).toContain('Strokes from sand')
    expect(words).not.toContain('Of it')
  })

  it('gives few strokes more of the chance of a false alarm, and no chance to parts that cannot be named', () => {
    // The same mean and spread: in standard errors the whisker of few strokes is the shorter one.
    const { parts } = season(SOUND, seededGenerator(9))
    const errors = new Map(
      parts.map(({ part, count, sd, strokes, low }) => [
        part,
        (strokes - low - 0.01 * count) / (sd * Math.sqrt(count)),
      ]),
    )
    expect(errors.get('sand')).toBeLessThan(errors.get('around') as number)
    expect(errors.get('around')).toBeLessThan(errors.get('approach') as number)
    const chances = (['tee', 'approach', 'recovery', 'around', 'sand'] as const).map(
      (part) => 0.5 * erfc((errors.get(part) as number) / Math.SQRT2),
    )
    expect(chances.reduce((sum, one) => sum + one, 0)).toBeCloseTo(0.05, 3)
  })
})

/** Complementary error function: Abramowitz & Stegun 7.1.26, to 1.5e-7. */
function erfc(x: number): number {
  const t = 1 / (1 + 0.3275911 * x)
  const terms = [0.254829592, -0.284496736, 1.421413741, -1.453152027, 1.061405429]
  return terms.reduceRight((sum, term) => t * (term + sum), 0) * Math.exp(-x * x)
}

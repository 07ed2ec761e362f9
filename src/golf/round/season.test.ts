import { describe, expect, it } from 'vitest'
import type { Lie } from '#golf/player/player.ts'
import { puttingValues } from '#golf/player/putting-values.ts'
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

describe('the whisker of a part', () => {
  it('is as wide as the profile says strokes vary, however much worse they are', () => {
    const told = (executionVariance: number | null) => {
      const random = seededGenerator(8)
      // Two in five stay in the sand: that is a fault, and makes strokes vary more.
      const strokes = Array.from({ length: 30 }, () =>
        struckStroke('approach', {
          from: { point: [0, 0], lie: 'bunker', ground: 'bunker' },
          execution: random() < 0.4 ? 1 : 0,
          executionVariance,
        }),
      )
      return seasonOf([recapRound([struckHole(strokes)])], player).parts.find(({ part }) => part === 'sand')
    }
    const [known, unknown] = [told(0.09), told(null)]
    const whisker = (one: typeof known): number =>
      one === undefined ? Number.NaN : one.strokes - one.low - 0.01 * one.count
    // Only sand is named, so one in twenty is all its own: 1.645 standard deviations of thirty strokes of 0.3.
    expect(whisker(known)).toBeCloseTo(normalQuantile(0.95) * 0.3 * Math.sqrt(30), 9)
    expect(whisker(unknown)).toBeGreaterThan(whisker(known))
    expect(known?.sd).toBe(unknown?.sd)
  })

  it('of three-putts and of putts that are holed is what they vary by for who putts as the profile says', () => {
    const { expected, shares } = puttingValues(player)
    const holes = 240
    const random = seededGenerator(77)
    const metres = [1, 3, 6, 10, 15, 20]
    const seasons = Array.from({ length: 300 }, () => {
      const putted = Array.from({ length: holes }, (_, index) => {
        const far = metres[index % metres.length] as number
        const [one, two] = shares(far)
        const drawn = random()
        const count = drawn < one ? 1 : drawn < one + two ? 2 : 3
        const from = { point: [0, 0], lie: 'green', ground: 'green' } as const
        return struckHole([struckStroke('putting', { from, count, used: count, before: expected(far) })])
      })
      const { parts } = seasonOf([recapRound(putted)], player)
      return ['holing-putts', 'three-putts'].map((name) => parts.find(({ part }) => part === name))
    })
    for (const which of [0, 1]) {
      const sums = seasons.map((parts) => parts[which]?.strokes ?? Number.NaN)
      const mean = sums.reduce((sum, one) => sum + one, 0) / sums.length
      const sd = Math.sqrt(sums.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (sums.length - 1))
      const [one] = seasons.map((parts) => parts[which])
      // Two parts of as many holes share one in twenty.
      const said = ((one?.strokes ?? 0) - (one?.low ?? 0) - 0.01 * holes) / normalQuantile(0.975)
      // The standard deviation of 300 numbers is known to 4 %.
      expect(Math.abs(sd / said - 1)).toBeLessThan(0.12)
    }
  })
})

/** Complementary error function: Abramowitz & Stegun 7.1.26, to 1.5e-7. */
function erfc(x: number): number {
  const t = 1 / (1 + 0.3275911 * x)
  const terms = [0.254829592, -0.284496736, 1.421413741, -1.453152027, 1.061405429]
  return terms.reduceRight((sum, term) => t * (term + sum), 0) * Math.exp(-x * x)
}

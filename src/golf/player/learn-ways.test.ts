import { describe, expect, it } from 'vitest'
import { normalQuantile } from '#numbers/statistics/normal.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { completePlayer } from './complete-player.ts'
import { LEARNED } from './learn/learned-numbers.ts'
import { type LearnedClub, learnPlayer } from './learn-player.ts'
import { mirrorPlayer } from './mirror-player.ts'
import type { Player } from './player.ts'
import type { ShotRecord, StruckWay } from './shot-record.ts'

// Strokes of which only the end is known, learned as all the ways in which they may have been struck (docs/method.md).

const player: Player = completePlayer({
  name: 'Test',
  hand: 'right',
  handicapIndex: 15,
  sex: 'male',
  bag: 'as-listed',
  clubs: [
    { name: 'driver', shots: 0, lies: {} },
    { name: '7-iron', shots: 0, lies: {} },
  ],
  shortGame: {},
  putting: {},
})
const [driver] = player.clubs
const CARRY = driver?.carryMetres ?? 0

const uniform = seededGenerator(5)
const normal = (): number => normalQuantile(uniform())
/** Carries and directions of good strikes, of a spread of 7 % and 6°. */
const struck = Array.from({ length: 120 }, () => ({
  carry: CARRY * (1 + 0.07 * normal()),
  off: 6 * normal(),
}))

function record(carry: number, degrees: number): ShotRecord {
  const radians = (degrees * Math.PI) / 180
  return {
    ...{ date: null, club: 'driver', lie: 'tee', totalMetres: null, strike: null },
    carryMetres: carry * Math.cos(radians),
    offlineMetres: carry * Math.sin(radians),
  }
}

function endOnly(ways: readonly Partial<StruckWay>[]): ShotRecord {
  const usual = { carryPerRun: 0, directionDegrees: 0, ifGood: 1, ifMishit: 1, carryMetres: CARRY }
  return {
    ...record(0, 0),
    carryMetres: null,
    offlineMetres: null,
    ways: ways.map((way) => ({ ...usual, ...way })),
  }
}

const driverOf = (shots: readonly ShotRecord[], of: Player = player): LearnedClub =>
  learnPlayer(of, shots).clubs[0] as LearnedClub

describe('a stroke that can only have been struck in one way', () => {
  it('is learned from as the same shot measured, to the last digit', () => {
    const measured = driverOf(struck.map(({ carry, off }) => record(carry, off)))
    const ended = driverOf(
      struck.map(({ carry, off }) => endOnly([{ carryMetres: carry, directionDegrees: off }])),
    )
    for (const number of LEARNED) {
      expect(ended.numbers[number].after, number).toBeCloseTo(measured.numbers[number].after, 9)
      expect(ended.numbers[number].ninety[0], number).toBeCloseTo(measured.numbers[number].ninety[0], 9)
    }
  })

  it('says nothing of the direction where nobody knows the line, again as the same shot measured', () => {
    const measured = driverOf(struck.map(({ carry }) => ({ ...record(carry, 0), offlineMetres: null })))
    const ended = driverOf(
      struck.map(({ carry }) => endOnly([{ carryMetres: carry, directionDegrees: null }])),
    )
    for (const number of LEARNED)
      expect(ended.numbers[number].after, number).toBeCloseTo(measured.numbers[number].after, 9)
  })
})

describe('a stroke that can have been struck in many ways', () => {
  /** Ends that were written down 8 m and 3° wrong, and ways all about them. */
  const written = struck.map(({ carry, off }) => ({ carry: carry + 9 * normal(), off: off + 3 * normal() }))
  const steps = [-3, -2, -1, 0, 1, 2, 3]
  const around = written.map(({ carry, off }) =>
    endOnly(
      steps.flatMap((a) =>
        steps.map((b) => {
          const like = Math.exp(-(a * a + b * b) / 2)
          return { carryMetres: carry + 9 * a, directionDegrees: off + 3 * b, ifGood: like, ifMishit: like }
        }),
      ),
    ),
  )

  it('does not make the pattern wider by what was badly written down', () => {
    const asWritten = driverOf(written.map(({ carry, off }) => record(carry, off))).numbers
    const known = driverOf(struck.map(({ carry, off }) => record(carry, off))).numbers
    const learned = driverOf(around).numbers
    // 3° and 6° are 6.7° together, 9 m and 7 % of the carry 8.7 %: the sum of squares.
    expect(asWritten.directionSd.after).toBeGreaterThan(1.07 * known.directionSd.after)
    for (const [number, ratio] of [
      ['directionSd', 3 / 6],
      ['carrySd', 9 / (0.07 * CARRY)],
    ] as const) {
      const { after, ninety } = learned[number]
      // How far errors of this size let the spread of so many shots be off, by the variance of a sum of squares.
      const error = Math.sqrt((ratio ** 2 + ratio ** 4 / 2) / struck.length)
      expect(Math.abs(after / known[number].after - 1), number).toBeLessThan(2 * error)
      // Less is known than from the strikes themselves.
      const width = (of: readonly [number, number]): number => of[1] - of[0]
      expect(width(ninety), number).toBeGreaterThan(width(known[number].ninety))
    }
  })

  it('is learned in a mirror for a left-hander', () => {
    const turned = around.map((shot) => ({
      ...shot,
      ways: shot.ways?.map((way) => ({ ...way, directionDegrees: -(way.directionDegrees ?? 0) })) ?? [],
    }))
    const { side, carry } = driverOf(around).numbers
    const mirrored = driverOf(turned, mirrorPlayer(player)).numbers
    expect(mirrored.carry.after).toBe(carry.after)
    expect(mirrored.side.after).toBeCloseTo(1 - side.after, 12)
  })

  it('is not all short of the truth because half of the balls were seen to go too far to be found', () => {
    // Balls beyond 1.04 times the carry went into a pond there: all that is known is that they carried further.
    const pond = 1.04 * CARRY
    const beyond = Array.from({ length: 40 }, (_, k) => ({
      carryMetres: pond + (k + 0.5) * 1.5,
      directionDegrees: null,
    }))
    const seen = struck.map(({ carry }) =>
      carry > pond ? endOnly(beyond) : endOnly([{ carryMetres: carry, directionDegrees: null }]),
    )
    const known = driverOf(struck.map(({ carry }) => ({ ...record(carry, 0), offlineMetres: null }))).numbers
    const dry = seen.filter(({ ways }) => ways?.length === 1)
    expect(dry.length).toBeLessThan(0.85 * seen.length)
    const sd = (known.carry.ninety[1] - known.carry.ninety[0]) / 3.3
    expect(Math.abs(driverOf(seen).numbers.carry.after - known.carry.after)).toBeLessThan(0.7 * sd)
    expect(driverOf(dry).numbers.carry.after).toBeLessThan(known.carry.after - 2 * sd)
  })

  it('moves with the run of which nothing is known: how sure the carry is, the run must be', () => {
    const run = (driver?.totalMetres ?? 0) - CARRY
    const onFairway = driverOf(
      struck.map(({ carry }) => endOnly([{ carryMetres: carry, carryPerRun: 1 }])),
    ).numbers
    const known = driverOf(
      struck.map(({ carry }) => endOnly([{ carryMetres: carry, carryPerRun: 0 }])),
    ).numbers
    expect(onFairway.run.after / run).toBeCloseTo(1, 1)
    const width = ({ ninety: [low, high] }: LearnedClub['numbers']['carry']): number => high - low
    expect(width(onFairway.carry)).toBeGreaterThan(2 * width(known.carry))
    expect(width(onFairway.carry)).toBeGreaterThan(0.6 * width(onFairway.run))
  })
})

it('is not learned from where no strike ends so', () => {
  const learned = learnPlayer(player, [endOnly([])])
  expect(learned.unused).toEqual([{ index: 0, why: 'distance' }])
  expect(learned.player).toBe(player)
})

import { describe, expect, it } from 'vitest'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { completePlayer } from './complete-player.ts'
import { learnLoggedNearGreen } from './learn-logged-near-green.ts'
import type { LoggedPutt, LoggedShortStroke } from './logged-near-green.ts'
import { parsePlayer } from './parse-player.ts'
import type { Player } from './player.ts'
import { puttOutcomes } from './putt-outcomes.ts'
import { puttingDistance } from './putting-distance.ts'
import { puttingValues, withReading } from './putting-values.ts'
import { shortGameValue } from './short-game-values.ts'
import { cheapestPace } from './struck-putts.ts'

const text = JSON.stringify({ schema: 'player/1', name: 'Ilo', hand: 'right', handicapIndex: 15 })
const before: Player = completePlayer(parsePlayer(text, 'test'))
const LENGTHS = [1, 1.5, 2, 3, 4, 6, 8, 11, 15] as const
const dated = { date: null } as const

/** A putter with other spreads than anybody thought. */
const truth: Player = {
  ...before,
  putting: {
    directionSdDegrees: 0.75 * before.putting.directionSdDegrees,
    distanceSdShare: 1.3 * before.putting.distanceSdShare,
  },
}

/** Putts of who is meant by `player`, counted: the number of them by the putting table's own shares. */
function counted(player: Player, each: number, next: () => number): LoggedPutt[] {
  const { shares } = puttingValues(player)
  return LENGTHS.flatMap((metres) => {
    const [one, two] = shares(metres)
    return Array.from({ length: each }, () => {
      const drawn = next()
      return { ...dated, metres, end: { putts: drawn < one ? 1 : drawn < one + two ? 2 : 3 } }
    })
  })
}

/** Putts of which every miss was measured: stops of the model of one putt, holed ones counted. */
function measured(player: Player, each: number, next: () => number): LoggedPutt[] {
  return LENGTHS.flatMap((metres) => {
    const past = cheapestPace(player.putting, metres)
    const { holed, restMetres, weight } = puttOutcomes(withReading(player.putting), metres, past)
    return Array.from({ length: each }, (): LoggedPutt => {
      let left = next() - holed
      if (left < 0) return { ...dated, metres, end: { putts: 1 } }
      const stop = weight.findIndex((chance) => {
        left -= chance
        return left < 0
      })
      return { ...dated, metres, end: { leftMetres: restMetres[Math.max(0, stop)] as number } }
    })
  })
}

describe('putts of rounds', () => {
  it('teach both spreads of a putter who is not who was thought, from numbers of putts alone', () => {
    const putts = counted(truth, 250, seededGenerator(3))
    const {
      directionSdDegrees,
      distanceSdShare,
      player,
      putts: used,
    } = learnLoggedNearGreen(before, {
      putts,
      strokes: [],
    })
    expect(used).toBe(putts.length)
    expect(directionSdDegrees.after / truth.putting.directionSdDegrees).toBeGreaterThan(0.93)
    expect(directionSdDegrees.after / truth.putting.directionSdDegrees).toBeLessThan(1.07)
    expect(truth.putting.distanceSdShare).toBeGreaterThan(distanceSdShare.ninety[0])
    expect(truth.putting.distanceSdShare).toBeLessThan(distanceSdShare.ninety[1])
    expect(before.putting.distanceSdShare).toBeLessThan(distanceSdShare.after)
    expect(player.guesses.has('putting.direction_sd_deg')).toBe(false)
    expect(player.shortGame).toEqual(before.shortGame)
  })

  it('teach pace sooner where what each left was written down', () => {
    const width = (putts: readonly LoggedPutt[]): number => {
      const [low, high] = learnLoggedNearGreen(before, { putts, strokes: [] }).distanceSdShare.ninety
      return high - low
    }
    const putts = measured(truth, 24, seededGenerator(6))
    const { distanceSdShare } = learnLoggedNearGreen(before, { putts, strokes: [] })
    expect(truth.putting.distanceSdShare).toBeGreaterThan(distanceSdShare.ninety[0])
    expect(truth.putting.distanceSdShare).toBeLessThan(distanceSdShare.ninety[1])
    expect(width(putts)).toBeLessThan(0.75 * width(counted(truth, 24, seededGenerator(6))))
  })

  it('count as many putts of a test day as they tell, so that the next ones are taken beside them', () => {
    const putts = counted(truth, 20, seededGenerator(9))
    const once = learnLoggedNearGreen(before, { putts, strokes: [] })
    const shots = once.player.putting.shots ?? 0
    expect(shots).toBeGreaterThan(20)
    expect(shots).toBeLessThan(putts.length)
    // What is learned from the same putts a second time moves less: the profile is surer.
    const twice = learnLoggedNearGreen(once.player, { putts, strokes: [] })
    const moved = (from: number, to: number): number => Math.abs(Math.log(to / from))
    expect(moved(once.directionSdDegrees.after, twice.directionSdDegrees.after)).toBeLessThan(
      0.8 * moved(before.putting.directionSdDegrees, once.directionSdDegrees.after),
    )
  })

  it('count half when they are a year older than the last', () => {
    const putts = counted(truth, 6, seededGenerator(4)).map((putt) => ({ ...putt, date: '2025-06-01' }))
    const last = { metres: 3, end: { putts: 1 } } as const
    const twiceOld = [...putts, ...putts, { ...last, date: '2026-06-01' }]
    const fresh = [...putts, { ...last, date: '2025-06-01' }]
    const [aged, young] = [twiceOld, fresh].map((all) =>
      learnLoggedNearGreen(before, { putts: all, strokes: [] }),
    )
    expect(aged?.directionSdDegrees.after).toBeCloseTo(young?.directionSdDegrees.after ?? Number.NaN, 9)
    expect(aged?.distanceSdShare.after).toBeCloseTo(young?.distanceSdShare.after ?? Number.NaN, 9)
  })

  it('say nothing when there are none', () => {
    const { player } = learnLoggedNearGreen(before, { putts: [], strokes: [] })
    expect(player).toEqual(before)
  })
})

describe('strokes near the green of rounds', () => {
  const worse: Player = {
    ...before,
    shortGame: { ...before.shortGame, strokesLost: before.shortGame.strokesLost + 0.25 },
  }
  const LIES = ['fairway', 'rough', 'bunker'] as const
  const METRES = [8, 18, 30] as const

  it('give the strokes lost that they cost when there are many, in closed form', () => {
    const strokes = LIES.flatMap((lie) =>
      METRES.flatMap((metres) => {
        const after = { puttMetres: puttingDistance(before, shortGameValue(worse, lie, metres) - 1) }
        const stroke: LoggedShortStroke = { ...dated, lie, metres, added: 0, used: 1, after }
        return Array.from({ length: 400 }, () => stroke)
      }),
    )
    const { strokesLost, shortShots } = learnLoggedNearGreen(before, { putts: [], strokes })
    // Within what a putting that is unsure by a quarter leaves open.
    expect(Math.abs(strokesLost.after - worse.shortGame.strokesLost)).toBeLessThan(0.03)
    expect(shortShots).toBe(strokes.length)
  })

  it('are not thought better by what who loses none would save from off the green', () => {
    // Every second ball stays off the green, and what it costs from there is the player's own.
    const chip = { lie: 'rough', metres: 20, added: 0 } as const
    const short = { lie: 'rough', metres: 6, added: 0 } as const
    const [value, next] = [chip, short].map(({ lie, metres }) => shortGameValue(worse, lie, metres))
    const puttMetres = puttingDistance(before, 2 * ((value as number) - 1) - (next as number))
    const strokes = [short, { puttMetres }].flatMap((after) =>
      Array.from({ length: 1500 }, (): LoggedShortStroke => ({ ...dated, ...chip, used: 1, after })),
    )
    const { strokesLost } = learnLoggedNearGreen(before, { putts: [], strokes })
    expect(Math.abs(strokesLost.after - worse.shortGame.strokesLost)).toBeLessThan(0.04)
  })

  it('leave the strokes lost the less sure the more those scatter that tell most of them', () => {
    const width = (sand: number, fairway: number): number => {
      const strokes = (
        [
          ['bunker', sand],
          ['fairway', fairway],
        ] as const
      ).flatMap(([lie, scatter]) =>
        Array.from({ length: 40 }, (_, index): LoggedShortStroke => {
          const cost = shortGameValue(before, lie, 15) - 1 + (index % 2 === 0 ? scatter : -scatter)
          return {
            ...dated,
            lie,
            metres: 15,
            added: 0,
            used: 1,
            after: { puttMetres: puttingDistance(before, cost) },
          }
        }),
      )
      const [low, high] = learnLoggedNearGreen(before, { putts: [], strokes }).strokesLost.ninety
      return high - low
    }
    expect(width(0.6, 0.2)).toBeGreaterThan(1.05 * width(0.2, 0.6))
  })

  it('count what the green adds there, penalties and balls that were holed', () => {
    const lostOf = (stroke: Partial<LoggedShortStroke>): number => {
      const usual = {
        ...dated,
        lie: 'rough',
        metres: 15,
        added: 0,
        used: 1,
        after: { puttMetres: 2 },
      } as const
      const strokes = Array.from({ length: 30 }, (): LoggedShortStroke => ({ ...usual, ...stroke }))
      return learnLoggedNearGreen(before, { putts: [], strokes }).strokesLost.after
    }
    expect(lostOf({ added: 0.2 })).toBeLessThan(lostOf({}) - 0.05)
    expect(lostOf({ used: 2 })).toBeGreaterThan(lostOf({}) + 0.2)
    expect(lostOf({ after: null })).toBeLessThan(lostOf({}) - 0.2)
  })
})

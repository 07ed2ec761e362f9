import { stablefordPoints } from '#golf/rules/stableford-points.ts'
import { MOST_STROKES } from './settings.ts'

/** What a hole may be played for besides the fewest strokes on average, as the command line spells it. */
export type ObjectiveName = 'points' | 'match' | `at-most:${number}`

/** What every score on the hole is worth to the player; the plan makes the expected worth greatest. */
export interface Objective {
  readonly name: ObjectiveName
  /** The same in words: `4 or better`. */
  readonly aim: string
  /** Worth of so many strokes on the hole, penalties counted; the last entry is that of all longer scores too. */
  readonly worths: readonly number[]
  /** Strokes used on the hole before the one that is asked about, penalties counted. */
  readonly played: number
  /** Handicap strokes counted on the hole; negative where they are given. */
  readonly received: number
  /** Chance of each of the opponent's scores, by strokes; absent where there is none. */
  readonly opponent?: readonly number[]
  /** Whatever a reader must know to trust it, one sentence each. */
  readonly notes: readonly string[]
}

type Counted = Pick<Objective, 'played' | 'notes'>

/** Points of a hole by its net score against par (Rules of Golf 2023, 21.1b). */
export function pointsObjective(par: number, received: number, counted: Counted): Objective {
  const worths = Array.from({ length: Math.max(1, par + received + 3) }, (_, strokes) =>
    stablefordPoints(strokes - received, par),
  )
  return { name: 'points', aim: 'points', worths, received, ...counted }
}

/** The chance of at most so many strokes on the hole. */
export function atMostObjective(strokes: number, counted: Counted): Objective {
  return targetObjective(strokes, [1], `${strokes} or better`, counted)
}

/**
 * The chance of at most so many strokes on this hole and those after it. `later[m]`: the chance of at most `m` strokes on
 * those after it, the last entry that of all above; `[1]` where none follows.
 */
export function targetObjective(
  strokes: number,
  later: readonly number[],
  aim: string,
  counted: Counted,
): Objective {
  const worths = Array.from(
    { length: strokes + 1 },
    (_, used) => later[Math.min(strokes - used, later.length - 1)] as number,
  )
  return { name: `at-most:${strokes}`, aim, worths: [...worths, 0], received: 0, ...counted }
}

/** What winning, halving and losing the hole is worth, to the hole or to the whole match. */
export interface HoleStakes {
  readonly win: number
  readonly halve: number
  readonly lose: number
}

/** A hole on its own: won 1, halved ½. */
export const ONE_HOLE: HoleStakes = { win: 1, halve: 0.5, lose: 0 }

/**
 * A hole of a match (Rules of Golf 2023, 3.2c: the lower score wins it) against an opponent whose score is known by its
 * chances, `opponent[k]` that of `k` strokes. The opponent's score does not depend on the player's.
 */
export function matchObjective(
  opponent: readonly number[],
  received: number,
  counted: Counted,
  stakes: HoleStakes = ONE_HOLE,
  aim = 'the hole',
): Objective {
  const worths = Array.from(
    { length: Math.max(opponent.length, MOST_STROKES) + 1 + Math.max(0, received) },
    (_, strokes) => {
      const { win, halve, lose } = holeChances(pointMass(strokes), opponent, received)
      return win * stakes.win + halve * stakes.halve + lose * stakes.lose
    },
  )
  return { name: 'match', aim, worths, received, opponent, ...counted }
}

/** Chances of winning, halving and losing a hole, both scores being independent. */
export function holeChances(
  scores: readonly number[],
  opponent: readonly number[],
  received: number,
): { readonly win: number; readonly halve: number; readonly lose: number } {
  let win = 0
  let halve = 0
  let lose = 0
  for (const [strokes, chance] of scores.entries())
    for (const [theirs, share] of opponent.entries()) {
      const difference = strokes - received - theirs
      if (difference < 0) win += chance * share
      else if (difference === 0) halve += chance * share
      else lose += chance * share
    }
  return { win, halve, lose }
}

/** A score that is known for sure, as a distribution. */
export function pointMass(strokes: number): number[] {
  return [...new Array<number>(strokes).fill(0), 1]
}

/** Worth of a score; a longer one than the list knows is worth its last. */
export function worthOf({ worths }: Pick<Objective, 'worths'>, strokes: number): number {
  return worths[Math.min(strokes, worths.length - 1)] as number
}

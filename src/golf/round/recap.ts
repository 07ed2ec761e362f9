import type { Fault } from '#faults/fault.ts'
import type { Spot } from './follow-hole.ts'

/** Part of the game that a stroke belongs to, by where it was played from. */
export type GamePart = 'tee' | 'approach' | 'around' | 'putting'
export const GAME_PARTS: readonly GamePart[] = ['tee', 'approach', 'around', 'putting']

/** Strokes more than the plan's expected score, and what they come from; negative is better than expected. */
export interface Split {
  /** What the choice cost against the best plan; never negative. */
  readonly decision: number
  /** How well the ball was struck, against this player's own pattern. */
  readonly execution: number
  /** What followed from bounce, lie and chance given how it was struck. */
  readonly luck: number
}

/** What of a stroke cannot be told apart: the log lacks what it takes. */
export type Unsplit = 'club' | 'line' | 'places' | 'luck'

/**
 * What of a choice is the club's, on its best line, and what the line's: they add up to the decision. `longer`: the club
 * goes further than the plan's; `towardFlag`: the line lies nearer to the flag than the club's best one; `null` = the same.
 */
export interface ChoiceCost {
  readonly club: number
  readonly line: number
  readonly longer: boolean | null
  readonly towardFlag: boolean | null
}

/** A stroke, or several whose places between were not logged, split. */
export interface StrokeSplit extends Split {
  /** Number of the first stroke on the hole, from 1, and how many strokes these are. */
  readonly number: number
  readonly count: number
  /** Strokes used, penalties counted, and the penalties among them. */
  readonly used: number
  readonly penalty: number
  readonly part: GamePart
  /** `null` = not logged. */
  readonly club: string | null
  readonly from: Spot
  /** From there to the pin, metres. */
  readonly pinMetres: number
  /** `null` = holed. */
  readonly to: Spot | null
  /** Expected strokes to hole out: before with the best plan, with what was chosen (`null` = not known), and after. */
  readonly before: number
  readonly chosen: number | null
  readonly after: number
  /** How much execution varies from stroke to stroke for a player of this very profile, strokes squared; `null` = not known. */
  readonly executionVariance: number | null
  /** `null` = what was chosen is not known. */
  readonly choice: ChoiceCost | null
  /** The club of the best plan from there. */
  readonly plan: string | null
  readonly unsplit: readonly Unsplit[]
}

/** One hole, split; the sums hold to rounding of the machine. */
export interface HoleRecap extends Split {
  readonly ref: string
  readonly par: number
  readonly score: number
  /** Expected score from the tee with the best plan. */
  readonly value: number
  /** score − value − (decision + execution + luck). */
  readonly addsUp: number
  readonly strokes: readonly StrokeSplit[]
  readonly faults: readonly Fault[]
}

/** Sum of splits. */
export function sumOf(splits: readonly Split[]): Split {
  const sum = (what: keyof Split): number => splits.reduce((total, split) => total + split[what], 0)
  return { decision: sum('decision'), execution: sum('execution'), luck: sum('luck') }
}

/** All that a split comes to, strokes more than expected. */
export function totalOf({ decision, execution, luck }: Split): number {
  return decision + execution + luck
}

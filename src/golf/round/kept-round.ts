import type { PlanNumbersFile } from './plan-numbers-file.ts'
import { isSameLog, mergeLogs, type RoundLog } from './round-log.ts'
import { sortedText } from './sorted-text.ts'

/** A round that is written down: what was settled before the start, and its log. */
export interface KeptRound {
  readonly facts: RoundFacts
  readonly log: RoundLog
}

/** What is settled before the start and does not change. */
export interface RoundFacts {
  readonly id: string
  readonly date: string | null
  readonly tee: string | null
  readonly format: string | null
  /** Names, and ids of the store; `null` = none. */
  readonly course: string | null
  readonly courseId: string | null
  readonly player: string | null
  readonly playerId: string | null
  /** A round that counts is played by the Rules: nothing is worked out until it is closed. */
  readonly purpose: 'counting' | 'practice'
  /** False where Local Rule G-5 forbids devices that measure distance. */
  readonly hasDevices: boolean
  /** True where Local Rule G-11 allows no green map but an approved one. */
  readonly isTextOnly: boolean
  /** The bag, longest first, `putter` last. */
  readonly clubs: readonly string[]
  /** The card that was prepared, a hole each, in the order they are played. */
  readonly card: readonly CardHole[]
  /** What its plans stood on; `null` = not known. */
  readonly planNumbers: PlanNumbersFile | null
}

/** A hole on the prepared card; words are in the reader's units and stay as they were prepared. */
export interface CardHole {
  readonly ref: string
  readonly par: number | null
  /** Length, stroke index, strokes received. */
  readonly facts: readonly string[]
  /** The club from the tee; empty where there is no plan. */
  readonly club: string
  readonly words: string
  /** What to reach and to carry from the markers, and the green. */
  readonly numbers: string
}

/** Two copies of one round laid together; what was settled before the start is one of theirs, the same in either order. */
export function mergeRounds(one: KeptRound, other: KeptRound): KeptRound {
  const facts = sortedText(one.facts) <= sortedText(other.facts) ? one.facts : other.facts
  // A copy that lacks the numbers, as from an older Marram, does not take them from one that has them.
  const planNumbers = facts.planNumbers ?? one.facts.planNumbers ?? other.facts.planNumbers
  return { facts: { ...facts, planNumbers: planNumbers ?? null }, log: mergeLogs(one.log, other.log) }
}

/** Whether two copies hold the same. */
export function isSameRound(one: KeptRound, other: KeptRound): boolean {
  return sortedText(one.facts) === sortedText(other.facts) && isSameLog(one.log, other.log)
}

/** What a round is called in lists. */
export function nameOfRound({
  date,
  player,
  course,
}: Pick<RoundFacts, 'date' | 'player' | 'course'>): string {
  return [date, player, course].filter((word) => word !== null && word !== '').join(', ') || 'A round'
}

import type { Fault } from '#faults/fault.ts'
import type { Day } from '#golf/course/day.ts'
import { dayOfRound } from '#golf/round/holes-of-rounds.ts'
import type { RoundToRead } from '#golf/round/read-rounds.ts'
import { twinRounds } from '#golf/round/season-questions.ts'
import type { KeptRoundFile } from './kept-round.ts'

/** A round that may be taken apart. */
export interface ClosedRound extends RoundToRead {
  readonly id: string
  readonly belongs: KeptRoundFile['belongs']
  /** What in its log does not make sense. */
  readonly faults: readonly Fault[]
}

/** Every closed round with the day of its date, each once, and why others are left out. */
export function closedRounds(
  own: readonly KeptRoundFile[],
  days: readonly Day[],
): { readonly rounds: readonly ClosedRound[]; readonly notes: readonly string[] } {
  const notes: string[] = []
  const rounds: ClosedRound[] = []
  for (const { id, round, key, belongs, planNumbers, faults } of own) {
    const name = round.date ?? id
    const one = { id, name, round, key, belongs, planNumbers, faults, day: dayOfRound(round, days) }
    if (belongs.isOpen) notes.push(`The round of ${name} counts and is not closed yet: it is left out.`)
    else if (rounds.some((other) => other.key === key) || twinRounds([...rounds, one]) !== null)
      notes.push(`The round of ${name} is kept twice, and counts once.`)
    else rounds.push(one)
  }
  return { rounds, notes }
}

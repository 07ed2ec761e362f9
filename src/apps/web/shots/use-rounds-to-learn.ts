import { useMemo } from 'react'
import type { Library } from '../documents/use-library.ts'
import { useKeptDays, useKeptRounds } from '../rounds/kept-round.ts'
import { type RoundToLearn, roundsToLearn } from './rounds-to-learn.ts'
import type { KeptPlayer } from './use-kept-player.ts'

const NONE = { rounds: [], notes: [] } as const

/** The rounds of a player that can be learned from; none while the store is being asked. */
export function useRoundsToLearn(
  kept: KeptPlayer,
  library: Library,
): { readonly rounds: readonly RoundToLearn[]; readonly notes: readonly string[] } {
  const [rounds, days] = [useKeptRounds(), useKeptDays()]
  const trouble = rounds.trouble ?? days.trouble
  return useMemo(() => {
    if (trouble !== null) return { rounds: [], notes: [trouble.message] }
    if (rounds.value === null || days.value === null) return NONE
    return roundsToLearn(
      rounds.value,
      days.value.map(({ day }) => day),
      library.courses,
      { id: kept.id, name: kept.player.name },
    )
  }, [kept, library, rounds.value, days.value, trouble])
}

import { useMemo } from 'react'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import type { PracticeRates } from '#golf/round/practice.ts'
import { type Practice, practiceOf } from '#golf/round/practice.ts'
import { afterRound, afterState } from '../planning/after-round.ts'
import { useWork, type Work } from '../planning/use-work.ts'

/** Weighs practice on holes in workers; another rate needs none of it anew. `holes`, `player` and `day` must be kept by the caller. */
export function usePractice(
  on: { readonly holes: readonly Hole[]; readonly player: Player; readonly day: Day },
  rates: PracticeRates,
): { readonly work: Work<unknown>; readonly practice: Practice; readonly left: readonly string[] } {
  const asked = useMemo(() => {
    const { holes, ...same } = on
    return {
      key: JSON.stringify(['practice', on]),
      pieces: holes.map((hole) => ({
        name: hole.ref,
        question: { kind: 'practice', of: { hole, ...same } } as const,
      })),
    }
  }, [on])
  const work = useWork(asked, afterRound, afterState)
  const found = Object.values(work.states)
  const { states } = work
  const practice = useMemo(
    () =>
      practiceOf(
        Object.values(states).flatMap((state) => ('practice' in state ? [state.practice] : [])),
        rates,
      ),
    [states, rates],
  )
  return { work, practice, left: found.flatMap((state) => ('missing' in state ? [state.missing] : [])) }
}

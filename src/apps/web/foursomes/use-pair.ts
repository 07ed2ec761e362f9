import { useMemo } from 'react'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import type { PairedHole } from '#golf/round/foursome-table.ts'
import type { Partners, TeeTurn } from '#golf/strategy/alternate-shot.ts'
import { PLANNER, planner } from '../planning/planner.ts'
import type { Answered } from '../planning/questions.ts'
import { useWork, type Work } from '../planning/use-work.ts'
import type { Missing } from '../planning/work-pieces.ts'

/** What is known of a hole for a pair: by who tees off, or why there is nothing. */
type PairState = { readonly turns: Partners<TeeTurn> } | Missing

/** A pair's round as far as it is worked out, and the holes that are left out with the reason. */
export interface PairWork {
  readonly work: Work<PairState>
  readonly holes: readonly PairedHole[]
  readonly missing: readonly string[]
}

/** Works out every hole for two partners, `null` = there is no pair yet. All of it must be kept by the caller. */
export function usePair(holes: readonly Hole[], day: Day, players: Partners<Player> | null): PairWork {
  const asked = useMemo(() => {
    if (players === null) return null
    return {
      key: JSON.stringify(['pair', holes, day, players]),
      keptOf: PLANNER,
      pieces: holes.map((hole) => ({
        name: hole.ref,
        question: { kind: 'pair', hole, players, day } as const,
      })),
    }
  }, [holes, day, players])
  const work = useWork(asked, planner, stateOf)
  const { states } = work
  return useMemo(() => {
    const paired: PairedHole[] = []
    const missing: string[] = []
    for (const hole of holes) {
      const state = states[hole.ref]
      if (state === undefined) continue
      if ('turns' in state) paired.push({ hole, ref: hole.ref, turns: state.turns })
      else missing.push(`Hole ${hole.ref} is left out: ${state.missing}`)
    }
    return { work, holes: paired, missing }
  }, [holes, states, work])
}

function stateOf({ pair, fault }: Answered): PairState {
  return pair === undefined ? { missing: fault?.message ?? '' } : { turns: pair }
}

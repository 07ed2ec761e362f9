import { useMemo } from 'react'
import type { Course } from '#golf/course/course.ts'
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
export function usePair(
  course: Course,
  holes: readonly Hole[],
  day: Day,
  players: Partners<Player> | null,
): PairWork {
  const asked = useMemo(() => {
    if (players === null) return null
    return {
      key: JSON.stringify(['pair', holes, day, players]),
      kept: { of: PLANNER, isState: isPair },
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
      const place = course.holes.findIndex(({ ref }) => ref === hole.ref)
      if ('turns' in state) paired.push({ hole, ref: hole.ref, place, turns: state.turns })
      else missing.push(`Hole ${hole.ref} is left out: ${state.missing}`)
    }
    return { work, holes: paired, missing }
  }, [course, holes, states, work])
}

/** Whether what a browser has kept is of a pair. */
function isPair(found: unknown): boolean {
  const turns = (found as { readonly turns?: unknown } | null | undefined)?.turns
  if (!Array.isArray(turns) || turns.length !== 2) return false
  return turns.every(
    (turn: Partial<TeeTurn> | null) =>
      typeof turn?.strokes === 'number' && typeof turn.best?.shot?.club === 'string',
  )
}

function stateOf({ pair, fault }: Answered): PairState {
  return pair === undefined ? { missing: fault?.message ?? '' } : { turns: pair }
}

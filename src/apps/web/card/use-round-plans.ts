import { useMemo } from 'react'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import type { Plan } from '#golf/strategy/plan.ts'
import { plainPlan } from '../planning/plain-plan.ts'
import { PLANNER, planner } from '../planning/planner.ts'
import type { Answered } from '../planning/questions.ts'
import { useWork, type Work } from '../planning/use-work.ts'
import type { Missing } from '../planning/work-pieces.ts'

/** What is known of a hole: its plan, or why there is none. */
export type HoleState = { readonly plan: Plan } | Missing

/**
 * Plans every hole for a player, `null` = there is nothing to plan. All of it must be kept by the caller; the player without
 * sentences of cards, which change no plan.
 */
export function useRoundPlans(
  round: { readonly course: string; readonly holes: readonly Hole[]; readonly day: Day } | null,
  player: Player | null,
  units: 'yards' | 'metres',
  isQuick: boolean,
): Work<HoleState> {
  const asked = useMemo(() => {
    if (round === null || player === null) return null
    const { course, holes, day } = round
    return {
      key: JSON.stringify(['plans', round, player, units, ...(isQuick ? ['quick'] : [])]),
      kept: { of: PLANNER, isState: isPlanOf },
      pieces: holes.map((hole) => ({
        name: hole.ref,
        question: plainPlan({ courseName: course, hole, player, day, units }, null, isQuick),
      })),
    }
  }, [round, player, units, isQuick])
  return useWork(asked, planner, stateOf)
}

/** Whether what a browser has kept is a plan of this hole. */
function isPlanOf(found: unknown, ref: string): boolean {
  const plan = (found as { readonly plan?: Partial<Plan> } | null | undefined)?.plan
  const isWhole = plan?.schema === 'plan/1' && plan.hole?.ref === ref
  return (
    isWhole && (plan.options?.length ?? 0) > 0 && plan.value !== undefined && plan.situation !== undefined
  )
}

function stateOf({ plan, fault }: Answered): HoleState {
  return plan === undefined ? { missing: fault?.message ?? '' } : { plan }
}

import { useEffect, useMemo, useState } from 'react'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import { type HoleState, useRoundPlans } from '../card/use-round-plans.ts'
import type { Work } from '../planning/use-work.ts'

/** Plans of one player, by hole. */
type PlansOfPlayer = Readonly<Record<string, HoleState>>

/** A round that everybody of the group plays. */
export interface FieldRound {
  readonly course: string
  readonly holes: readonly Hole[]
  readonly day: Day
}

/**
 * Plans the round for one player after the other, so that a group needs no more of the machine than one player does. A round
 * of `null` is not planned. All of it must be kept by the caller.
 */
export function useFieldPlans(
  round: FieldRound | null,
  field: readonly { readonly id: string; readonly player: Player }[],
  units: 'yards' | 'metres',
  isQuick: boolean,
): {
  /** Whose plans are worked on; `null` once all are there. */
  readonly current: string | null
  readonly work: Work<HoleState>
  /** Of everybody whose plans are all there. */
  readonly plans: Readonly<Record<string, PlansOfPlayer>>
} {
  const [done, setDone] = useState<{ of: unknown; plans: Readonly<Record<string, PlansOfPlayer>> }>({
    of: null,
    plans: {},
  })
  // Whatever is planned for is another question, so nothing of before stands.
  const asked = useMemo(() => ({ round, units, isQuick }), [round, units, isQuick])
  const plans = done.of === asked ? done.plans : NONE
  const next = round === null ? undefined : field.find(({ id }) => plans[id] === undefined)
  const player = next?.player ?? null
  const numbers = useMemo(() => player && withoutSentences(player), [player])
  const work = useRoundPlans(next === undefined ? null : round, numbers, units, isQuick)
  const isThere = work.of > 0 && work.done === work.of
  useEffect(() => {
    if (next === undefined || !isThere) return
    const mine = { [next.id]: work.states }
    setDone((before) => ({
      of: asked,
      plans: before.of === asked ? { ...before.plans, ...mine } : mine,
    }))
  }, [asked, next, isThere, work.states])
  return { current: next?.id ?? null, work, plans }
}

const NONE: Readonly<Record<string, never>> = {}

/** Sentences of cards change no plan. */
function withoutSentences({ sentences: _, ...numbers }: Player): Player {
  return numbers
}

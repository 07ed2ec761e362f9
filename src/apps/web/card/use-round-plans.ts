import { useCallback, useEffect, useMemo, useRef, useState } from 'react'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import { plainPlan } from '../planning/plain-plan.ts'
import type { PlanQuestion } from '../planning/questions.ts'
import { type HoleState, planHoles } from './round-plans.ts'

/** The plans of a round as far as they are there. */
export interface RoundPlans {
  readonly states: Readonly<Record<string, HoleState>>
  /** Holes of which the plan, or why there is none, is there. */
  readonly done: number
  readonly isRunning: boolean
  /** Leaves the rest; what is there stays. */
  readonly stop: () => void
  /** Goes on with what was left. */
  readonly goOn: () => void
}

/** Plans that were worked out since the page was opened: who comes back to a card does not wait for it again. */
const known = new Map<string, Readonly<Record<string, HoleState>>>()

/**
 * Plans every hole for a player, `null` = there is nothing to plan. All of it must be kept by the caller; the player without
 * sentences of cards, which change no plan.
 */
export function useRoundPlans(
  round: { readonly course: string; readonly holes: readonly Hole[]; readonly day: Day } | null,
  player: Player | null,
  units: 'yards' | 'metres',
): RoundPlans {
  const key = useMemo(
    () => (round === null || player === null ? '' : JSON.stringify([round, player, units])),
    [round, player, units],
  )
  const [shown, setShown] = useState<{ key: string; states: Readonly<Record<string, HoleState>> }>({
    key: '',
    states: {},
  })
  const [running, setRunning] = useState('')
  const [turn, setTurn] = useState(0)
  const stopping = useRef<AbortController | null>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: `turn` goes on with what was left; the key says what is planned.
  useEffect(() => {
    if (round === null || player === null) return
    const states = known.get(key) ?? {}
    setShown({ key, states })
    const left = round.holes.filter(({ ref }) => states[ref] === undefined)
    if (left.length === 0) return
    const controller = new AbortController()
    stopping.current = controller
    setRunning(key)
    planHoles(
      left.map((hole) => questionOf(hole, round, player, units)),
      controller.signal,
      (ref, state) => {
        const now = { ...known.get(key), [ref]: state }
        known.set(key, now)
        if (!controller.signal.aborted) setShown({ key, states: now })
      },
    ).finally(() => setRunning((now) => (now === key && stopping.current === controller ? '' : now)))
    return () => controller.abort()
  }, [key, turn])
  const states = shown.key === key ? shown.states : NONE
  return {
    states,
    done: Object.keys(states).length,
    isRunning: key !== '' && running === key,
    stop: useCallback(() => stopping.current?.abort(), []),
    goOn: useCallback(() => setTurn((before) => before + 1), []),
  }
}

const NONE: Readonly<Record<string, HoleState>> = {}

function questionOf(
  hole: Hole,
  { course, day }: { readonly course: string; readonly day: Day },
  player: Player,
  units: 'yards' | 'metres',
): PlanQuestion {
  return plainPlan({ courseName: course, hole, player, day, units })
}

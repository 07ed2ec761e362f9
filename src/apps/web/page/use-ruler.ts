import { useEffect, useRef, useState } from 'react'
import type { Hole } from '#golf/course/hole.ts'
import type { Plan } from '#golf/strategy/plan.ts'
import type { Desk } from '../desk/desk.ts'
import { type Quantity, type RulerScale, rememberScales, restOf, scalesOf, setOn } from '../desk/ruler.ts'
import type { Edit } from './use-desk.ts'

/**
 * The scales of the ruler of flips, filled by every full plan; `[]` while none of this hole, player and ball is known
 * (`about` tells them apart).
 */
export function useRuler(
  plan: Plan | null,
  isFull: boolean,
  about: string,
  { desk, surveyed, edit }: { readonly desk: Desk; readonly surveyed: Hole | null; readonly edit: Edit },
): {
  readonly scales: readonly RulerScale[]
  readonly onMove: (quantity: Quantity, value: number) => void
} {
  const [known, setKnown] = useState<{ readonly about: string; readonly scales: readonly RulerScale[] }>({
    about: '',
    scales: [],
  })
  const seen = useRef<Plan | null>(null)
  useEffect(() => {
    if (plan === null || !isFull || surveyed === null || seen.current === plan) return
    seen.current = plan
    const found = scalesOf(plan, desk, surveyed)
    setKnown((before) => ({
      about,
      scales: rememberScales(before.about === about ? before.scales : [], found, (quantity) =>
        restOf(desk, surveyed, quantity),
      ),
    }))
  }, [plan, isFull, about, desk, surveyed])
  return {
    scales: known.about === about ? known.scales : [],
    onMove: (quantity, value) =>
      surveyed !== null && edit(`ruler ${quantity.what}`, (now) => setOn(now, surveyed, quantity, value)),
  }
}

import { useEffect, useRef } from 'react'
import type { Plan } from '#golf/strategy/plan.ts'
import type { Planning } from '../planning/use-planning.ts'

/**
 * The plan's club before the last step of undo changed it; `null` while it is the same, or of another hole or player
 * (`about` tells them apart).
 */
export function useTurn(
  step: number,
  about: string,
  { isCurrent }: Pick<Planning, 'isCurrent'>,
  plan: Plan | null,
): string | null {
  const clubs = useRef<{ readonly about: string; readonly club: string }[]>([])
  const club = plan?.options[0]?.club
  useEffect(() => {
    if (isCurrent && club !== undefined) clubs.current[step] = { about, club }
  }, [step, about, isCurrent, club])
  const before = clubs.current[step - 1]
  return !isCurrent || before?.about !== about || before.club === club ? null : before.club
}

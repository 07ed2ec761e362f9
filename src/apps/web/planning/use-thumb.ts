import { useMemo } from 'react'
import type { Lie } from '#golf/player/player.ts'
import type { Thumb } from '#golf/strategy/thumb.ts'
import type { Answered, ThumbQuestion } from './questions.ts'
import type { Situation } from './use-planning.ts'
import { useQuickThenFull, type Worked } from './use-quick-then-full.ts'

/** What going and laying up cost along the hole from one lie. Where the ball lies makes no difference. */
export function useThumb({ courseName, hole, player, day }: Situation, lie: Lie): Worked<Thumb> {
  const question = useMemo(
    (): ThumbQuestion => ({ kind: 'thumb', courseName, hole, player, day, lie, isFirst: true }),
    [courseName, hole, player, day, lie],
  )
  return useQuickThenFull(question, thumbOf)
}

function thumbOf({ thumb }: Answered): Thumb | undefined {
  return thumb
}

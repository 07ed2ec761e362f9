import { useEffect, useRef, useState } from 'react'
import type { Lie } from '#golf/player/player.ts'
import type { Thumb } from '#golf/strategy/thumb.ts'
import { type LatestAnswer, latestAnswer } from './latest-answer.ts'
import { planner } from './planner.ts'
import type { Trouble } from './questions.ts'
import type { Situation } from './use-planning.ts'

/** What going and laying up cost along the hole, as far as it is known. */
export interface ThumbAnswer {
  /** The last answer, possibly of the hole before it was changed: `isCurrent` tells. */
  readonly thumb: Thumb | null
  readonly isCurrent: boolean
  readonly trouble: Trouble | null
}

const NOTHING: ThumbAnswer = { thumb: null, isCurrent: false, trouble: null }

/** Works out both choices along the hole from one lie; stale answers are dropped. Where the ball lies makes no difference. */
export function useThumb({ courseName, hole, player, day }: Situation, lie: Lie): ThumbAnswer {
  const [answer, setAnswer] = useState<ThumbAnswer>(NOTHING)
  const worker = useRef<LatestAnswer | null>(null)

  useEffect(() => {
    const tell = ({ thumb, fault }: { thumb?: Thumb; fault?: Trouble }): void =>
      setAnswer(
        thumb === undefined
          ? { ...NOTHING, trouble: fault ?? null }
          : { thumb, isCurrent: true, trouble: null },
      )
    const latest = latestAnswer(planner(), tell, true)
    worker.current = latest
    return () => latest.stop()
  }, [])

  useEffect(() => {
    setAnswer((before) => ({ ...before, isCurrent: false, trouble: null }))
    worker.current?.ask({ kind: 'thumb', courseName, hole, player, day, lie })
  }, [courseName, hole, player, day, lie])
  return answer
}

import { useEffect, useRef, useState } from 'react'
import type { LearnedFromShots } from '#golf/player/learn-from-shots.ts'
import type { PlayerFile } from '#golf/player/player-file.ts'
import type { ShotRecord } from '#golf/player/shot-record.ts'
import type { Lane } from '#outside/workers/lane.ts'
import { type WorkerPort, workerLane } from '#outside/workers/worker-lane.ts'
import { troubleOf } from '../documents/use-library.ts'
import type { Trouble } from '../planning/questions.ts'
import type { EnteredShot } from './shot-sheet.ts'
import type { KeptPlayer } from './use-kept-player.ts'

/** What the worker is asked. */
export interface LearnTask {
  readonly file: PlayerFile
  readonly shots: readonly ShotRecord[]
}

/** What was learned of whom, and from which shots. */
export interface Lesson {
  readonly kept: KeptPlayer
  readonly shots: readonly EnteredShot[]
  readonly result: LearnedFromShots
}

/** Learns when asked, in a worker; the last lesson stays until the next or until it is forgotten. */
export function useLearning(): {
  readonly lesson: Lesson | null
  readonly isLearning: boolean
  readonly trouble: Trouble | null
  readonly learn: (kept: KeptPlayer, shots: readonly EnteredShot[]) => void
  readonly forget: () => void
} {
  const lane = useRef<Lane<LearnTask, LearnedFromShots> | null>(null)
  const asked = useRef<AbortController | null>(null)
  const [lesson, setLesson] = useState<Lesson | null>(null)
  const [isLearning, setIsLearning] = useState(false)
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  useEffect(() => {
    const own = workerLane<LearnTask, LearnedFromShots>(
      () =>
        new Worker(new URL('./learn-worker.ts', import.meta.url), {
          type: 'module',
        }) as unknown as WorkerPort,
    )
    lane.current = own
    return () => {
      asked.current?.abort()
      void own.close()
    }
  }, [])
  const learn = (kept: KeptPlayer, shots: readonly EnteredShot[]): void => {
    if (isLearning) return
    const mine = new AbortController()
    asked.current = mine
    setIsLearning(true)
    setTrouble(null)
    lane.current
      ?.run({ file: kept.file, shots }, mine.signal)
      .then((result) => asked.current === mine && setLesson({ kept, shots, result }))
      .catch((error: unknown) => asked.current === mine && setTrouble(troubleOf(error)))
      .finally(() => asked.current === mine && setIsLearning(false))
  }
  return { lesson, isLearning, trouble, learn, forget: () => setLesson(null) }
}

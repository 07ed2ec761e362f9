import { useEffect, useRef, useState } from 'react'
import type { LearnedFromShots } from '#golf/player/learn-from-shots.ts'
import type { PlayerFile } from '#golf/player/player-file.ts'
import type { ShotRecord } from '#golf/player/shot-record.ts'
import type { RoundsRead } from '#golf/round/read-rounds.ts'
import type { WordTable } from '#golf/round/word-table.ts'
import type { Lane } from '#outside/workers/lane.ts'
import { type WorkerPort, workerLane } from '#outside/workers/worker-lane.ts'
import { troubleOf } from '../documents/use-library.ts'
import type { Trouble } from '../planning/questions.ts'
import type { RoundToLearn } from './rounds-to-learn.ts'
import type { EnteredShot } from './shot-sheet.ts'
import type { KeptPlayer } from './use-kept-player.ts'

/** What the worker is asked. */
export interface LearnTask {
  readonly file: PlayerFile
  readonly shots: readonly ShotRecord[]
  readonly rounds: RoundsRead
}

/** What it answers: plain records, which go from one worker to the other. */
export interface Learned extends LearnedFromShots {
  /** Putting and short game; `null` where the rounds say nothing of them. */
  readonly nearGreen: WordTable | null
}

/** Of whom is learned, and from what. */
export interface Learnable {
  readonly kept: KeptPlayer
  readonly shots: readonly EnteredShot[]
  readonly rounds: readonly RoundToLearn[]
}

/** What was learned. */
export interface Lesson extends Learnable {
  readonly read: RoundsRead
  /** What of the rounds is left out. */
  readonly left: readonly string[]
  readonly result: Learned
}

/** Learns when asked, in a worker; the last lesson stays until the next or until it is forgotten. */
export function useLearning(): {
  readonly lesson: Lesson | null
  readonly isLearning: boolean
  readonly trouble: Trouble | null
  readonly learn: (of: Omit<Lesson, 'result'>) => void
  readonly forget: () => void
} {
  const lane = useRef<Lane<LearnTask, Learned> | null>(null)
  const asked = useRef<AbortController | null>(null)
  const [lesson, setLesson] = useState<Lesson | null>(null)
  const [isLearning, setIsLearning] = useState(false)
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  useEffect(() => {
    const own = workerLane<LearnTask, Learned>(
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
  const learn = (of: Omit<Lesson, 'result'>): void => {
    if (isLearning) return
    const mine = new AbortController()
    asked.current = mine
    setIsLearning(true)
    setTrouble(null)
    lane.current
      ?.run({ file: of.kept.file, shots: of.shots, rounds: of.read }, mine.signal)
      .then((result) => asked.current === mine && setLesson({ ...of, result }))
      .catch((error: unknown) => asked.current === mine && setTrouble(troubleOf(error)))
      .finally(() => asked.current === mine && setIsLearning(false))
  }
  return { lesson, isLearning, trouble, learn, forget: () => setLesson(null) }
}

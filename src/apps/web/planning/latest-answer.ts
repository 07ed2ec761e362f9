import type { Lane } from '#outside/workers/lane.ts'
import type { Answered, Question } from './questions.ts'

/** Asks and keeps only what is still wanted. */
export interface LatestAnswer {
  /** Asks; an older question that is not answered yet is forgotten, its answer never told unless it is told late. */
  ask(question: Question): void
  /** Forgets every question. */
  forget(): void
  stop(): void
}

/**
 * One lane that is asked again and again while only the latest answer matters. While it works, the newest question
 * waits; `isInterrupted` stops the work instead of waiting, for questions that take long. An answer that comes when a
 * newer question is already asked is told as late where `isNear` finds the two questions near enough: while something is
 * dragged its figures then follow, a little behind.
 */
export function latestAnswer(
  lane: Lane<Question, Answered>,
  tell: (answered: Answered, isLate: boolean) => void,
  isInterrupted = false,
  isNear: (older: Question, newer: Question) => boolean = () => false,
): LatestAnswer {
  let waiting: Question | null = null
  let working: AbortController | null = null
  let isWanted = false

  async function work(): Promise<void> {
    while (waiting !== null) {
      const question: Question = waiting
      waiting = null
      isWanted = true
      working = new AbortController()
      const answered = await lane.run(question, working.signal).catch(faultOf)
      if (isWanted) tell(answered, false)
      else if (waiting !== null && isNear(question, waiting) && answered.fault === undefined)
        tell(answered, true)
    }
    working = null
  }

  function forget(): void {
    waiting = null
    isWanted = false
    if (isInterrupted) working?.abort()
  }

  return {
    ask(question) {
      forget()
      waiting = question
      if (working === null) void work()
    },
    forget,
    stop() {
      forget()
      working?.abort()
      void lane.close()
    },
  }
}

/** A worker that broke: a defect of ours, or no memory left. */
function faultOf(error: unknown): Answered {
  return {
    fault: { code: '', message: error instanceof Error ? error.message : String(error), where: 'worker' },
  }
}

import type { Lane } from '#outside/workers/lane.ts'
import type { Answered, Question } from './questions.ts'

/** Asks and keeps only what is still wanted. */
export interface LatestAnswer {
  /** Asks; an older question that is not answered yet is forgotten, its answer never told. */
  ask(question: Question): void
  /** Forgets every question. */
  forget(): void
  stop(): void
}

/**
 * One lane that is asked again and again while only the latest answer matters. While it works, the newest question
 * waits; `isInterrupted` stops the work instead of waiting, for questions that take long.
 */
export function latestAnswer(
  lane: Lane<Question, Answered>,
  tell: (answered: Answered) => void,
  isInterrupted = false,
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
      if (isWanted) tell(answered)
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

import type { Answered, Asked, Question } from './questions.ts'

/** The part of a worker that is used, so that a test can stand in for the browser. */
export interface WorkerPort {
  postMessage(asked: Asked): void
  onmessage: ((event: { data: Answered }) => void) | null
  onerror: ((event: { message?: string }) => void) | null
  terminate(): void
}

/** Asks a worker and keeps only what is still wanted. */
export interface LatestAnswer {
  /** Asks; an older question that is not answered yet is forgotten, its answer never told. */
  ask(question: Question): void
  /** Forgets every question. */
  forget(): void
  stop(): void
}

/**
 * One worker that is asked again and again while only the latest answer matters. While it works, the newest question
 * waits; `isInterrupted` starts a fresh worker instead of waiting, for questions that take long.
 */
export function latestAnswer(
  spawn: () => WorkerPort,
  tell: (answered: Answered) => void,
  isInterrupted = false,
): LatestAnswer {
  let worker: WorkerPort | null = null
  let busyWith: number | null = null
  let waiting: Question | null = null
  let count = 0
  let wanted = 0

  function start(): WorkerPort {
    const fresh = spawn()
    fresh.onmessage = ({ data }) => {
      busyWith = null
      if (data.id === wanted) tell(data)
      if (waiting !== null) send(waiting)
    }
    fresh.onerror = ({ message }) => {
      const id = busyWith
      stopWorker()
      if (id === wanted)
        tell({ id, fault: { code: '', message: message ?? 'The planner stopped.', where: 'worker' } })
    }
    return fresh
  }

  function send(question: Question): void {
    worker ??= start()
    waiting = null
    count += 1
    busyWith = count
    wanted = count
    worker.postMessage({ id: count, question })
  }

  function stopWorker(): void {
    worker?.terminate()
    worker = null
    busyWith = null
  }

  return {
    ask(question) {
      if (busyWith === null) send(question)
      else if (isInterrupted) {
        stopWorker()
        send(question)
      } else {
        waiting = question
        wanted = -1
      }
    },
    forget() {
      waiting = null
      wanted = -1
      if (isInterrupted && busyWith !== null) stopWorker()
    },
    stop: stopWorker,
  }
}

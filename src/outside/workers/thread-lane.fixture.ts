import { threadId } from 'node:worker_threads'

let calls = 0

/** What a thread of the tests does with a number: never ends below 0, breaks at 0, else answers with what it knows. */
export function fixtureWork(number: number): { thread: number; calls: number; number: number } {
  if (number < 0) for (;;) calls += 0
  if (number === 0) throw new RangeError('nothing to work on')
  calls += 1
  return { thread: threadId, calls, number }
}

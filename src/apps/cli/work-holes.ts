import { errorFault, type Unanswered } from '#faults/answered.ts'
import type { Fault } from '#faults/fault.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { TaskPool } from '#outside/workers/task-pool.ts'
import type { Machine } from './machine.ts'
import { unworkedHole } from './plan-batch.ts'
import { progressBar } from './progress-bar.ts'
import { whileInterruptible } from './while-interruptible.ts'

/** What was answered, in the order of the questions, and why others were not. */
export interface WorkedHoles<Question, Answer> {
  readonly answers: readonly { readonly question: Question; readonly answer: Answer }[]
  readonly faults: readonly Fault[]
}

/** Works on questions about holes in threads, with a bar; what was not answered when the work was stopped is told as such. */
export async function workHoles<Question extends { readonly hole: Hole }, Answer extends object>(
  openPool: (size: number) => TaskPool<Question, Answer | Unanswered>,
  questions: readonly Question[],
  workers: number,
  isQuiet: boolean,
  machine: Machine,
): Promise<WorkedHoles<Question, Answer>> {
  const answers = new Map<number, Answer>()
  const faults: Fault[] = []
  const waiting = new Set(questions.keys())
  const unworked = (index: number, error: unknown): void => {
    const { ref } = (questions[index] as Question).hole
    const { code, message } = unworkedHole(ref, error)
    faults.push(errorFault({ code, message, where: `hole ${ref}` }))
  }
  const pool = openPool(Math.min(workers, questions.length))
  const bar = progressBar('hole', machine, isQuiet)
  bar?.start(questions.length, 0)
  try {
    await whileInterruptible(async (signal) => {
      try {
        for await (const settled of pool.run(questions, {
          signal,
          onProgress: ({ done }) => bar?.update(done),
        })) {
          waiting.delete(settled.index)
          if ('error' in settled) unworked(settled.index, settled.error)
          else if (isUnanswered(settled.result)) faults.push(errorFault(settled.result.fault))
          else answers.set(settled.index, settled.result)
        }
      } catch (error) {
        if (!signal.aborted) throw error
        for (const index of waiting) unworked(index, null)
      }
    })
  } finally {
    await pool.close()
    bar?.stop()
  }
  return {
    answers: questions.flatMap((question, index) => {
      const answer = answers.get(index)
      return answer === undefined ? [] : [{ question, answer }]
    }),
    faults,
  }
}

function isUnanswered(answer: object): answer is Unanswered {
  return 'fault' in answer
}

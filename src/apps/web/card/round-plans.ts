import type { Plan } from '#golf/strategy/plan.ts'
import { taskPool } from '#outside/workers/task-pool.ts'
import { planner } from '../planning/planner.ts'
import type { Answered, PlanQuestion, Question } from '../planning/questions.ts'

/** What is known of a hole: its plan, or why there is none. */
export type HoleState = { readonly plan: Plan } | { readonly missing: string }

/** Plans at most so many holes at the same time: a plan takes some 100 MB. Our assumption. */
const MOST_WORKERS = 4

/** Plans holes in workers of this browser, each told as soon as it is there. Once the signal is set the rest is left. */
export async function planHoles(
  questions: readonly PlanQuestion[],
  signal: AbortSignal,
  tell: (ref: string, state: HoleState) => void,
): Promise<void> {
  const size = Math.max(1, Math.min(MOST_WORKERS, navigator.hardwareConcurrency, questions.length))
  const pool = taskPool<Question, Answered>({ size, spawn: planner, here: noneHere })
  try {
    for await (const settled of pool.run(questions, { signal })) {
      const ref = questions[settled.index]?.hole.ref ?? ''
      tell(ref, 'error' in settled ? { missing: saidBy(settled.error) } : stateOf(settled.result))
    }
  } catch (error) {
    if (!signal.aborted) throw error
  } finally {
    await pool.close()
  }
}

function stateOf({ plan, fault }: Answered): HoleState {
  return plan === undefined ? { missing: fault?.message ?? '' } : { plan }
}

function saidBy(error: unknown): string {
  return `Marram itself failed: ${error instanceof Error ? error.message : String(error)}`
}

function noneHere(): never {
  throw new Error('A plan is never worked out where the page is painted.')
}

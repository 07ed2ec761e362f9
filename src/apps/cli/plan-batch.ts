import type { FaultCode } from '#faults/codes.ts'
import type { PlanQuestion } from '#golf/strategy/plan-hole.ts'
import type { Settled, TaskPool } from '#outside/workers/task-pool.ts'
import type { BatchTask, BatchTasks, FiledPlayer, UnplannedHole } from './batch-tasks.ts'
import type { PlannedHole } from './plan-one.ts'
import type { PlanAnswer } from './plan-task.ts'

/** What became of one hole for one player. */
export type BatchRow = { readonly player: FiledPlayer } & (
  | { readonly planned: PlannedHole }
  | { readonly unplanned: UnplannedHole }
)

/**
 * Plans everything in the pool and hands over each row as soon as it is there, those that cannot be chosen first. Once
 * `signal` is set, what was not planned is handed over as such, so that every hole of every player has its row.
 */
export async function* planBatch(
  { tasks, refused }: BatchTasks,
  pool: TaskPool<PlanQuestion, PlanAnswer>,
  signal: AbortSignal,
  onProgress: (done: number) => void,
): AsyncGenerator<BatchRow, void, undefined> {
  yield* refused
  const waiting = new Set(tasks)
  const answers = pool.run(
    tasks.map(({ question }) => question),
    { signal, groupOf: ({ hole }) => hole.ref, onProgress: ({ done }) => onProgress(done) },
  )
  try {
    for await (const settled of answers) {
      const task = tasks[settled.index] as BatchTask
      waiting.delete(task)
      yield rowOf(task, settled)
    }
  } catch (error) {
    if (!signal.aborted) throw error
    for (const task of waiting) yield { player: task.player, unplanned: unplannedHole(task, null) }
  }
}

/** A hole whose work failed by a defect of ours, or with `null` was stopped. */
export function unplannedHole({ asked }: BatchTask, error: unknown): UnplannedHole {
  return { ...unworkedHole(asked.hole.ref, error), where: '' }
}

/** The same for any work on a hole. */
export function unworkedHole(
  hole: string,
  error: unknown,
): { readonly hole: string; readonly code: FaultCode; readonly message: string } {
  if (error === null) return { hole, code: STOPPED, message: 'Stopped before it was worked out.' }
  const said = error instanceof Error ? error.message : String(error)
  return { hole, code: FAILED, message: `Marram itself failed: ${said}` }
}

const STOPPED: FaultCode = 'MAR-WORK-001'
const FAILED: FaultCode = 'MAR-WORK-002'

function rowOf(task: BatchTask, settled: Settled<PlanAnswer>): BatchRow {
  if ('error' in settled) return { player: task.player, unplanned: unplannedHole(task, settled.error) }
  const answer = settled.result
  if ('fault' in answer)
    return { player: task.player, unplanned: { hole: task.asked.hole.ref, ...answer.fault } }
  return { player: task.player, planned: { ...task.asked, plan: answer.plan } }
}

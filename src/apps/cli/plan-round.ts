import { Failure } from '#faults/failure.ts'
import { batchTasks, type FiledPlayer } from './batch-tasks.ts'
import type { BookOptions } from './book-options.ts'
import type { Machine } from './machine.ts'
import { type BatchRow, planBatch } from './plan-batch.ts'
import { planPool } from './plan-pool.ts'
import type { PrintedRound } from './printed-round.ts'
import { progressBar } from './progress-bar.ts'
import { whileInterruptible } from './while-interruptible.ts'

/** Plans every hole asked for. Throws MAR-WORK-001 when it is stopped, so that no half book is written. */
export async function planRound(
  { course, day, asked }: PrintedRound,
  players: readonly FiledPlayer[],
  options: BookOptions,
  machine: Machine,
): Promise<BatchRow[]> {
  const { question, units } = asked
  const batch = batchTasks({ course, hole: options.hole, players, day, question, units })
  const rows: BatchRow[] = []
  const bar = progressBar('plan', machine, options.quiet === true)
  const workers = question.workers
  const pool = planPool(Math.min(workers, batch.tasks.length))
  bar?.start(batch.tasks.length, 0)
  let wasStopped = false
  try {
    await whileInterruptible(async (signal) => {
      for await (const row of planBatch(batch, pool, signal, (done) => bar?.update(done))) rows.push(row)
      wasStopped = signal.aborted
    })
  } finally {
    await pool.close()
    bar?.stop()
  }
  if (wasStopped) throw new Failure('MAR-WORK-001', 'Stopped: no book was written.', options.out)
  return rows
}

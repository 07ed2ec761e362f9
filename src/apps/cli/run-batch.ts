import { type BatchQuestion, batchTasks } from './batch-tasks.ts'
import type { Machine } from './machine.ts'
import { type BatchRow, planBatch } from './plan-batch.ts'
import type { PlanOptions } from './plan-options.ts'
import { planPool } from './plan-pool.ts'
import { printJson, printLines } from './print-answer.ts'
import { progressBar } from './progress-bar.ts'
import { roundPage, roundsPage } from './round-page.ts'
import { roundDocument, roundLine, roundsOf } from './rounds.ts'
import { whileInterruptible } from './while-interruptible.ts'

/**
 * The round of one player, or one hole or the round of several: planned by `workers` threads. Returns the exit code: 1
 * when a hole could not be planned, or was not because the work was stopped.
 */
export async function runBatch(
  asked: BatchQuestion,
  workers: number,
  options: PlanOptions,
  machine: Machine,
): Promise<number> {
  const batch = batchTasks(asked)
  const rows: BatchRow[] = []
  let hasFaults = false
  const bar = progressBar('plan', machine, options.quiet === true)
  const pool = planPool(Math.min(workers, batch.tasks.length))
  bar?.start(batch.tasks.length, 0)
  try {
    await whileInterruptible(async (signal) => {
      for await (const row of planBatch(batch, pool, signal, (done) => bar?.update(done))) {
        hasFaults ||= 'unplanned' in row
        if (options.jsonLines) machine.out(`${JSON.stringify(roundLine(row))}\n`)
        else rows.push(row)
      }
    })
  } finally {
    await pool.close()
    bar?.stop()
  }
  if (options.jsonLines) return hasFaults ? 1 : 0
  const rounds = roundsOf(asked, rows)
  const [only, ...others] = rounds
  if (options.json) printJson(roundDocument(asked.course, rounds), machine)
  else if (only !== undefined && others.length === 0) printLines(roundPage(only, asked.units), machine)
  else printLines(roundsPage(asked.course, rounds, asked.units), machine)
  return hasFaults ? 1 : 0
}

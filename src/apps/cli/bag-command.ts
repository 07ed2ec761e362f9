import { bagUse } from '#golf/strategy/bag-use.ts'
import type { HoleUse } from '#golf/strategy/club-use.ts'
import { bagDocument } from './bag-document.ts'
import { bagPage } from './bag-page.ts'
import { type BatchTasks, batchTasks, type UnplannedHole } from './batch-tasks.ts'
import { loadCourse } from './load-course.ts'
import { loadDay } from './load-day.ts'
import { loadPlayer } from './load-player.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { parseQuestion } from './parse-question.ts'
import { unplannedHole } from './plan-batch.ts'
import { clubUsePool } from './plan-pool.ts'
import { printJson, printLines } from './print-answer.ts'
import { progressBar } from './progress-bar.ts'
import { parseUnits } from './units-of-the-reader.ts'
import { whileInterruptible } from './while-interruptible.ts'

/** The options of `marram bag`, as typed. */
export interface BagOptions extends GlobalOptions {
  readonly player: string
  readonly hole: string
  readonly tee?: string
  readonly day?: string
  readonly workers?: string
}

/**
 * `marram bag`: what each club of a bag is for over the holes of a course. Returns the exit code: 1 when a hole was not
 * worked out.
 */
export async function bagCommand(path: string, options: BagOptions, machine: Machine): Promise<number> {
  const units = parseUnits(options.units)
  const question = parseQuestion({ ...options, player: [options.player], flips: false })
  const { course } = await loadCourse(path)
  const filed = { file: options.player, player: loadPlayer(options.player) }
  const day = loadDay(options.day, course, options, machine)
  const batch = batchTasks({ course, hole: options.hole, players: [filed], day, question, units })
  const { holes, unplanned } = await usesOf(batch, question.workers, options.quiet === true, machine)
  const places = new Map(course.holes.map(({ ref }, place) => [ref, place]))
  const answer = {
    course: course.name,
    player: filed.player,
    holes: holes.toSorted((a, b) => (places.get(a.ref) ?? 0) - (places.get(b.ref) ?? 0)),
    rows: bagUse(filed.player, holes),
    unplanned,
  }
  if (options.json) printJson(bagDocument(answer), machine)
  else printLines(bagPage(answer, units, machine), machine)
  return unplanned.length > 0 ? 1 : 0
}

/** Works out every hole in threads; what was not when the work was stopped is told as such. */
async function usesOf(
  { tasks, refused }: BatchTasks,
  workers: number,
  isQuiet: boolean,
  machine: Machine,
): Promise<{ readonly holes: readonly HoleUse[]; readonly unplanned: readonly UnplannedHole[] }> {
  const holes: HoleUse[] = []
  const unplanned = refused.map((one) => one.unplanned)
  const waiting = new Set(tasks)
  const pool = clubUsePool(Math.min(workers, tasks.length))
  const bar = progressBar('hole', machine, isQuiet)
  bar?.start(tasks.length, 0)
  try {
    await whileInterruptible(async (signal) => {
      const questions = tasks.map(({ question }) => question)
      try {
        for await (const settled of pool.run(questions, {
          signal,
          onProgress: ({ done }) => bar?.update(done),
        })) {
          const task = tasks[settled.index] as (typeof tasks)[number]
          waiting.delete(task)
          if ('error' in settled) unplanned.push(unplannedHole(task, settled.error))
          else if ('fault' in settled.result)
            unplanned.push({ hole: task.asked.hole.ref, ...settled.result.fault })
          else holes.push(settled.result.use)
        }
      } catch (error) {
        if (!signal.aborted) throw error
        unplanned.push(...[...waiting].map((task) => unplannedHole(task, null)))
      }
    })
  } finally {
    await pool.close()
    bar?.stop()
  }
  return { holes, unplanned }
}

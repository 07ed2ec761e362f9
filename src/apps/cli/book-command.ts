import { availableParallelism } from 'node:os'
import { Failure } from '#faults/failure.ts'
import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { pageName } from '#golf/player/first-name.ts'
import type { Player } from '#golf/player/player.ts'
import { HANDICAP_ALLOWANCES } from '#golf/rules/handicap-allowances.ts'
import { strokesReceived } from '#golf/rules/strokes-received.ts'
import { handicapOn } from '#golf/strategy/handicap-on.ts'
import { renderPdf } from '#outside/print/render-pdf.ts'
import { printedLetters } from '#outside/print/type-setter.ts'
import type { BookFacts } from '#paper/book/book-facts.ts'
import { bookPages } from '#paper/book/book-pages.ts'
import { cardPages } from '#paper/book/card-pages.ts'
import { checkPages } from '#paper/book/check-pages.ts'
import { imposeBook } from '#paper/book/impose.ts'
import type { Page } from '#paper/book/page.ts'
import type { BookHole } from '#paper/book/planned-hole.ts'
import { rulerOf } from '#paper/draw/ruler.ts'
import { batchTasks } from './batch-tasks.ts'
import { type AskedBook, type BookOptions, parseBook } from './book-options.ts'
import { loadCourse } from './load-course.ts'
import { loadDay } from './load-day.ts'
import { loadPlayer } from './load-player.ts'
import type { Machine } from './machine.ts'
import { type BatchRow, planBatch } from './plan-batch.ts'
import { planPool } from './plan-pool.ts'
import { printJson, printLines } from './print-answer.ts'
import { progressBar } from './progress-bar.ts'
import { whileInterruptible } from './while-interruptible.ts'
import { requireFolder, writeBytes } from './write-file.ts'

/**
 * `marram book`: the printed plan of a round. Every page is measured against the Rules before anything is written. Returns
 * the exit code: 1 when a hole has no plan, which its page then says.
 */
export async function bookCommand(path: string, options: BookOptions, machine: Machine): Promise<number> {
  const asked = parseBook(options)
  requireFolder(options.out)
  const { course } = await loadCourse(path)
  const player = loadPlayer(options.player)
  const day = loadDay(options.day, course, options, machine)
  const rows = await planRound(course, player, day, asked, options, machine)
  const facts = factsOf(course, player, day, asked, rows)
  const pages = asked.kind === 'book' ? bookPages(facts, asked.greenScale) : cardPages(facts)
  const refused = checkPages(pages, asked.purpose, course.localRules)
  const [first] = refused
  if (first !== undefined) throw new Failure(first.code, `${first.message} ${first.advice}`, first.place)
  const title = `${course.name}, ${facts.playerName}`
  const sheets =
    asked.kind === 'book'
      ? imposeBook(pages, asked.paper, asked.hasFolds)
      : pages.map(({ drawing }) => drawing)
  writeBytes(options.out, await renderPdf(sheets, { title }))
  const without = facts.holes.filter(({ plan }) => plan === null)
  report(pages, facts, options, machine)
  return without.length > 0 ? 1 : 0
}

/** Plans every hole asked for. Throws MAR-WORK-001 when it is stopped, so that no half book is written. */
async function planRound(
  course: Course,
  player: Player,
  day: Day,
  asked: AskedBook,
  options: BookOptions,
  machine: Machine,
): Promise<BatchRow[]> {
  const filed = { file: options.player, player }
  const batch = batchTasks({
    course,
    hole: options.hole,
    players: [filed],
    day,
    question: asked.question,
    units: asked.units,
  })
  const rows: BatchRow[] = []
  const bar = progressBar('plan', machine, options.quiet === true)
  const workers = asked.question.workers ?? availableParallelism()
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

function factsOf(
  course: Course,
  player: Player,
  day: Day,
  { question, purpose, units, paper, hasFolds }: AskedBook,
  rows: readonly BatchRow[],
): BookFacts {
  const holes = course.holes.flatMap(({ ref }): BookHole[] => {
    const row = rows.find((one) => ('planned' in one ? one.planned.hole.ref : one.unplanned.hole) === ref)
    if (row === undefined) return []
    if ('planned' in row) {
      const { hole, plan } = row.planned
      return [{ hole, plan, missing: '', received: receivedOn(course, player, hole) }]
    }
    const hole = bareHole(course, ref, question.tee, day)
    if (hole === null) return []
    return [{ hole, plan: null, missing: row.unplanned.message, received: receivedOn(course, player, hole) }]
  })
  return {
    course: course.name,
    playerName: pageName(player.name, player.age),
    player,
    day,
    holes,
    localRules: course.localRules,
    purpose,
    ruler: rulerOf(units),
    paper,
    hasFolds,
    credit: course.credit,
    letters: printedLetters(),
  }
}

/** A hole that has no plan, for its card; `null` where not even its line and markers are known. */
function bareHole(course: Course, ref: string, tee: string | undefined, day: Day): BookHole['hole'] | null {
  try {
    return holeFromCourse(course, ref, { tee, day })
  } catch (error) {
    if (error instanceof Failure) return null
    throw error
  }
}

function receivedOn(course: Course, player: Player, hole: BookHole['hole']): number | null {
  const allowance = HANDICAP_ALLOWANCES['Individual stroke play']
  const handicap = handicapOn(course.teeSets, hole.teeName, player, allowance)
  return handicap === null || hole.strokeIndex === null ? null : strokesReceived(handicap, hole.strokeIndex)
}

/** Says what was written, and names the holes without a plan. */
function report(
  pages: readonly Page[],
  { holes, purpose }: BookFacts,
  options: BookOptions,
  machine: Machine,
): void {
  const unplanned = holes.filter(({ plan }) => plan === null).map(({ hole }) => hole.ref)
  if (options.json) {
    const names = pages.map(({ name }) => name)
    printJson({ schema: 'book/1', file: options.out, for: purpose, pages: names, unplanned }, machine)
    return
  }
  if (options.quiet) return
  printLines(
    [
      `${pages.length} pages for ${purpose === 'counting' ? 'a counting round' : 'practice'} in ${options.out}.`,
      ...(unplanned.length === 0
        ? []
        : [`Without a plan, as their pages say: hole ${unplanned.join(', ')}.`]),
    ],
    machine,
  )
}

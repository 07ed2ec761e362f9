import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import { practiceOf } from '#golf/round/practice.ts'
import { NO_PRACTICE_NOTES, parsePracticeNotes } from '#golf/round/practice-notes.ts'
import type { ToldPractice } from '#golf/round/practice-words.ts'
import { retestDay } from '#golf/round/retest-day.ts'
import { practiceFacts } from '#paper/book/practice-facts.ts'
import { sheetTitle } from '#paper/book/sheet-words.ts'
import { batchTasks } from './batch-tasks.ts'
import { loadCourse } from './load-course.ts'
import { loadDay } from './load-day.ts'
import { loadPlayer } from './load-player.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { parseQuestion } from './parse-question.ts'
import { parseCount } from './parse-values.ts'
import { practicePool } from './plan-pool.ts'
import { practiceDocument } from './practice-document.ts'
import { practicePage } from './practice-page.ts'
import { printJson, printLines } from './print-answer.ts'
import { exitCodeOf } from './print-faults.ts'
import { readText } from './read-file.ts'
import { parseUnits } from './units-of-the-reader.ts'
import { workHoles } from './work-holes.ts'
import { askedSheet, writeSheet } from './write-sheet.ts'

/** The options of `marram practice`, as typed. */
export interface PracticeOptions extends GlobalOptions {
  readonly player: string
  readonly hole: string
  readonly tee?: string
  readonly day?: string
  readonly hours?: string
  readonly from?: string
  readonly weeks?: string
  readonly notes?: string
  readonly workers?: string
  readonly out?: string
  readonly paper?: string
}

/** What `marram practice` found out. */
export interface PracticeReport extends ToldPractice {
  readonly course: string
  readonly player: string
  readonly faults: readonly Fault[]
}

const USUAL_HOURS = 10
const USUAL_WEEKS = 6
const MOST_HOURS = 500
const MOST_WEEKS = 52

/** `marram practice`: what an hour is worth, part by part. Returns the exit code: 1 when a hole was not weighed. */
export async function practiceCommand(
  path: string,
  options: PracticeOptions,
  machine: Machine,
): Promise<number> {
  const units = parseUnits(options.units)
  const hours =
    options.hours === undefined ? USUAL_HOURS : parseCount(options.hours, '--hours', 1, MOST_HOURS)
  const weeks =
    options.weeks === undefined ? USUAL_WEEKS : parseCount(options.weeks, '--weeks', 1, MOST_WEEKS)
  const retest = options.from === undefined ? null : weeksAfter(options.from, weeks)
  // `--from` is a day here, and no place of the ball.
  const { from: _, out: __, paper: ___, ...asked } = options
  const question = parseQuestion({ ...asked, player: [options.player], flips: false })
  const notes =
    options.notes === undefined
      ? NO_PRACTICE_NOTES
      : parsePracticeNotes(readText(options.notes), options.notes)
  const sheet = askedSheet(options)
  const { course } = await loadCourse(path)
  const player = loadPlayer(options.player)
  const day = loadDay(options.day, course, options, machine)
  const filed = { file: options.player, player }
  const batch = batchTasks({ course, hole: options.hole, players: [filed], day, question, units })
  const worked = await workHoles(
    practicePool,
    batch.tasks.map(({ asked }) => ({ hole: asked.hole, player, day: asked.day })),
    question.workers,
    options.quiet === true,
    machine,
  )
  const report: PracticeReport = {
    course: course.name,
    player: player.name,
    practice: practiceOf(
      worked.answers.map(({ answer }) => answer.practice),
      notes.rates,
    ),
    notes,
    hours,
    weeks,
    retest,
    faults: [
      ...batch.refused.map(({ unplanned }): Fault => {
        const { code, message, hole } = unplanned
        return { severity: 'error', code: code as Fault['code'], message, place: `hole ${hole}`, advice: '' }
      }),
      ...worked.faults,
    ],
  }
  if (sheet !== null) await writeSheet(sheet, practiceFacts(report, sheetTitle(course.name, player)))
  if (options.json) printJson(practiceDocument(report), machine)
  else
    printLines(
      [...practicePage(report, machine), ...(sheet === null ? [] : ['', `The sheet is in ${sheet.path}.`])],
      machine,
    )
  return exitCodeOf(report.faults)
}

/** The day so many weeks later. Throws MAR-USAGE-002 for what is no day. */
function weeksAfter(text: string, weeks: number): string {
  const day = retestDay(text, weeks)
  if (day === null)
    throw new Failure(
      'MAR-USAGE-002',
      `"${text}" is no day. Write year, month and day: 2026-11-25.`,
      '--from',
    )
  return day
}

import type { Fault } from '#faults/fault.ts'
import { seasonOf } from '#golf/round/season.ts'
import { seasonChange } from '#golf/round/season-change.ts'
import { seasonQuestions, splitRounds } from '#golf/round/season-questions.ts'
import type { ToldSeason } from '#golf/round/season-words.ts'
import { seasonFacts } from '#paper/book/season-facts.ts'
import { sheetTitle } from '#paper/book/sheet-words.ts'
import { loadCourse } from './load-course.ts'
import { loadDay } from './load-day.ts'
import { loadPlayer } from './load-player.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { parseWorkers } from './parse-workers.ts'
import { seasonPool } from './plan-pool.ts'
import { printJson, printLines } from './print-answer.ts'
import { exitCodeOf } from './print-faults.ts'
import { loadRounds } from './rounds-of-days.ts'
import { seasonDocument } from './season-document.ts'
import { seasonPage } from './season-page.ts'
import { parseUnits } from './units-of-the-reader.ts'
import { workHoles } from './work-holes.ts'
import { askedSheet, writeSheet } from './write-sheet.ts'

/** The options of `marram season`, as typed. */
export interface SeasonOptions extends GlobalOptions {
  readonly player: string
  readonly round: readonly string[]
  /** Rounds of the season before. */
  readonly before: readonly string[]
  readonly tee?: string
  readonly day: readonly string[]
  readonly full?: boolean
  readonly workers?: string
  readonly out?: string
  readonly paper?: string
}

/** What `marram season` found out. */
export interface SeasonReport extends ToldSeason {
  readonly course: string
  readonly player: string
  readonly faults: readonly Fault[]
}

/**
 * `marram season`: rounds of one player taken together, each against the plan of its own day: the plan kept, what choices
 * cost, what stands out and what does not. Returns the exit code: 1 when a hole was left out or a log has errors.
 */
export async function seasonCommand(path: string, options: SeasonOptions, machine: Machine): Promise<number> {
  const units = parseUnits(options.units)
  const workers = parseWorkers(options.workers)
  const sheet = askedSheet(options)
  const { course } = await loadCourse(path)
  const player = loadPlayer(options.player)
  const { before, ...own } = options
  const all = { ...own, round: [...before, ...own.round] }
  const { rounds, ...read } = loadRounds(all, course, units, machine, [player])
  const isQuick = options.full !== true
  const calm = loadDay(undefined, course, options, machine)
  const asked = seasonQuestions(rounds, { course, player, day: calm, tee: options.tee ?? null }, isQuick)
  const worked = await workHoles(seasonPool, asked.questions, workers, options.quiet === true, machine)
  const split = splitRounds(rounds, worked.answers)
  const isEarlier = new Set(rounds.slice(0, before.length).map(({ key }) => key))
  const recapsOf = (wanted: boolean) =>
    split.rounds.filter(({ key }) => isEarlier.has(key) === wanted).map(({ recap }) => recap)
  const recaps = recapsOf(false)
  const answer: SeasonReport = {
    course: course.name,
    player: player.name,
    season: seasonOf(recaps, player),
    change: before.length === 0 ? null : seasonChange(recapsOf(true), recaps, player),
    withoutDay: rounds.filter(({ day }) => day === null).length,
    isQuick,
    faults: [...read.faults, ...asked.faults, ...split.faults, ...worked.faults],
  }
  if (sheet !== null) await writeSheet(sheet, seasonFacts(answer, sheetTitle(course.name, player)))
  if (options.json) printJson(seasonDocument(answer), machine)
  else
    printLines(
      [...seasonPage(answer, machine), ...(sheet === null ? [] : ['', `The letter is in ${sheet.path}.`])],
      machine,
    )
  return exitCodeOf(answer.faults)
}

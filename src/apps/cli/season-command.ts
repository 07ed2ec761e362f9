import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import { seasonOf } from '#golf/round/season.ts'
import {
  dayOfRound,
  type SeasonRound,
  seasonQuestions,
  splitRounds,
  twinRounds,
} from '#golf/round/season-questions.ts'
import type { ToldSeason } from '#golf/round/season-words.ts'
import { seasonFacts } from '#paper/book/season-facts.ts'
import { sheetTitle } from '#paper/book/sheet-words.ts'
import { loadCourse } from './load-course.ts'
import { loadDay } from './load-day.ts'
import { loadPlayer } from './load-player.ts'
import { loadRound } from './load-round.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { parseWorkers } from './parse-workers.ts'
import { seasonPool } from './plan-pool.ts'
import { printJson, printLines } from './print-answer.ts'
import { exitCodeOf } from './print-faults.ts'
import { seasonDocument } from './season-document.ts'
import { seasonPage } from './season-page.ts'
import { parseUnits } from './units-of-the-reader.ts'
import { workHoles } from './work-holes.ts'
import { askedSheet, writeSheet } from './write-sheet.ts'

/** The options of `marram season`, as typed. */
export interface SeasonOptions extends GlobalOptions {
  readonly player: string
  readonly round: readonly string[]
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
  const days = options.day.map((file) => loadDay(file, course, options, machine))
  const faults: Fault[] = []
  const rounds = options.round.map((file): SeasonRound => {
    const read = loadRound(file, units)
    faults.push(...read.faults.map((fault) => ({ ...fault, place: `${file}, ${fault.place}` })))
    return { name: file, round: read.round, day: dayOfRound(read.round, days) }
  })
  requireOnce(rounds)
  const isQuick = options.full !== true
  const calm = loadDay(undefined, course, options, machine)
  const asked = seasonQuestions(rounds, { course, player, day: calm, tee: options.tee ?? null }, isQuick)
  const worked = await workHoles(seasonPool, asked.questions, workers, options.quiet === true, machine)
  const split = splitRounds(rounds, worked.answers)
  const recaps = split.rounds.map(({ recap }) => recap)
  faults.push(...asked.faults, ...split.faults, ...worked.faults)
  const answer: SeasonReport = {
    course: course.name,
    player: player.name,
    season: seasonOf(recaps, player),
    withoutDay: rounds.filter(({ day }) => day === null).length,
    isQuick,
    faults,
  }
  if (sheet !== null) await writeSheet(sheet, seasonFacts(answer, sheetTitle(course.name, player)))
  if (options.json) printJson(seasonDocument(answer), machine)
  else
    printLines(
      [...seasonPage(answer, machine), ...(sheet === null ? [] : ['', `The letter is in ${sheet.path}.`])],
      machine,
    )
  return exitCodeOf(faults)
}

/** The same file twice would count a round twice. */
function requireOnce(rounds: readonly SeasonRound[]): void {
  const twins = twinRounds(rounds)
  if (twins === null) return
  throw new Failure('MAR-ROUND-020', `${twins[1].name} is the same round as ${twins[0].name}.`, '--round')
}

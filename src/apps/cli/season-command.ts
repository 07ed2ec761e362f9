import type { Fault } from '#faults/fault.ts'
import type { HoleRecap } from '#golf/round/recap.ts'
import { type RoundRecap, recapRound } from '#golf/round/recap-round.ts'
import type { RoundHole } from '#golf/round/round.ts'
import { type Season, seasonOf } from '#golf/round/season.ts'
import { type SeasonChange, seasonChange } from '#golf/round/season-change.ts'
import { loadCourse } from './load-course.ts'
import { loadDay } from './load-day.ts'
import { loadPlayer } from './load-player.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { parseWorkers } from './parse-workers.ts'
import { seasonPool } from './plan-pool.ts'
import type { SeasonQuestion } from './plan-task.ts'
import { printJson, printLines } from './print-answer.ts'
import { exitCodeOf } from './print-faults.ts'
import { holesOfRounds, loadRounds } from './rounds-of-days.ts'
import { seasonDocument } from './season-document.ts'
import { seasonFacts } from './season-facts.ts'
import { seasonPage } from './season-page.ts'
import { parseUnits } from './units-of-the-reader.ts'
import { errorFault, workHoles } from './work-holes.ts'
import { askedSheet, sheetTitle, writeSheet } from './write-sheet.ts'

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
export interface SeasonReport {
  readonly course: string
  readonly player: string
  readonly season: Season
  /** What changed against the season before, `null` where its rounds were not given. */
  readonly change: SeasonChange | null
  /** Rounds without a day file of their date: held against a calm, normal day. */
  readonly withoutDay: number
  readonly isQuick: boolean
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
  const { rounds, ...read } = loadRounds(all, course, units, machine)
  const faults: Fault[] = [...read.faults]
  const isQuick = options.full !== true
  const calm = loadDay(undefined, course, options, machine)
  const asked = holesOfRounds(course, rounds, calm, options.tee)
  const questions = asked.holes.map(
    ({ hole, day, logged }): SeasonQuestion => ({
      ...{ hole, player, day, isQuick },
      logged: logged.map((one) => one.hole),
    }),
  )
  const worked = await workHoles(seasonPool, questions, workers, options.quiet === true, machine)
  const holes = new Map<RoundHole, HoleRecap>()
  for (const { question, answer } of worked.answers)
    for (const [index, one] of answer.recaps.entries())
      if ('fault' in one) faults.push(errorFault(one.fault))
      else holes.set(question.logged[index] as RoundHole, one.recap)
  const recapsOf = (some: typeof rounds): RoundRecap[] =>
    some
      .map(({ round }) => recapRound(round.holes.flatMap((logged) => holes.get(logged) ?? [])))
      .filter((recap) => recap.holes.length > 0)
  const recaps = recapsOf(rounds.slice(before.length))
  const earlier = recapsOf(rounds.slice(0, before.length))
  faults.push(
    ...asked.faults,
    ...[...earlier, ...recaps].flatMap((recap) => recap.holes.flatMap((hole) => hole.faults)),
    ...worked.faults,
  )
  const answer: SeasonReport = {
    course: course.name,
    player: player.name,
    season: seasonOf(recaps, player),
    change: before.length === 0 ? null : seasonChange(earlier, recaps, player),
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

import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import type { Player } from '#golf/player/player.ts'
import type { HoleRecap } from '#golf/round/recap.ts'
import { recapRound } from '#golf/round/recap-round.ts'
import type { Round, RoundHole } from '#golf/round/round.ts'
import { type Season, seasonOf } from '#golf/round/season.ts'
import { loadCourse } from './load-course.ts'
import { loadDay } from './load-day.ts'
import { loadPlayer } from './load-player.ts'
import { loadRound } from './load-round.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { parseWorkers } from './parse-workers.ts'
import { seasonPool } from './plan-pool.ts'
import type { SeasonQuestion } from './plan-task.ts'
import { printJson, printLines } from './print-answer.ts'
import { exitCodeOf } from './print-faults.ts'
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
  /** Rounds without a day file of their date: held against a calm, normal day. */
  readonly withoutDay: number
  readonly isQuick: boolean
  readonly faults: readonly Fault[]
}

interface LoadedRound {
  readonly file: string
  readonly round: Round
  readonly day: Day | null
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
  const rounds = options.round.map((file): LoadedRound => {
    const read = loadRound(file, units)
    faults.push(...read.faults.map((fault) => ({ ...fault, place: `${file}, ${fault.place}` })))
    return { file, round: read.round, day: dayOf(read.round, days) }
  })
  requireOnce(rounds)
  const isQuick = options.full !== true
  const calm = loadDay(undefined, course, options, machine)
  const asked = questionsOf(course, player, rounds, calm, { tee: options.tee, isQuick })
  const worked = await workHoles(seasonPool, asked.questions, workers, options.quiet === true, machine)
  const holes = new Map<RoundHole, HoleRecap>()
  for (const { question, answer } of worked.answers)
    for (const [index, one] of answer.recaps.entries())
      if ('fault' in one) faults.push(errorFault(one.fault))
      else holes.set(question.logged[index] as RoundHole, one.recap)
  const recaps = rounds
    .map(({ round }) =>
      recapRound(
        round.holes.flatMap((logged) => {
          const recap = holes.get(logged)
          return recap === undefined ? [] : [recap]
        }),
      ),
    )
    .filter((recap) => recap.holes.length > 0)
  faults.push(
    ...asked.faults,
    ...recaps.flatMap((recap) => recap.holes.flatMap((hole) => hole.faults)),
    ...worked.faults,
  )
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

/** The day file of a round's date; the only one where a round has no date. */
function dayOf({ date }: Round, days: readonly Day[]): Day | null {
  if (date === null) return days.length === 1 ? (days[0] ?? null) : null
  return days.find((day) => day.date === date) ?? null
}

/** The same file twice would count a round twice. */
function requireOnce(rounds: readonly LoadedRound[]): void {
  const seen = new Map<string, string>()
  for (const { file, round } of rounds) {
    const key = JSON.stringify(round)
    const before = seen.get(key)
    if (before !== undefined)
      throw new Failure('MAR-ROUND-020', `${file} is the same round as ${before}.`, '--round')
    seen.set(key, file)
  }
}

/** A question for each hole, tee and day: all that was logged there. */
function questionsOf(
  course: Course,
  player: Player,
  rounds: readonly LoadedRound[],
  calm: Day,
  { tee, isQuick }: { readonly tee: string | undefined; readonly isQuick: boolean },
): { readonly questions: readonly SeasonQuestion[]; readonly faults: readonly Fault[] } {
  const groups = new Map<string, { question: Omit<SeasonQuestion, 'logged'>; logged: RoundHole[] }>()
  const faults: Fault[] = []
  for (const { file, round, day } of rounds)
    for (const logged of round.holes) {
      const markers = tee ?? round.tee ?? undefined
      const key = JSON.stringify([logged.ref, markers ?? null, day])
      const known = groups.get(key)
      if (known !== undefined) {
        known.logged.push(logged)
        continue
      }
      try {
        const played = day ?? calm
        const hole = holeFromCourse(course, logged.ref, { tee: markers, day: played })
        groups.set(key, { question: { hole, player, day: played, isQuick }, logged: [logged] })
      } catch (error) {
        if (!(error instanceof Failure)) throw error
        faults.push({ ...errorFault(error), place: `${file}, ${error.where}` })
      }
    }
  return { questions: [...groups.values()].map(({ question, logged }) => ({ ...question, logged })), faults }
}

import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { Course } from '#golf/course/course.ts'
import { type Day, REFERENCE_DAY } from '#golf/course/day.ts'
import type { Player } from '#golf/player/player.ts'
import { matchOfRounds, type PlayedRound, type RoundMatch } from '#golf/round/match-of-rounds.ts'
import type { RecapQuestion } from '#golf/round/recap-hole.ts'
import { recapQuestions } from '#golf/round/recap-questions.ts'
import { recapRound } from '#golf/round/recap-round.ts'
import type { Round } from '#golf/round/round.ts'
import { roundCard } from '#golf/round/round-card.ts'
import { recapFacts } from '#paper/book/recap-facts.ts'
import { sheetTitle } from '#paper/book/sheet-words.ts'
import { loadCourse } from './load-course.ts'
import { loadDay } from './load-day.ts'
import { loadPlayer } from './load-player.ts'
import { loadRound } from './load-round.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { parseWorkers } from './parse-workers.ts'
import { recapPool } from './plan-pool.ts'
import { printJson, printLines } from './print-answer.ts'
import { exitCodeOf } from './print-faults.ts'
import { recapDocument } from './recap-document.ts'
import { recapPage } from './recap-page.ts'
import { parseUnits, type ReaderUnits } from './units-of-the-reader.ts'
import { workHoles } from './work-holes.ts'
import { askedSheet, writeSheet } from './write-sheet.ts'

/** The options of `marram recap`, as typed. */
export interface RecapOptions extends GlobalOptions {
  readonly player: string
  readonly round: string
  readonly hole: string
  readonly tee?: string
  readonly day?: string
  readonly workers?: string
  readonly today?: boolean
  readonly opponent?: string
  readonly opponentRound?: string
  readonly out?: string
  readonly paper?: string
}

/**
 * `marram recap`: a round that was played, split into decision, execution and luck against the plan of that day. Returns
 * the exit code: 1 when a hole was left out or the log has errors.
 */
export async function recapCommand(path: string, options: RecapOptions, machine: Machine): Promise<number> {
  const units = parseUnits(options.units)
  const workers = parseWorkers(options.workers)
  const sheet = askedSheet(options)
  const { course } = await loadCourse(path)
  const given = loadPlayer(options.player)
  const { round, planNumbers, faults } = loadRound(options.round, units, {
    course: course.name,
    players: [given],
  })
  const against = options.today ? null : planNumbers
  const player = against?.player ?? given
  // What the weather was is told last by who gives its file.
  const day =
    against === null || options.day !== undefined
      ? loadDay(options.day, course, options, machine)
      : (against.day ?? REFERENCE_DAY)
  const asked = questionsOf(course, player, day, round, options)
  const worked = await workHoles(recapPool, asked.questions, workers, options.quiet === true, machine)
  const holes = worked.answers.map(({ answer }) => answer.recap)
  const answer = {
    course: course.name,
    player: player.name,
    round,
    hasDay: options.day !== undefined || (against !== null && against.day !== null),
    against,
    recap: recapRound(holes),
    // A handicap is of the day of play: that of the file that is given.
    card: roundCard(course, given, round, options.tee ?? round.tee),
    match: matchAgainst(course, { player: given, round, tee: options.tee ?? round.tee }, options, units),
    faults: [...asked.faults, ...faults, ...holes.flatMap((hole) => hole.faults), ...worked.faults],
  }
  if (sheet !== null && holes.length > 0)
    await writeSheet(sheet, recapFacts(answer, sheetTitle(course.name, player), units))
  if (options.json) printJson(recapDocument(answer), machine)
  else
    printLines(
      [
        ...recapPage(answer, units, machine),
        ...(sheet === null || holes.length === 0 ? [] : ['', `The sheet is in ${sheet.path}.`]),
      ],
      machine,
    )
  return exitCodeOf(answer.faults)
}

/** The same round as a match, where an opponent's is given; what cannot be read of it throws. */
function matchAgainst(
  course: Course,
  own: PlayedRound,
  { opponent, opponentRound }: RecapOptions,
  units: ReaderUnits,
): RoundMatch | null {
  if (opponent === undefined && opponentRound === undefined) return null
  if (opponent === undefined || opponentRound === undefined)
    throw new Failure(
      'MAR-USAGE-002',
      'A match needs the other player and the other round: --opponent and --opponent-round.',
      opponent === undefined ? '--opponent' : '--opponent-round',
    )
  const player = loadPlayer(opponent)
  const { round } = loadRound(opponentRound, units, { course: course.name, players: [player] })
  return matchOfRounds(course, own, { player, round, tee: round.tee ?? own.tee })
}

/** A question a logged hole; what cannot be asked is a fault. Throws MAR-COURSE-001 for a hole that was named and not logged. */
function questionsOf(
  course: Course,
  player: Player,
  day: Day,
  round: Round,
  { hole: named, tee, day: dayFile }: RecapOptions,
): { readonly questions: readonly RecapQuestion[]; readonly faults: readonly Fault[] } {
  const chosen = round.holes.filter(({ ref }) => named === 'all' || ref === named)
  if (chosen.length === 0)
    throw new Failure(
      'MAR-COURSE-001',
      `The round has no hole ${named}. Its holes are: ${round.holes.map(({ ref }) => ref).join(', ')}.`,
      '--hole',
    )
  const faults: Fault[] = []
  if (dayFile !== undefined && round.date !== null && day.date !== null && round.date !== day.date)
    faults.push({
      severity: 'warning',
      code: 'MAR-ROUND-012',
      message: `The round was played on ${round.date}, the day file is of ${day.date}.`,
      place: dayFile,
      advice: 'Give the day file of the round.',
    })
  const asked = recapQuestions({ course, player, day, tee: tee ?? round.tee }, chosen)
  return { questions: asked.questions, faults: [...faults, ...asked.faults] }
}

import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Player } from '#golf/player/player.ts'
import type { Club } from '#golf/round/club.ts'
import { clubOfRounds, clubQuestions, type MemberRound } from '#golf/round/club-rounds.ts'
import { type StrokeIndexes, tooFewWords } from '#golf/round/club-words.ts'
import { dayOfRound } from '#golf/round/holes-of-rounds.ts'
import { parseRound } from '#golf/round/parse-round.ts'
import { isPlayedOn, isSameName, roundBelongs, STILL_OPEN } from '#golf/round/round-belongs.ts'
import { splitRounds, twinRounds } from '#golf/round/season-questions.ts'
import { FEWEST_MEMBERS, LEAST_MEMBERS, MOST_LEAST_MEMBERS } from '#golf/round/settings.ts'
import { clubFacts } from '#paper/book/club-facts.ts'
import { clubDocument } from './club-document.ts'
import { clubPage } from './club-page.ts'
import { loadCourse } from './load-course.ts'
import { loadDay } from './load-day.ts'
import { loadPlayer } from './load-player.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { parseCount } from './parse-values.ts'
import { parseWorkers } from './parse-workers.ts'
import { seasonPool } from './plan-pool.ts'
import { printJson, printLines } from './print-answer.ts'
import { exitCodeOf } from './print-faults.ts'
import { readText } from './read-file.ts'
import { workHoles } from './work-holes.ts'
import { askedSheet, writeSheet } from './write-sheet.ts'

/** The options of `marram club`, as typed. */
export interface ClubOptions extends GlobalOptions {
  readonly player: readonly string[]
  readonly round: readonly string[]
  readonly day: readonly string[]
  readonly least?: string
  readonly full?: boolean
  readonly workers?: string
  readonly out?: string
  readonly paper?: string
}

/** What `marram club` found out: no name, no file and no date is in it. */
export interface ClubReport {
  readonly course: string
  readonly club: Club
  readonly indexes: StrokeIndexes
  readonly isQuick: boolean
  readonly faults: readonly Fault[]
}

/**
 * `marram club`: rounds of many members taken together without names. Returns the exit code: 1 when a round or hole was left
 * out. Throws MAR-ROUND-023 for rounds of fewer members than the smallest group.
 */
export async function clubCommand(path: string, options: ClubOptions, machine: Machine): Promise<number> {
  const workers = parseWorkers(options.workers)
  const minimum =
    options.least === undefined
      ? LEAST_MEMBERS
      : parseCount(options.least, '--least', FEWEST_MEMBERS, MOST_LEAST_MEMBERS)
  const sheet = askedSheet(options)
  const { course } = await loadCourse(path)
  const players = options.player.map(loadPlayer)
  const days = options.day.map((file) => loadDay(file, course, options, machine))
  const { rounds, faults } = memberRounds(options.round, course, players, days)
  const members = new Set(rounds.map(({ member }) => member)).size
  if (members < minimum) throw new Failure('MAR-ROUND-023', tooFewWords(members, minimum), '--round')
  const isQuick = options.full !== true
  const asked = clubQuestions(rounds, players, course, isQuick)
  const worked = await workHoles(seasonPool, asked.questions, workers, options.quiet === true, machine)
  const split = splitRounds(rounds, worked.answers)
  const report: ClubReport = {
    course: course.name,
    club: clubOfRounds(split.rounds, minimum),
    indexes: Object.fromEntries(course.holes.map(({ ref, strokeIndex }) => [ref, strokeIndex])),
    isQuick,
    faults: [...faults, ...asked.faults, ...split.faults, ...worked.faults],
  }
  if (sheet !== null) {
    const { club, indexes } = report
    await writeSheet(sheet, clubFacts(club, indexes, course.name, isQuick))
  }
  if (options.json) printJson(clubDocument(report), machine)
  else
    printLines(
      [...clubPage(report, machine), ...(sheet === null ? [] : ['', `The page is in ${sheet.path}.`])],
      machine,
    )
  return exitCodeOf(report.faults)
}

/** The rounds of the players that were given, each under a number alone; one of nobody among them is left out and told. */
function memberRounds(
  files: readonly string[],
  course: Course,
  players: readonly Player[],
  days: readonly Day[],
): { readonly rounds: readonly MemberRound[]; readonly faults: readonly Fault[] } {
  const rounds: MemberRound[] = []
  const faults: Fault[] = []
  for (const [index, file] of files.entries()) {
    const name = `round ${index + 1}`
    const text = readText(file)
    const read = parseRound(text, name)
    const { player, course: played, isOpen } = roundBelongs(text, name)
    const member = player === null ? -1 : players.findIndex((one) => isSameName(one.name, player))
    const one = { name, round: read.round, day: dayOfRound(read.round, days), member }
    if (isOpen)
      faults.push({
        severity: 'error',
        code: 'MAR-ROUND-014',
        message: STILL_OPEN,
        place: name,
        advice: 'Close it where it is written down.',
      })
    else if (!isPlayedOn(played, course.name))
      faults.push({
        severity: 'error',
        code: 'MAR-ROUND-015',
        message: `The round was played on ${played}, the course file is of ${course.name}: it was left out.`,
        place: name,
        advice: 'Give rounds of this course.',
      })
    else if (member < 0)
      faults.push({
        severity: 'error',
        code: 'MAR-ROUND-022',
        message: 'The round does not say whose it is among the players that were given.',
        place: name,
        advice: 'Write the name of the player file as "player", or give that file with --player.',
      })
    else if (twinRounds([...rounds.filter((other) => other.member === member), one]) !== null)
      faults.push({
        severity: 'error',
        code: 'MAR-ROUND-020',
        message: 'The round was given before, and counts once.',
        place: name,
        advice: 'Give each round once.',
      })
    else {
      rounds.push(one)
      faults.push(...read.faults.map((fault) => ({ ...fault, place: `${name}, ${fault.place}` })))
    }
  }
  return { rounds, faults }
}

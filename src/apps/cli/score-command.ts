import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { Competition } from '#golf/round/competition.ts'
import { type CompetitionCard, competitionCard } from '#golf/round/competition-card.ts'
import type { EnteredSide } from '#golf/round/entered-side.ts'
import { loadCourse } from './load-course.ts'
import { loadPlayer } from './load-player.ts'
import { loadRound } from './load-round.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { type CompetitionOptions, parseCompetition } from './parse-competition.ts'
import { printJson, printLines } from './print-answer.ts'
import { exitCodeOf } from './print-faults.ts'
import { scoreDocument } from './score-document.ts'
import { scorePage } from './score-page.ts'
import { parseUnits } from './units-of-the-reader.ts'

/** The options of `marram score`, as typed. */
export interface ScoreOptions extends GlobalOptions, CompetitionOptions {
  readonly player: readonly string[]
  readonly round: readonly string[]
  readonly opponent: readonly string[]
  readonly opponentRound: readonly string[]
  readonly tee?: string
}

/** What `marram score` found out. */
export interface ScoreAnswer {
  readonly course: string
  readonly competition: Competition
  readonly card: CompetitionCard
  readonly faults: readonly Fault[]
}

/**
 * `marram score`: the card of a side, or of two sides against each other, in a form of play. Returns the exit code: 1 when a round has errors or
 * totals cannot be compared.
 */
export async function scoreCommand(path: string, options: ScoreOptions, machine: Machine): Promise<number> {
  const units = parseUnits(options.units)
  const competition = parseCompetition(options)
  const { course } = await loadCourse(path)
  const faults: Fault[] = []
  const sideOf = (players: readonly string[], rounds: readonly string[]): EnteredSide => ({
    players: players.map(loadPlayer),
    rounds: rounds.map((file) => {
      const { round, course: named, faults: own } = loadRound(file, units)
      faults.push(...own.map((fault) => ({ ...fault, place: `${file}, ${fault.place}` })))
      return { file, round, course: named, tee: options.tee ?? round.tee }
    }),
  })
  const own = sideOf(options.player, options.round)
  const theirs = sideOf(options.opponent, options.opponentRound)
  const hasOther = theirs.players.length > 0 || theirs.rounds.length > 0
  requireOnce([...options.round, ...options.opponentRound])
  requireOnce([...options.player, ...options.opponent])
  const card = competitionCard(course, competition, hasOther ? [own, theirs] : [own])
  const answer: ScoreAnswer = {
    course: course.name,
    competition,
    card,
    faults: [...faults, ...card.faults],
  }
  if (options.json) printJson(scoreDocument(answer), machine)
  else printLines(scorePage(answer, machine), machine)
  return exitCodeOf(answer.faults)
}

/** Two partners may have the same scores or the same name, but not the same file. Throws MAR-ROUND-020. */
function requireOnce(files: readonly string[]): void {
  const twice = files.find((file, place) => files.indexOf(file) < place)
  if (twice !== undefined) throw new Failure('MAR-ROUND-020', `${twice} is given twice.`, twice)
}

import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { BagOfShots } from '#golf/player/bag-of-shots.ts'
import { encodePlayer } from '#golf/player/encode-player.ts'
import { beforeShots } from '#golf/player/learn-from-shots.ts'
import type { LearnedPlayer } from '#golf/player/learn-player.ts'
import { parseClubName } from '#golf/player/parse-club-name.ts'
import { parsePlayer } from '#golf/player/parse-player.ts'
import { type LearnedFromRounds, learnFromRounds } from '#golf/round/learn-from-rounds.ts'
import { readRounds } from '#golf/round/read-rounds.ts'
import type { ShotReading } from '#outside/formats/shot-table.ts'
import { bagPicture } from './bag-picture.ts'
import { clubPicture } from './club-picture.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { patternDocument } from './pattern-document.ts'
import { patternPage } from './pattern-page.ts'
import { type ChangedPlans, changedPlans } from './pattern-plans.ts'
import { loadRoundShots, type RoundsOfFiles } from './pattern-rounds.ts'
import { printJson, printLines } from './print-answer.ts'
import { exitCodeOf } from './print-faults.ts'
import { readText } from './read-file.ts'
import { readShots } from './read-shots.ts'
import { requireClub } from './require-club.ts'
import { parseUnits } from './units-of-the-reader.ts'
import { whileWorking } from './while-working.ts'
import { writeText } from './write-file.ts'

/** The options of `marram pattern`, as typed. */
export interface PatternOptions extends GlobalOptions {
  /** One table a file. */
  readonly shots?: readonly string[]
  /** Rounds on the course, and the days they were played on. */
  readonly round: readonly string[]
  readonly day: readonly string[]
  readonly tee?: string
  readonly full?: boolean
  readonly workers?: string
  readonly columns?: string
  readonly mapping?: string
  readonly out?: string
  readonly picture?: string
  /** The club of the picture, in any usual spelling; the whole bag without it. */
  readonly club?: string
  /** A course whose plans are compared, and which of its holes: all unless given. */
  readonly course?: string
  readonly hole?: string
}

/** What `marram pattern` found out. */
export interface PatternAnswer extends LearnedFromRounds {
  readonly reading: ShotReading
  /** What the rounds said, `null` without any. */
  readonly rounds: RoundsOfFiles | null
  /** Of the files and of the clubs in them. */
  readonly faults: readonly Fault[]
  /** The file that was written, `null` without `--out`. */
  readonly out: string | null
  /** Plans that change with the shots, `null` without `--course`. */
  readonly plans: ChangedPlans | null
}

/**
 * `marram pattern`: shots, in tables and in rounds, → what they change in a player, and with `--out` the player file with
 * that. With `--course` which plans change too. Returns the exit code.
 */
export async function patternCommand(
  path: string,
  options: PatternOptions,
  machine: Machine,
): Promise<number> {
  const units = parseUnits(options.units)
  const club = pictureClub(options)
  if (options.hole !== undefined && options.course === undefined)
    throw new Failure('MAR-USAGE-002', 'A hole is of a course: give --course as well.', '--hole')
  requireSource(options)
  const file = parsePlayer(readText(path), path)
  const reading = options.shots === undefined ? NO_TABLES : readShots(options.shots, options)
  const unlearned = beforeShots(file, reading.shots)
  const rounds =
    options.course === undefined || options.round.length === 0
      ? null
      : await loadRoundShots(unlearned.before, { ...options, course: options.course }, units, machine)
  const known = whileWorking(
    `Learning from ${reading.shots.length + (rounds?.shots.length ?? 0)} shots`,
    options.quiet === true,
    machine,
    () => learnFromRounds(unlearned, rounds ?? readRounds([], [])),
  )
  const { before, bag, learned } = known
  if (club !== null) requireClub(before, club)
  const out = options.out ?? null
  if (out !== null) writeText(out, encodePlayer(learned.player))
  if (options.picture !== undefined)
    writeText(
      options.picture,
      club === null ? bagPicture(learned.player, units) : clubPicture(known, club, units),
    )
  const faults = [...reading.faults, ...(rounds?.faults ?? []), ...otherClubs(bag, learned)]
  const plans =
    options.course === undefined
      ? null
      : await changedPlans(known, { ...options, course: options.course }, units, machine)
  const answer: PatternAnswer = { ...known, reading, rounds, faults, out, plans }
  if (options.json) printJson(patternDocument(answer), machine)
  else printLines(patternPage(answer, units, options.quiet === true, machine), machine)
  return plans !== null && plans.unplanned.length > 0 ? 1 : exitCodeOf(faults)
}

/** Where shots come from must be said, and where rounds were played. Throws MAR-USAGE-001 and 002. */
function requireSource({ shots, round, course, day, tee }: PatternOptions): void {
  if (shots === undefined && round.length === 0)
    throw new Failure('MAR-USAGE-001', 'Say what to learn from: --shots, --round or both.', '--shots')
  if (round.length > 0 && course === undefined)
    throw new Failure('MAR-USAGE-002', 'A round is played on a course: give --course as well.', '--round')
  if (round.length === 0 && (day.length > 0 || tee !== undefined))
    throw new Failure('MAR-USAGE-002', 'A day and a tee are of rounds: give --round as well.', '--round')
}

/** No table of shots was given. */
const NO_TABLES: ShotReading = { rows: 0, shots: [], repeated: 0, setAside: 0, unread: 0, faults: [] }

/** The club whose pattern is drawn, as a bag names it; `null` for the whole bag. Throws MAR-USAGE-002. */
function pictureClub({ club, picture }: PatternOptions): string | null {
  if (club === undefined) return null
  if (picture === undefined)
    throw new Failure('MAR-USAGE-002', 'A club is of a picture: give --picture as well.', '--club')
  const spelled = parseClubName(club)
  return spelled.kind === 'club' ? spelled.name : club.trim()
}

/** Clubs that were hit and that the player does not have. */
function otherClubs({ shots }: BagOfShots, { unused, player }: LearnedPlayer): Fault[] {
  const counts = new Map<string, number>()
  for (const { index, why } of unused) {
    const club = shots[index]?.club
    if (why === 'club' && club !== undefined) counts.set(club, (counts.get(club) ?? 0) + 1)
  }
  return [...counts].map(([club, count]) => ({
    severity: 'warning',
    code: 'MAR-SHOTS-019',
    message: `${count === 1 ? 'A shot was' : `${count} shots were`} hit with a ${club}, which ${player.name} does not have; nothing was learned from ${count === 1 ? 'it' : 'them'}.`,
    place: '',
    advice: 'List the club in the player file if it is in the bag.',
  }))
}

import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { BagOfShots } from '#golf/player/bag-of-shots.ts'
import { encodePlayer } from '#golf/player/encode-player.ts'
import { type LearnedFromShots, learnFromShots } from '#golf/player/learn-from-shots.ts'
import type { LearnedPlayer } from '#golf/player/learn-player.ts'
import { parseClubName } from '#golf/player/parse-club-name.ts'
import { parsePlayer } from '#golf/player/parse-player.ts'
import type { ShotReading } from '#outside/formats/shot-table.ts'
import { bagPicture } from './bag-picture.ts'
import { clubPicture } from './club-picture.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { patternDocument } from './pattern-document.ts'
import { patternPage } from './pattern-page.ts'
import { type ChangedPlans, changedPlans } from './pattern-plans.ts'
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
  readonly shots: readonly string[]
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
export interface PatternAnswer extends LearnedFromShots {
  readonly reading: ShotReading
  /** Of the files and of the clubs in them. */
  readonly faults: readonly Fault[]
  /** The file that was written, `null` without `--out`. */
  readonly out: string | null
  /** Plans that change with the shots, `null` without `--course`. */
  readonly plans: ChangedPlans | null
}

/** `marram pattern`: shots → what they change in a player, and with `--out` the player file with that. With `--course` which plans change too. Returns the exit code. */
export async function patternCommand(
  path: string,
  options: PatternOptions,
  machine: Machine,
): Promise<number> {
  const units = parseUnits(options.units)
  const club = pictureClub(options)
  if (options.hole !== undefined && options.course === undefined)
    throw new Failure('MAR-USAGE-002', 'A hole is of a course: give --course as well.', '--hole')
  const file = parsePlayer(readText(path), path)
  const reading = readShots(options.shots, options)
  const known = whileWorking(
    `Learning from ${reading.shots.length} shots`,
    options.quiet === true,
    machine,
    () => learnFromShots(file, reading.shots),
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
  const faults = [...reading.faults, ...otherClubs(bag, learned)]
  const plans =
    options.course === undefined
      ? null
      : await changedPlans(known, { ...options, course: options.course }, units, machine)
  const answer: PatternAnswer = { ...known, reading, faults, out, plans }
  if (options.json) printJson(patternDocument(answer), machine)
  else printLines(patternPage(answer, units, options.quiet === true, machine), machine)
  return plans !== null && plans.unplanned.length > 0 ? 1 : exitCodeOf(faults)
}

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

import { type ClubKind, clubKind } from './club-names.ts'
import { completeCarries, knownCarry } from './complete-carries.ts'
import { defaultBag } from './default-bag.ts'
import { indexFromScore } from './index-from-score.ts'
import { informedPatterns } from './informed-patterns.ts'
import type { Club, Player } from './player.ts'
import type { ClubFile, ClubNumber, PlayerFile, ShortGameNumber } from './player-file.ts'
import {
  driverCarryFromClub,
  handicapFromDriverCarry,
  type PriorPattern,
  priorDriverCarry,
  priorPattern,
  priorRun,
  skillHandicap,
} from './prior.ts'
import { priorPutting, priorStrokesLost } from './prior-near-green.ts'
import { isChipped, priorRollPerCarry } from './roll-per-carry.ts'
import { saidPuttingHandicap, saidStrokesLost } from './said-prior.ts'
import { LISTED_CLUBS_THAT_MAKE_A_BAG } from './settings.ts'
import { priorShortSpread } from './short-spread.ts'

/**
 * Fills every number the file lacks from the prior: handicap index, sex, what was said
 * and the carries that are known. What was
 * filled is named in `guesses` by its dotted path in the file. Neighbouring known clubs inform a missing number.
 */
export function completePlayer(file: PlayerFile): Player {
  const driver = kindOf('driver')
  const guesses = new Set<string>()
  const said = file.said ?? {}
  const stated =
    file.handicapIndex ?? (said.usual_score === undefined ? undefined : indexFromScore(said.usual_score))
  const driverCarry = likelyDriverCarry(file, driver, stated ?? 0)
  const handicapIndex = stated ?? handicapFromDriverCarry(driver, driverCarry, file)
  if (file.handicapIndex === undefined) guesses.add('handicapIndex')

  const listed = file.clubs.map((club) => kindOf(club.name))
  const isFilled =
    file.bag === 'fill' || (file.bag === undefined && listed.length < LISTED_CLUBS_THAT_MAKE_A_BAG)
  const kinds = isFilled ? defaultBag(listed, driverCarry) : listed
  const written = new Map(file.clubs.map((club) => [club.name, club]))
  const carries = completeCarries(kinds, written, driverCarry)
  const patterns = informedPatterns(kinds, written, {
    handicapIndex,
    sex: file.sex,
    hand: file.hand,
    said,
  })

  const clubs = kinds.map((kind) =>
    completeClub(
      kind,
      written.get(kind.name),
      carries.get(kind.name) ?? 0,
      patterns.get(kind.name) ?? priorPattern(kind, handicapIndex, file.sex),
      guesses,
    ),
  )
  clubs.sort((a, b) => b.carryMetres - a.carryMetres)
  return {
    name: file.name,
    hand: file.hand,
    handicapIndex,
    sex: file.sex,
    ...(file.age === undefined ? {} : { age: file.age }),
    ...(file.said === undefined ? {} : { said: file.said }),
    ...(file.sentences === undefined ? {} : { sentences: file.sentences }),
    ...(file.learnedRounds === undefined ? {} : { learnedRounds: file.learnedRounds }),
    clubs,
    putting: completePutting(file, handicapIndex, guesses),
    shortGame: completeShortGame(
      file,
      handicapIndex,
      clubs.map(({ name }) => kindOf(name)),
      guesses,
    ),
    guesses,
  }
}

function completeClub(
  kind: ClubKind,
  written: ClubFile | undefined,
  carryMetres: number,
  prior: PriorPattern,
  guesses: Set<string>,
): Club {
  const fill = (number: ClubNumber, value: number): number =>
    filled(`clubs.${kind.name}.${number}`, written?.[number], value, guesses)
  const carry = fill('carry_m', carryMetres)
  return {
    name: kind.name,
    carryMetres: carry,
    totalMetres: fill('total_m', carry + priorRun(kind, carry)),
    directionSdDegrees: fill('direction_sd_deg', prior.directionSdDegrees),
    leftShare: fill('left_share', prior.leftShare),
    rightShare: fill('right_share', prior.rightShare),
    curveShare: fill('curve_share', prior.curveShare),
    carrySdShare: fill('carry_sd_share', prior.carrySdShare),
    mishitShare: fill('mishit_share', prior.mishitShare),
    mishitCarryShare: fill('mishit_carry_share', prior.mishitCarryShare),
    mishitCarrySdShare: fill('mishit_carry_sd_share', prior.mishitCarrySdShare),
    shots: written?.shots ?? 0,
    lies: written?.lies ?? {},
    isGuess: written?.carry_m === undefined,
  }
}

function completeShortGame(
  file: PlayerFile,
  handicapIndex: number,
  kinds: readonly ClubKind[],
  guesses: Set<string>,
): Player['shortGame'] {
  const written = file.shortGame
  const fill = (number: ShortGameNumber, value: number): number =>
    filled(`shortGame.${number}`, written[number], value, guesses)
  const strokesLost = fill(
    'strokes_lost',
    saidStrokesLost(priorStrokesLost(skillHandicap(handicapIndex, file.sex)), file.said ?? {}),
  )
  const spread = priorShortSpread(strokesLost)
  return {
    strokesLost,
    carrySdShare: fill('carry_sd_share', spread.carrySdShare),
    directionSdDegrees: fill('direction_sd_deg', spread.directionSdDegrees),
    poorShare: fill('poor_share', spread.poorShare),
    ...(written.shots === undefined ? {} : { shots: written.shots }),
    rollPerCarry: Object.fromEntries(
      kinds.filter(isChipped).map(({ name, loftDegrees }) => {
        const path = `shortGame.roll_per_carry.${name}`
        return [
          name,
          filled(path, written.roll_per_carry?.[name], priorRollPerCarry(loftDegrees), guesses),
        ] as const
      }),
    ),
  }
}

function completePutting(file: PlayerFile, handicapIndex: number, guesses: Set<string>): Player['putting'] {
  const prior = priorPutting(saidPuttingHandicap(skillHandicap(handicapIndex, file.sex), file.said ?? {}))
  return {
    directionSdDegrees: filled(
      'putting.direction_sd_deg',
      file.putting.direction_sd_deg,
      prior.directionSdDegrees,
      guesses,
    ),
    distanceSdShare: filled(
      'putting.distance_sd_share',
      file.putting.distance_sd_share,
      prior.distanceSdShare,
      guesses,
    ),
    ...(file.putting.shots === undefined ? {} : { shots: file.putting.shots }),
  }
}

/** Driver carry, metres: from the longest known club by the ladder, else from the published bands. */
function likelyDriverCarry(file: PlayerFile, driver: ClubKind, handicapIndex: number): number {
  const longest = file.clubs
    .filter((club) => knownCarry(kindOf(club.name), club) !== null)
    .sort((a, b) => kindOf(b.name).carryShare - kindOf(a.name).carryShare)[0]
  if (longest === undefined) return priorDriverCarry(driver, handicapIndex, file)
  return driverCarryFromClub(kindOf(longest.name), knownCarry(kindOf(longest.name), longest) ?? 0)
}

function filled(path: string, written: number | undefined, prior: number, guesses: Set<string>): number {
  if (written !== undefined) return written
  guesses.add(path)
  return prior
}

function kindOf(name: string): ClubKind {
  const kind = clubKind(name)
  if (kind === null) throw new RangeError(`unknown club ${name}: parsePlayer refuses it`)
  return kind
}

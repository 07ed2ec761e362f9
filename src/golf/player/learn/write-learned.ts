import type { LearnedClub } from '../learn-player.ts'
import type { Club, Player } from '../player.ts'
import type { ClubNumber } from '../player-file.ts'
import type { ClubObservations } from './observations.ts'
import type { Learned } from './summarise.ts'

/** The names in the file that a learned number stands under. */
const FIELDS: Readonly<Record<Learned, readonly ClubNumber[]>> = {
  carry: ['carry_m'],
  run: ['total_m'],
  directionSd: ['direction_sd_deg'],
  side: ['left_share', 'right_share'],
  carrySd: ['carry_sd_share'],
  mishit: ['mishit_share'],
  mishitCarry: ['mishit_carry_share'],
  mishitCarrySd: ['mishit_carry_sd_share'],
}

/** A learned number as the club has it. */
export function numberOf(club: Club, number: Learned): number {
  return NUMBER_OF[number](club)
}

const NUMBER_OF: Readonly<Record<Learned, (club: Club) => number>> = {
  carry: (club) => club.carryMetres,
  run: (club) => club.totalMetres - club.carryMetres,
  directionSd: (club) => club.directionSdDegrees,
  side: (club) => club.leftShare / (club.leftShare + club.rightShare),
  carrySd: (club) => club.carrySdShare,
  mishit: (club) => club.mishitShare,
  mishitCarry: (club) => club.mishitCarryShare,
  mishitCarrySd: (club) => club.mishitCarrySdShare,
}

/** Whether the number was more than a guess before. */
export function isKnown(number: Learned, club: Club, guesses: ReadonlySet<string>): boolean {
  return club.shots > 0 || FIELDS[number].every((field) => !guesses.has(`clubs.${club.name}.${field}`))
}

/**
 * The club with what was learned. Of a club without shots of its own only guesses follow the other clubs: what was
 * typed of it stays.
 */
export function learnedClub(club: Club, learned: LearnedClub, guesses: ReadonlySet<string>): Club {
  const isLearned = (number: Learned): boolean => learned.shots > 0 || !isKnown(number, club, guesses)
  const value = (number: Learned): number =>
    isLearned(number) ? learned.numbers[number].after : numberOf(club, number)
  const carryMetres = value('carry')
  const toLeft = value('side')
  // The product of the two shares is not learned: their size belongs to the spread.
  const size = Math.sqrt(club.leftShare * club.rightShare)
  const ratio = Math.sqrt(toLeft / (1 - toLeft))
  return {
    ...club,
    carryMetres,
    totalMetres: carryMetres + Math.max(0, value('run')),
    directionSdDegrees: value('directionSd'),
    leftShare: isLearned('side') ? size * ratio : club.leftShare,
    rightShare: isLearned('side') ? size / ratio : club.rightShare,
    carrySdShare: value('carrySd'),
    mishitShare: club.mishitShare === 0 && learned.shots === 0 ? 0 : value('mishit'),
    // Shares of the file end at 1.
    mishitCarryShare: Math.min(1, value('mishitCarry')),
    mishitCarrySdShare: value('mishitCarrySd'),
    shots: club.shots + (learned.shots === 0 ? 0 : Math.max(1, Math.round(learned.weight))),
    isGuess: club.isGuess && learned.shots === 0,
  }
}

/** What is still a guess: a number leaves the list when shots with its own club show it. */
export function learnedGuesses(
  player: Player,
  observations: readonly ClubObservations[],
  learned: readonly LearnedClub[],
): ReadonlySet<string> {
  const guesses = new Set(player.guesses)
  player.clubs.forEach((club, index) => {
    const { shots } = observations[index] as ClubObservations
    if (shots.count === 0) return
    const shown: Learned[] = ['carry', 'carrySd', 'mishit']
    if (shots.direction.some(isWritten)) shown.push('directionSd', 'side')
    if (shots.run.some(isWritten) || shots.total.some(isWritten)) shown.push('run')
    const mishits = shots.count * (learned[index] as LearnedClub).numbers.mishit.after
    if (mishits >= LEAST_MISHITS) shown.push('mishitCarry', 'mishitCarrySd')
    for (const number of shown)
      for (const field of FIELDS[number]) guesses.delete(`clubs.${club.name}.${field}`)
  })
  return guesses
}

/** So many mishits, expected, show what a mishit carries (our assumption). */
const LEAST_MISHITS = 2

function isWritten(value: number): boolean {
  return !Number.isNaN(value)
}

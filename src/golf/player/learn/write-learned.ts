import type { LearnedClub } from '../learn-player.ts'
import type { Club, Player } from '../player.ts'
import { FIELDS, isKnown, type Learned, numberOf } from './learned-numbers.ts'
import type { ClubObservations } from './observations.ts'

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
    if (shots.direction.some(isWritten) || shots.ways.some((ways) => ways?.direction.some(isWritten)))
      shown.push('directionSd', 'side')
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

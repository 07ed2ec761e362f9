import type { Club } from '../player.ts'
import type { ClubNumber } from '../player-file.ts'

/** Every number that is learned, in the order it is told. */
export const LEARNED = [
  'carry',
  'run',
  'directionSd',
  'side',
  'carrySd',
  'mishit',
  'mishitCarry',
  'mishitCarrySd',
] as const
export type Learned = (typeof LEARNED)[number]

/** The names in the file that a learned number stands under. */
export const FIELDS: Readonly<Record<Learned, readonly ClubNumber[]>> = {
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

import type { Club } from './player.ts'
import { MISHIT_DIRECTION_FACTOR } from './settings.ts'

/** Mean total of all shots with a club, metres, mishits among them; a mishit runs as far as the stock shot. */
export function meanTotalOfAllShots(club: Club): number {
  return club.totalMetres - club.carryMetres * club.mishitShare * (1 - club.mishitCarryShare)
}

/** Spread of direction over good strikes and mishits together, degrees. */
export function directionSdOfAllShots(club: Club): number {
  return club.directionSdDegrees * Math.sqrt(1 + club.mishitShare * (MISHIT_DIRECTION_FACTOR ** 2 - 1))
}

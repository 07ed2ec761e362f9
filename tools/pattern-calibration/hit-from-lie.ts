import { lieEffect } from '../../src/golf/player/lie-effects.ts'
import type { Lie, LieFactors, Player } from '../../src/golf/player/player.ts'
import type { ShotRecord } from '../../src/golf/player/shot-record.ts'
import { hitShots } from './hit-shots.ts'

/** How many times what a lie is assumed to do a player's own factors are. */
export type LieTimes = Readonly<Required<Omit<LieFactors, 'shots'>>>

/**
 * So many shots with every club from a lie, hit as a plan believes that this player hits them from there, if the lie's
 * factors are so many times those that `guess` was thought to have.
 */
export function hitFromLie(
  truth: Player,
  guess: Player,
  lie: Lie,
  times: LieTimes,
  shots: number,
  seed: number,
): ShotRecord[] {
  const there: Player = {
    ...truth,
    clubs: truth.clubs.map((club) => {
      const effect = lieEffect(lie, club.name, guess)
      const carryMetres = club.carryMetres * effect.carry * times.carry
      return {
        ...club,
        carryMetres,
        totalMetres: carryMetres + club.totalMetres - club.carryMetres,
        directionSdDegrees: club.directionSdDegrees * effect.direction * times.direction,
        carrySdShare: club.carrySdShare * effect.distance * times.distance,
        mishitShare: Math.min(0.9, club.mishitShare * effect.mishit * times.mishit),
      }
    }),
  }
  return hitShots(there, guess, shots, seed).map((shot) => ({ ...shot, lie }))
}

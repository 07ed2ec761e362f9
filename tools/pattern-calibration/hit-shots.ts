import type { Player } from '../../src/golf/player/player.ts'
import { MISHIT_DIRECTION_FACTOR, RUN_NOISE } from '../../src/golf/player/settings.ts'
import type { ShotRecord } from '../../src/golf/player/shot-record.ts'
import { LEAST_MISHIT_CARRY_SHARE } from '../../src/golf/strategy/settings.ts'
import { seededGenerator } from '../../src/numbers/statistics/seeded-generator.ts'
import { splitNormalQuantile } from '../../src/numbers/statistics/split-normal.ts'
import { normals } from './true-player.ts'

/**
 * So many shots with every club from the fairway, hit as a plan believes that this player hits them, and written down
 * without a word on how they were struck. `guess` is who the player was thought to be: single runs lie apart by the run
 * that was expected.
 */
export function hitShots(truth: Player, guess: Player, shots: number, seed: number): ShotRecord[] {
  const uniform = seededGenerator(seed + 0.25)
  const normal = normals(seed + 0.75)
  return truth.clubs.flatMap((club, index) => {
    const expected = guess.clubs[index]
    const runSd = Math.max(
      RUN_NOISE.leastMetres,
      RUN_NOISE.share * (expected === undefined ? 0 : expected.totalMetres - expected.carryMetres),
    )
    return Array.from({ length: shots }, (): ShotRecord => {
      const isGood = uniform() >= club.mishitShare
      const wide = club.directionSdDegrees * (isGood ? 1 : MISHIT_DIRECTION_FACTOR) * (Math.PI / 180)
      const direction = splitNormalQuantile(uniform(), wide * club.leftShare, wide * club.rightShare)
      const share = isGood
        ? 1 + club.carrySdShare * normal()
        : club.mishitCarryShare + club.mishitCarrySdShare * normal()
      const carry = club.carryMetres * Math.max(share, LEAST_MISHIT_CARRY_SHARE)
      const along = carry * Math.cos(direction)
      const run = club.totalMetres - club.carryMetres + runSd * (isGood ? 1 : MISHIT_RUNS_APART) * normal()
      return {
        date: null,
        club: club.name,
        lie: 'fairway',
        carryMetres: along,
        totalMetres: along + run,
        offlineMetres: carry * Math.sin(direction),
        strike: null,
      }
    })
  })
}

/** Runs of mishits lie so many times further apart: what learning assumes (`MISHIT_RUN_FACTOR`). */
const MISHIT_RUNS_APART = 3

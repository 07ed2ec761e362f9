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
 * that was expected. `hasStrays`: as many slips of the pen and odd runs among them as learning reckons with.
 */
export function hitShots(
  truth: Player,
  guess: Player,
  shots: number,
  seed: number,
  hasStrays = false,
): ShotRecord[] {
  const uniform = seededGenerator(seed + 0.25)
  const normal = normals(seed + 0.75)
  return truth.clubs.flatMap((club, index) => {
    const expected = guess.clubs[index]
    const runSd = Math.max(
      RUN_NOISE.leastMetres,
      RUN_NOISE.share * (expected === undefined ? 0 : expected.totalMetres - expected.carryMetres),
    )
    return Array.from({ length: shots }, (): ShotRecord => {
      if (hasStrays && uniform() < STRAY.share)
        return strayShot(club.name, expected?.carryMetres ?? 0, uniform)
      const isGood = uniform() >= club.mishitShare
      const wide = club.directionSdDegrees * (isGood ? 1 : MISHIT_DIRECTION_FACTOR) * (Math.PI / 180)
      const direction = splitNormalQuantile(uniform(), wide * club.leftShare, wide * club.rightShare)
      const share = isGood
        ? 1 + club.carrySdShare * normal()
        : club.mishitCarryShare + club.mishitCarrySdShare * normal()
      const carry = club.carryMetres * Math.max(share, LEAST_MISHIT_CARRY_SHARE)
      const plainRun =
        club.totalMetres - club.carryMetres + runSd * (isGood ? 1 : MISHIT_RUNS_APART) * normal()
      const run = hasStrays && uniform() < STRAY_RUN.share ? strayRun(uniform) : plainRun
      return record(club.name, carry, direction, run)
    })
  })
}

function strayShot(club: string, carryMetres: number, uniform: () => number): ShotRecord {
  const carry = STRAY.mostCarryShare * carryMetres * uniform()
  const direction = Math.PI * (uniform() - 0.5)
  return record(club, carry, direction, strayRun(uniform))
}

function strayRun(uniform: () => number): number {
  return STRAY_RUN.least + STRAY_RUN.metres * uniform()
}

function record(club: string, carry: number, direction: number, run: number): ShotRecord {
  const along = carry * Math.cos(direction)
  return {
    date: null,
    club,
    lie: 'fairway',
    carryMetres: along,
    totalMetres: along + run,
    offlineMetres: carry * Math.sin(direction),
    strike: null,
  }
}

/** What learning assumes of strays (`STRAY`, `STRAY_RUN`), written out once more. */
const STRAY = { share: 0.002, mostCarryShare: 2.5 }
const STRAY_RUN = { share: 0.01, least: -20, metres: 120 }

/** Runs of mishits lie so many times further apart: what learning assumes (`MISHIT_RUN_FACTOR`). */
const MISHIT_RUNS_APART = 3

import { drawPlayer } from '../../src/golf/player/draw-player.ts'
import type { Player } from '../../src/golf/player/player.ts'
import { DOUBT } from '../../src/golf/player/settings.ts'
import { normalQuantile } from '../../src/numbers/statistics/normal.ts'
import { seededGenerator } from '../../src/numbers/statistics/seeded-generator.ts'

/**
 * A player as is assumed before any shot: what the draws of a plan move, and the three numbers that they leave where
 * they are (run, carry of a mishit and its spread), by their guesses' doubts.
 */
export function truePlayer(guess: Player, seed: number): Player {
  const normal = normals(seed + 0.5)
  const shared = { run: normal(), mishitCarry: normal(), mishitCarrySd: normal() }
  const moved = (number: keyof typeof shared): number =>
    DOUBT[number].guess.shared * shared[number] + DOUBT[number].guess.own * normal()
  const factor = (number: 'mishitCarry' | 'mishitCarrySd'): number => {
    const { shared: ofAll, own } = DOUBT[number].guess
    return Math.exp(moved(number) - (ofAll ** 2 + own ** 2) / 2)
  }
  const drawn = drawPlayer(guess, seed)
  return {
    ...drawn,
    clubs: drawn.clubs.map((club) => ({
      ...club,
      totalMetres: club.carryMetres + (club.totalMetres - club.carryMetres) * (1 + moved('run')),
      mishitCarryShare: club.mishitCarryShare * factor('mishitCarry'),
      mishitCarrySdShare: club.mishitCarrySdShare * factor('mishitCarrySd'),
    })),
  }
}

/** Standard normal numbers, the same for the same seed. */
export function normals(seed: number): () => number {
  const uniform = seededGenerator(seed)
  return () => normalQuantile(Math.min(1 - 1e-15, Math.max(1e-300, uniform())))
}

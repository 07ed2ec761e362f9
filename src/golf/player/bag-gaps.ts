import { GAP_SHARES } from './bag-settings.ts'
import type { Club } from './player.ts'

/** One club of the bag beside the next shorter one. */
export interface BagGap {
  readonly club: Club
  /** `null` for the shortest. */
  readonly next: Club | null
  /** Metres of carry to it; 0 for the shortest. */
  readonly gapMetres: number
  /** `overlap`: the two clubs do one job. `hole`: a distance between them has no club. */
  readonly verdict: 'even' | 'overlap' | 'hole'
}

/** The clubs, longest carry first, with the gap to the next and whether that is one: see {@link GAP_SHARES}. */
export function bagGaps(clubs: readonly Club[]): readonly BagGap[] {
  const sorted = [...clubs].sort((a, b) => b.carryMetres - a.carryMetres)
  const longest = sorted[0]?.carryMetres ?? 0
  return sorted.map((club, index) => {
    const next = sorted[index + 1] ?? null
    if (next === null) return { club, next, gapMetres: 0, verdict: 'even' }
    const gapMetres = club.carryMetres - next.carryMetres
    const widest = club.name === 'driver' ? GAP_SHARES.holeBelowDriver : GAP_SHARES.hole
    const verdict =
      gapMetres < GAP_SHARES.overlap * longest ? 'overlap' : gapMetres > widest * longest ? 'hole' : 'even'
    return { club, next, gapMetres, verdict }
  })
}

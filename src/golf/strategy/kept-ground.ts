import type { Hole } from '#golf/course/hole.ts'
import { type HoleGround, holeGround } from './hole-model.ts'

/**
 * Lays out grounds as {@link holeGround} does and keeps the last one, so that many players, or many lines, on one hole
 * need it once.
 */
export function keptGround(): (hole: Hole, cellMetres?: number) => HoleGround {
  let kept: { readonly key: string; readonly ground: HoleGround } | null = null
  return (hole, cellMetres) => {
    const key = JSON.stringify([hole, cellMetres ?? null])
    if (kept?.key !== key) kept = { key, ground: holeGround(hole, cellMetres) }
    return kept.ground
  }
}

import type { Crown } from '#golf/course/crown.ts'
import type { CrownRays } from './crown-rays.ts'
import { CROWN_PIECE_METRES, LOW_GROWTH_METRES } from './settings.ts'
import type { StrikePaths } from './strike-paths.ts'

/** Where a strike may be caught on its way: chances, and how far along as shares of the way to its landing. */
export interface Passage {
  count: number
  chance: Float64Array
  at: Float64Array
}

/** A passage to be written into, over and over. */
export function emptyPassage(): Passage {
  return { count: 0, chance: new Float64Array(64), at: new Float64Array(64) }
}

/**
 * Sends a strike along a ray and writes where crowns catch it. Returns the chance that none does and it comes to its
 * landing. The parts of a stretch of crowns over which the strike is not surely above them are passed in pieces; on each
 * the height goes in a straight line, and the share of it between lowest branches and top, and the share under the
 * branches, each catch with their chance per metre: 1 − exp(−density · metres).
 */
export function passCrownsInto(
  passage: Passage,
  crowns: readonly Crown[],
  rays: CrownRays,
  ray: number,
  paths: StrikePaths,
  k: number,
): number {
  passage.count = 0
  const reach = paths.reach[k] as number
  const { from, to } = rays
  const last = rays.first[ray + 1] as number
  let left = 1
  for (let stretch = rays.first[ray] as number; stretch < last; stretch++) {
    const begins = from[stretch] as number
    if (begins >= reach) break
    const ends = Math.min(to[stretch] as number, reach)
    const crown = crowns[rays.crown[stretch] as number] as Crown
    const step = Math.ceil(crown.topMetres * (paths.clearSteps[k] as number))
    const clearFrom = reach * (paths.clearFrom[step] ?? 1)
    const clearTo = reach * (paths.clearTo[step] ?? 1)
    if (clearFrom >= clearTo) left = passPiecesInto(passage, crown, begins, ends, paths, k, left)
    else {
      if (begins < clearFrom)
        left = passPiecesInto(passage, crown, begins, Math.min(ends, clearFrom), paths, k, left)
      const isLandingInIt = ends === reach && crown.topMetres < LOW_GROWTH_METRES
      if (ends > clearTo && !isLandingInIt)
        left = passPiecesInto(passage, crown, Math.max(begins, clearTo), ends, paths, k, left)
    }
  }
  return left
}

/** Passes one part of a stretch, in equal pieces. */
function passPiecesInto(
  passage: Passage,
  crown: Crown,
  begins: number,
  ends: number,
  paths: StrikePaths,
  k: number,
  leftBefore: number,
): number {
  const reach = paths.reach[k] as number
  const pieces = Math.ceil((ends - begins) / CROWN_PIECE_METRES)
  const length = (ends - begins) / pieces
  let left = leftBefore
  let next = heightAt(paths, k, begins)
  for (let piece = 0; piece < pieces; piece++) {
    const at = begins + piece * length
    const before = next
    next = heightAt(paths, k, at + length)
    const low = Math.min(before, next)
    const high = Math.max(before, next)
    if (low >= crown.topMetres) continue
    const depth =
      crown.densityPerMetre * shareBetween(low, high, crown.baseMetres, crown.topMetres) +
      crown.trunkDensityPerMetre * shareBetween(low, high, Number.NEGATIVE_INFINITY, crown.baseMetres)
    if (depth === 0) continue
    const caught = left * -Math.expm1(-depth * length)
    if (passage.count === passage.chance.length) grow(passage)
    passage.chance[passage.count] = caught
    passage.at[passage.count] = (at + length / 2) / reach
    passage.count += 1
    left -= caught
  }
  return left
}

/** Height of a strike above the ground at a distance from the ball, metres. */
export function heightAt(paths: StrikePaths, k: number, metres: number): number {
  const { heights } = paths
  const reach = paths.reach[k] as number
  const parts = heights.length - 1
  const at = (metres / reach) * parts
  const below = at >= parts ? parts - 1 : Math.floor(at)
  const low = heights[below] as number
  return (
    (low + (at - below) * ((heights[below + 1] as number) - low)) * reach * (paths.heightShare[k] as number)
  )
}

/** The share of the heights from `low` to `high` that lies between `bottom` and `top`. */
function shareBetween(low: number, high: number, bottom: number, top: number): number {
  if (high - low < LEVEL) return low >= bottom && low < top ? 1 : 0
  const length = Math.min(high, top) - Math.max(low, bottom)
  return length > 0 ? length / (high - low) : 0
}

/** Heights this near to each other, metres, are one. */
const LEVEL = 1e-9

function grow(passage: Passage): void {
  for (const name of ['chance', 'at'] as const) {
    const wider = new Float64Array(2 * passage[name].length)
    wider.set(passage[name])
    passage[name] = wider
  }
}

import type { RestTable } from './rest-table.ts'

/** How the strikes of one shot fly, as far as what stands in their way asks for it. Ways run straight to the landing. */
export interface StrikePaths {
  /** Heights at equal parts of the carry, as shares of it. */
  readonly heights: Float64Array
  /**
   * Shares of the way between which a flight is above a height, by the height's step from 0 to the highest share of the
   * carry; past the last step it never is.
   */
  readonly clearFrom: Float64Array
  readonly clearTo: Float64Array
  /** Factor on the heights of each strike, and distance to its landing in metres. */
  readonly heightShare: Float64Array
  readonly reach: Float64Array
  /** Steps of {@link clearFrom} to a metre of height, for each strike. */
  readonly clearSteps: Float64Array
  /** What becomes of a ball that drops straight down at a place. */
  readonly falls: readonly RestTable[]
}

export interface StrikePathsInput {
  readonly heights: Float64Array
  readonly heightShare: Float64Array
  readonly dx: Float64Array
  readonly dy: Float64Array
  readonly falls: readonly RestTable[]
}

/** Steps of height in which a flight's clear part is kept. */
const CLEAR_STEPS = 64

/** The ways of strikes to their landings. */
export function strikePaths(input: StrikePathsInput): StrikePaths {
  const { heights, heightShare, dx, dy } = input
  const count = dx.length
  const reach = new Float64Array(count)
  const clearSteps = new Float64Array(count)
  const apex = heights.reduce((most, height) => Math.max(most, height), 0)
  for (let k = 0; k < count; k++) {
    const metres = Math.hypot(dx[k] as number, dy[k] as number)
    reach[k] = metres
    clearSteps[k] = CLEAR_STEPS / (apex * metres * (heightShare[k] as number))
  }
  return {
    heights,
    ...clearParts(heights, apex),
    heightShare,
    reach,
    clearSteps,
    falls: input.falls,
  }
}

/** By step of height, the shares of the way at whose nodes a flight has come above it and is still above it. */
function clearParts(heights: Float64Array, apex: number): Pick<StrikePaths, 'clearFrom' | 'clearTo'> {
  const clearFrom = new Float64Array(CLEAR_STEPS + 1)
  const clearTo = new Float64Array(CLEAR_STEPS + 1)
  const parts = heights.length - 1
  for (let step = 0; step <= CLEAR_STEPS; step++) {
    const height = (apex * step) / CLEAR_STEPS
    let first = 0
    while (first < parts && (heights[first] as number) < height) first += 1
    let last = parts
    while (last > 0 && (heights[last] as number) < height) last -= 1
    clearFrom[step] = crossing(heights, height, first - 1, first) / parts
    clearTo[step] = crossing(heights, height, last + 1, last) / parts
  }
  return { clearFrom, clearTo }
}

/** Where the straight line from one node below a height to the next above it crosses it; the node above when there is none below. */
function crossing(heights: Float64Array, height: number, below: number, above: number): number {
  const low = heights[below]
  const high = heights[above] as number
  if (low === undefined || high <= low) return above
  return below + ((above - below) * (height - low)) / (high - low)
}

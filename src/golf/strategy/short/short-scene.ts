import { GROUND_CLASSES, type Ground, groundCode } from '#golf/course/ground.ts'
import type { Point } from '#numbers/geometry/point.ts'

/** The ground about a pin, as a ball that lands and rolls on it meets it. */
export interface ShortScene {
  readonly pin: Point
  /** What the ball is worth where it lies: what is replayed costs one penalty stroke and this. */
  readonly here: number
  /** Code of the ground class at a place. */
  codeAt(x: number, y: number): number
  /** Rise of the ground per metre towards +x and +y; `code` is the ground there. */
  gradientAt(x: number, y: number, code: number): Point
  /** Slowing of a rolling ball on level ground, m/s², by ground code. */
  readonly slowing: Float64Array
  /** Share of its rolling energy that a ball keeps which lands on this ground instead of the green, by ground code. */
  readonly landing: Float64Array
  /** To add to the level green's chances of one and of two putts from a place: what the slopes do. */
  puttShares(x: number, y: number): readonly [one: number, two: number]
  /** What a ball costs that came to this end at this place. */
  endCost(end: ShortEnd, x: number, y: number, code: number): EndCost
}

/** What putting on a green's slopes adds by place: strokes, and to the chances of one and two putts. */
export interface GreenAdditions {
  readonly strokes: Float64Array
  readonly one: Float64Array
  readonly two: Float64Array
}

/** At rest, in a penalty area of either colour, or out of bounds; the numbers of `outcome.ts`. */
export type ShortEnd = 0 | 1 | 2 | 3

/** Expected strokes of what is not replayed, and the share that goes back to where the stroke was made. */
export interface EndCost {
  readonly kept: number
  readonly back: number
}

/** What an end costs in all. */
export function totalCost(scene: Pick<ShortScene, 'here'>, { kept, back }: EndCost): number {
  return kept + back * (1 + scene.here)
}

/** By ground code: a number for every class of ground. */
export function byGround(numbers: Readonly<Record<Ground, number>>): Float64Array {
  return Float64Array.from(GROUND_CLASSES, (ground) => numbers[ground])
}

export const GREEN: number = groundCode('green')
export const OUT: number = groundCode('out')
export const RED: number = groundCode('penalty-red')
export const YELLOW: number = groundCode('penalty-yellow')

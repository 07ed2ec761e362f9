import type { Lie } from '#golf/player/player.ts'
import type { ReliefOption } from '#golf/rules/relief-options.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'

/** One option with the places it allows, before anything is valued. */
export interface ReliefChoice {
  readonly option: ReliefOption
  /** What the relief is measured from, hole frame. */
  readonly reference: Point
  /** Places for the ball that are worth weighing; at least one, all of them allowed. */
  readonly spots: readonly Point[]
  /** The relief area that goes with a place; empty where the ball is played or put back on one spot. */
  readonly areaAt: (spot: Point) => readonly Polygon[]
  /** The lie of every spot where it is not that of the ground there: a ball teed up again. */
  readonly lie?: Lie
  /** False where the survey cannot say what a stroke from there costs: in water. */
  readonly isValued: boolean
}

/** An option of the Rules that gives nothing here, and why. */
export interface EmptyChoice {
  readonly option: ReliefOption
  readonly reason: string
}

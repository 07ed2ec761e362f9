import type { Point, Polygon } from '#numbers/geometry/point.ts'
import type { Area, Tree } from './course.ts'

/**
 * One hole seen from one set of tee markers, in its hole frame: metres, origin at the markers,
 * y along the first leg of the hole line, x to the right.
 */
export interface Hole {
  readonly ref: string
  readonly name: string | null
  readonly par: number
  /** True when the survey has no par and it was taken from the length; a plan does not depend on it. */
  readonly isParGuess: boolean
  readonly strokeIndex: number | null
  readonly teeName: string
  /** From the markers `[0, 0]` through the bends to the pin. */
  readonly line: readonly Point[]
  /** Along the line, metres. */
  readonly lengthMetres: number
  /** True bearing of the y axis, degrees clockwise from north. */
  readonly bearingDegrees: number
  readonly pin: Point
  /** Outline of the green played to, in the hole frame; `null` when the survey lacks it. */
  readonly green: Polygon | null
  readonly greenFallPercent: number
  /** Direction of downhill in the hole frame, degrees clockwise from the y axis. */
  readonly greenFallTowardDegrees: number
  /** Height of the green above the markers, metres; 0 when unknown. */
  readonly riseMetres: number
  /** Every area that touches the hole's corridor, in the hole frame, in painting order. */
  readonly areas: readonly Area[]
  readonly trees: readonly Tree[]
  readonly localRules: readonly string[]
}

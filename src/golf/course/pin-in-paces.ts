import { polygonContains } from '#numbers/geometry/polygon.ts'
import { greenApproach } from './greens/green-approach.ts'
import type { Hole } from './hole.ts'
import { chordsAcross } from './measures/chords-across.ts'
import { gapFromZero } from './measures/intervals.ts'
import { PACE_METRES } from './settings.ts'

/** Where a hole is cut, as a pin sheet says it; whole paces. */
export interface PinInPaces {
  /** From the front edge along the line of approach. */
  readonly onPaces: number
  /** The green on that line. */
  readonly deepPaces: number
  /** From the nearer edge of the green at that depth; `null` when both are as near. */
  readonly side: 'left' | 'right' | null
  readonly sidePaces: number
}

/** The pin of a hole in paces; `null` without a green, or where the pin is not on it. */
export function pinInPaces({ green, pin, line }: Hole): PinInPaces | null {
  const approach = green && greenApproach(green, line.at(-2) ?? [0, 0])
  if (!approach || !polygonContains(green, pin)) return null
  const { headingRadians, front, depthMetres } = approach
  const [sin, cos] = [Math.sin(headingRadians), Math.cos(headingRadians)]
  const on = (pin[0] - front[0]) * sin + (pin[1] - front[1]) * cos
  const [chord] = chordsAcross(green, pin, headingRadians).sort((a, b) => gapFromZero(a) - gapFromZero(b))
  if (chord === undefined) return null
  const paces = (metres: number): number => Math.round(metres / PACE_METRES)
  const [left, right] = [paces(-chord[0]), paces(chord[1])]
  return {
    onPaces: paces(on),
    deepPaces: paces(depthMetres),
    side: left === right ? null : left < right ? 'left' : 'right',
    sidePaces: Math.min(left, right),
  }
}

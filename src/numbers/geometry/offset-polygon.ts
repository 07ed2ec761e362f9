import { offsetAreas } from './clipping/clipped-areas.ts'
import type { Polygon } from './point.ts'

/**
 * `polygon` grown by `metres` on every side (shrunk when negative; holes do the opposite), corners rounded with
 * an arc whose chords stay within 2 mm. It may fall apart or vanish: the list has one polygon a piece.
 */
export function offsetPolygon(polygon: Polygon, metres: number): Polygon[] {
  return offsetAreas([polygon], metres)
}

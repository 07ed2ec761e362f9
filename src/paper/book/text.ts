import type { Point } from '#numbers/geometry/point.ts'
import type { Face, TextShape } from '../draw/drawing.ts'

/** A line of text in ink. */
export function text(
  words: string,
  at: Point,
  size: number,
  face: Face,
  anchor: 'start' | 'middle' | 'end' = 'start',
): TextShape {
  return { kind: 'text', text: words, at, size, face, paint: 'ink', anchor }
}

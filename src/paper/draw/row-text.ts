import type { Shape } from './drawing.ts'
import { DRAW_SETTINGS } from './settings.ts'

/** Words or a figure in a row of a drawing, in the usual type. */
export function rowText(
  text: string,
  at: readonly [number, number],
  face: 'serif' | 'serif-bold' | 'sans' | 'sans-bold',
  anchor: 'start' | 'end' = 'start',
): Shape {
  return { kind: 'text', text, at, size: DRAW_SETTINGS.type, paint: 'ink', face, anchor }
}

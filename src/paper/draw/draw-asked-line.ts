import type { GroupShape } from './drawing.ts'
import type { AimMark } from './hole-drawing-options.ts'
import { drawAim } from './marks/draw-aim.ts'
import { drawIsolines } from './marks/draw-pattern.ts'
import type { Pattern } from './pattern.ts'
import type { Sheet } from './sheet.ts'
import { rectangleSteps } from './steps.ts'

/** The line a shot is asked to finish on, with the isolines of the club's pattern about it, cut to the frame. */
export function drawAskedLine(aim: AimMark, pattern: Pattern | null, sheet: Sheet): GroupShape {
  const { left, top, right, bottom } = sheet.frame
  return {
    kind: 'group',
    name: 'asked-line',
    clip: rectangleSteps(left, top, right - left, bottom - top),
    shapes: [...(pattern === null ? [] : drawIsolines(pattern, sheet)), drawAim(aim, sheet)],
  }
}

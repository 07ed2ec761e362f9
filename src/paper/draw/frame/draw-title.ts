import type { Hole } from '#golf/course/hole.ts'
import type { Point } from '#numbers/geometry/point.ts'
import type { Face, Shape } from '../drawing.ts'
import type { HoleDrawingOptions } from '../hole-drawing-options.ts'
import type { Ruler } from '../ruler.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import { lineSteps } from '../steps.ts'

/** Size of the title block, units: as high as what it says. */
export function titleSize(hole: Hole, options: HoleDrawingOptions): { width: number; height: number } {
  const lines = (options.courseName === undefined ? 0 : 14) + 38 + (hole.name === null ? 0 : 17) + 36
  const words = Math.max((options.courseName?.length ?? 0) * 7.6, (hole.name?.length ?? 0) * 7.2)
  return { width: Math.max(124, Math.min(190, words + 16)), height: lines }
}

/** The title block of the chart: hole, name, par, stroke index, length and tee, with its upper left corner at `at`. */
export function drawTitle(hole: Hole, at: Point, ruler: Ruler, options: HoleDrawingOptions): Shape[] {
  const [x, top] = at
  const centre = x + titleSize(hole, options).width / 2
  // Every line hangs from the one above it, so that a block without a course or a name closes up.
  const y = top - (options.courseName === undefined ? 14 : 0)
  const z = y - (hole.name === null ? 17 : 0)
  const line = (text: string, level: number, size: number, face: Face): Shape => ({
    kind: 'text',
    text,
    at: [centre, level],
    size,
    paint: 'ink',
    face,
    anchor: 'middle',
    halo: 3,
  })
  const facts = [
    `par ${hole.par}`,
    ...(hole.strokeIndex === null ? [] : [`stroke index ${hole.strokeIndex}`]),
  ]
  const length = `${ruler.figure(hole.lengthMetres)} ${ruler.sign}`
  const tee = hole.teeName === '' ? length : `${length} from ${hole.teeName}`
  return [
    ...(options.courseName === undefined
      ? []
      : [
          {
            ...line(options.courseName.toUpperCase(), top + 12, 8.5, 'serif'),
            tracking: 1.4,
          } as Shape,
        ]),
    line(hole.ref, y + 47, DRAW_SETTINGS.titleType, 'serif'),
    ...(hole.name === null ? [] : [line(hole.name, y + 65, 14, 'serif-italic')]),
    {
      kind: 'path',
      steps: lineSteps([centre - 26, z + 72.5], [centre + 26, z + 72.5]),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine },
    },
    line(facts.join(' · '), z + 86, DRAW_SETTINGS.smallType, 'sans'),
    line(tee, z + 99, DRAW_SETTINGS.smallType, 'sans'),
  ]
}

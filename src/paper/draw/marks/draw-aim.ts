import type { Point } from '#numbers/geometry/point.ts'
import type { GroupShape, Shape } from '../drawing.ts'
import type { AimMark, CarryArc } from '../hole-drawing-options.ts'
import type { Ruler } from '../ruler.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import type { Sheet } from '../sheet.ts'
import { arcSteps, circleSteps, lineSteps } from '../steps.ts'

/** Ball, aim line and target ring in the spot colour. */
export function drawAim(aim: AimMark, sheet: Sheet): GroupShape {
  const ball = sheet.toSheet(aim.from)
  const target = sheet.toSheet(along(aim.from, aim.headingDegrees, aim.atMetres))
  const [dx, dy] = direction(ball, target)
  const shapes: Shape[] = [
    {
      kind: 'path',
      steps: lineSteps([ball[0] + dx * 6, ball[1] + dy * 6], [target[0] - dx * 7, target[1] - dy * 7]),
      stroke: { paint: 'spot', width: DRAW_SETTINGS.line },
    },
  ]
  const start = aim.startDegrees
  if (start !== undefined && Math.abs(start - aim.headingDegrees) > 0.4) {
    const end = sheet.toSheet(along(aim.from, start, aim.atMetres * 0.6))
    shapes.push({
      kind: 'path',
      steps: lineSteps(ball, end),
      stroke: { paint: 'spot', width: DRAW_SETTINGS.fineLine, dash: [1.5, 3], cap: 'round' },
    })
  }
  const ticks = [0, 90, 180, 270].flatMap((degrees) => {
    const [sin, cos] = [Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180)]
    return lineSteps([target[0] + sin * 4, target[1] - cos * 4], [target[0] + sin * 10, target[1] - cos * 10])
  })
  shapes.push(
    {
      kind: 'path',
      steps: circleSteps(target, 7),
      stroke: { paint: 'spot', width: DRAW_SETTINGS.heavyLine },
    },
    { kind: 'path', steps: ticks, stroke: { paint: 'spot', width: DRAW_SETTINGS.heavyLine } },
    { kind: 'dots', points: [target], radius: 1.4, fill: 'spot' },
    {
      kind: 'path',
      steps: circleSteps(ball, 3.4),
      fill: 'paper',
      stroke: { paint: 'spot', width: DRAW_SETTINGS.heavyLine },
    },
  )
  return { kind: 'group', name: 'aim', shapes }
}

/** Thin arcs at the player's stock carries, club and figure at their ends, left and right in turn. */
export function drawCarryArcs(
  arcs: readonly CarryArc[],
  from: Point,
  headingDegrees: number,
  sheet: Sheet,
  ruler: Ruler,
): GroupShape {
  const centre = sheet.toSheet(from)
  const heading = (headingDegrees * Math.PI) / 180
  const half = DRAW_SETTINGS.arcHalfAngle
  const shapes = arcs
    .toSorted((a, b) => a.carryMetres - b.carryMetres)
    .flatMap((arc, index): Shape[] => {
      const radius = arc.carryMetres * sheet.unitsPerMetre
      const side = index % 2 === 0 ? 1 : -1
      const text = `${arc.club} ${ruler.figure(arc.carryMetres)}`
      const end: Point = [
        centre[0] + radius * Math.sin(heading + side * half),
        centre[1] - radius * Math.cos(heading + side * half),
      ]
      return [
        {
          kind: 'path',
          steps: arcSteps(centre, radius, heading - half, heading + half),
          stroke: { paint: 'spot', width: DRAW_SETTINGS.fineLine, dash: [1, 2.6], cap: 'round' },
        },
        {
          kind: 'text',
          text,
          at: [within(end[0] + side * 4, text, side, sheet), end[1] + 3],
          size: DRAW_SETTINGS.smallType,
          paint: 'spot',
          face: 'sans',
          anchor: side === 1 ? 'start' : 'end',
          halo: 2.2,
        },
      ]
    })
  return { kind: 'group', name: 'arcs', shapes }
}

/** Keeps a label inside the frame; half the size of type is near enough to a letter's width. */
function within(x: number, text: string, side: number, sheet: Sheet): number {
  const room = text.length * DRAW_SETTINGS.smallType * 0.52 + 4
  return side === 1 ? Math.min(x, sheet.frame.right - room) : Math.max(x, sheet.frame.left + room)
}

function along(from: Point, headingDegrees: number, metres: number): Point {
  const heading = (headingDegrees * Math.PI) / 180
  return [from[0] + metres * Math.sin(heading), from[1] + metres * Math.cos(heading)]
}

function direction(from: Point, to: Point): Point {
  const length = Math.max(1e-9, Math.hypot(to[0] - from[0], to[1] - from[1]))
  return [(to[0] - from[0]) / length, (to[1] - from[1]) / length]
}

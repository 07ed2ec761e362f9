import type { Area } from '#golf/course/course.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { HazardMeasure, HoleMeasures } from '#golf/course/hole-measures.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { pointAlong } from '#numbers/geometry/polyline.ts'
import type { GroupShape, Shape } from '../drawing.ts'
import type { Ruler } from '../ruler.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import type { Sheet } from '../sheet.ts'

interface Place {
  readonly at: Point
  readonly anchor: 'start' | 'end' | 'middle'
}

const NUMBERED: readonly string[] = ['bunker', 'penalty-red', 'penalty-yellow']

/** Straight numbers of the hazards in play, beside them and away from the line: to reach, and to carry where it can be carried. */
export function drawMeasures(hole: Hole, measures: HoleMeasures, sheet: Sheet, ruler: Ruler): GroupShape {
  const taken: Point[] = []
  const shapes = measures.hazards
    .filter((hazard) => NUMBERED.includes(hazard.ground) && hazard.offsetMetres < 40 && hazard.farMetres > 40)
    .flatMap((hazard): Shape[] => {
      const area = hole.areas.find(({ id }) => id === hazard.id)
      if (area === undefined) return []
      const label = beside(hole, area, hazard, sheet)
      const isFree = taken.every(([x, y]) => Math.abs(x - label.at[0]) > 46 || Math.abs(y - label.at[1]) > 11)
      const isInside = label.at[1] > sheet.frame.top + 14 && label.at[1] < sheet.frame.bottom - 6
      if (!isFree || !isInside) return []
      taken.push(label.at)
      const { reachMetres, carryMetres } = hazard.straight
      const reach = ruler.figure(reachMetres)
      return [
        {
          kind: 'text',
          text:
            carryMetres === null || ruler.figure(carryMetres) === reach
              ? reach
              : `${reach}–${ruler.figure(carryMetres)}`,
          at: label.at,
          size: DRAW_SETTINGS.smallType,
          paint: 'ink',
          face: 'sans',
          anchor: label.anchor,
          halo: 2.4,
        },
      ]
    })
  return { kind: 'group', name: 'measures', shapes }
}

/** Where the line crosses the hazard, left of the line; else just outside its visible part, away from the line; inside it when it is wide. */
function beside(hole: Hole, area: Area, hazard: HazardMeasure, sheet: Sheet): Place {
  const crossing = hazard.crossings[0]
  const middleMetres = crossing === undefined ? 0 : (crossing.fromMetres + crossing.toMetres) / 2
  // Beyond the pin there is no line to stand beside.
  if (crossing !== undefined && middleMetres < hole.lengthMetres) {
    const middle = pointAlong(hole.line, middleMetres)
    const [x, y] = sheet.toSheet(middle)
    return { at: [x - 9, y + 3.5], anchor: 'end' }
  }
  const ring = (area.polygon[0] ?? []).map(sheet.toSheet)
  const { left, right, top, bottom } = sheet.frame
  const xs = ring.map(([x]) => Math.max(left + 40, Math.min(right - 40, x)))
  const ys = ring.map(([, y]) => Math.max(top, Math.min(bottom, y)))
  const [west, east] = [Math.min(...xs), Math.max(...xs)]
  const level = (Math.min(...ys) + Math.max(...ys)) / 2 + 3.5
  if (east - west > 60) return { at: [(west + east) / 2, level], anchor: 'middle' }
  return hazard.side === 'left'
    ? { at: [west - 4, level], anchor: 'end' }
    : { at: [east + 4, level], anchor: 'start' }
}

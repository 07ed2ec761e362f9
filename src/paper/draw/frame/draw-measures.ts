import type { Area } from '#golf/course/course.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { HazardMeasure, HoleMeasures } from '#golf/course/hole-measures.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { pointAlong } from '#numbers/geometry/polyline.ts'
import type { GroupShape, Shape } from '../drawing.ts'
import type { Ruler } from '../ruler.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import type { Sheet } from '../sheet.ts'
import { hidesGround } from './hides-ground.ts'

interface Place {
  readonly at: Point
  readonly anchor: 'start' | 'end' | 'middle'
}

const SIZE = DRAW_SETTINGS.smallType
const NUMBERED: readonly string[] = ['bunker', 'penalty-red', 'penalty-yellow']

/** Straight numbers of the hazards in play, beside them and away from the line: to reach, and to carry where it can be carried. */
export function drawMeasures(hole: Hole, measures: HoleMeasures, sheet: Sheet, ruler: Ruler): GroupShape {
  const taken: Point[] = []
  const shapes = measures.hazards
    .filter((hazard) => NUMBERED.includes(hazard.ground) && hazard.offsetMetres < 40 && hazard.farMetres > 40)
    .flatMap((hazard): Shape[] => {
      const area = hole.areas.find(({ id }) => id === hazard.id)
      if (area === undefined) return []
      const { reachMetres, carryMetres } = hazard.straight
      const reach = ruler.figure(reachMetres)
      const words =
        carryMetres === null || ruler.figure(carryMetres) === reach
          ? reach
          : `${reach}–${ruler.figure(carryMetres)}`
      const places = placesFor(hole, area, hazard, sheet)
      // What it would hide matters as much as where it stands: a green or another hazard is not written over.
      const others = hole.areas.filter(({ id }) => id !== area.id)
      const label =
        places.find((place) => !hidesGround({ text: words, size: SIZE, ...place }, others, sheet)) ??
        (places[0] as Place)
      const isFree = taken.every(([x, y]) => Math.abs(x - label.at[0]) > 46 || Math.abs(y - label.at[1]) > 11)
      const isInside = label.at[1] > sheet.frame.top + 14 && label.at[1] < sheet.frame.bottom - 6
      if (!isFree || !isInside) return []
      taken.push(label.at)
      return [
        {
          kind: 'text',
          text: words,
          at: label.at,
          size: SIZE,
          paint: 'ink',
          face: 'sans',
          anchor: label.anchor,
          halo: 2.4,
        },
      ]
    })
  return { kind: 'group', name: 'measures', shapes }
}

/**
 * Where it may stand, best first: where the line crosses the hazard, left of the line; else just outside its visible part, away
 * from the line or towards it; on it when it is wide, as near to the line as it comes.
 */
function placesFor(hole: Hole, area: Area, hazard: HazardMeasure, sheet: Sheet): Place[] {
  const crossing = hazard.crossings[0]
  const middleMetres = crossing === undefined ? 0 : (crossing.fromMetres + crossing.toMetres) / 2
  // Beyond the pin there is no line to stand beside.
  if (crossing !== undefined && middleMetres < hole.lengthMetres) {
    const middle = pointAlong(hole.line, middleMetres)
    const [x, y] = sheet.toSheet(middle)
    return [
      { at: [x - 9, y + 3.5], anchor: 'end' },
      { at: [x + 9, y + 3.5], anchor: 'start' },
    ]
  }
  const ring = (area.polygon[0] ?? []).map(sheet.toSheet)
  const { left, right, top, bottom } = sheet.frame
  const xs = ring.map(([x]) => Math.max(left + 40, Math.min(right - 40, x)))
  const ys = ring.map(([, y]) => Math.max(top, Math.min(bottom, y)))
  const [west, east] = [Math.min(...xs), Math.max(...xs)]
  const middle = (Math.min(...ys) + Math.max(...ys)) / 2
  if (east - west > 60) {
    const on = onIt(ring, middle, [left, right], hazard.side === 'left')
    return [{ at: [on ?? (west + east) / 2, middle + 3.5], anchor: 'middle' }]
  }
  const outer: Place =
    hazard.side === 'left'
      ? { at: [west - 4, middle + 3.5], anchor: 'end' }
      : { at: [east + 4, middle + 3.5], anchor: 'start' }
  const inner: Place =
    hazard.side === 'left'
      ? { at: [east + 4, middle + 3.5], anchor: 'start' }
      : { at: [west - 4, middle + 3.5], anchor: 'end' }
  return [outer, inner]
}

/** The middle of the stretch of a level that lies on an outline and in the frame, of several the one nearest the line; `null` = none. */
function onIt(
  ring: readonly Point[],
  level: number,
  [left, right]: readonly [number, number],
  isLeft: boolean,
): number | null {
  const crossings = ring
    .flatMap(([x, y], index): number[] => {
      const [toX, toY] = ring[(index + 1) % ring.length] as Point
      return y > level === toY > level ? [] : [x + ((level - y) / (toY - y)) * (toX - x)]
    })
    .sort((a, b) => a - b)
  const stretches = Array.from({ length: Math.floor(crossings.length / 2) }, (_, index) => [
    Math.max(left, crossings[2 * index] as number),
    Math.min(right, crossings[2 * index + 1] as number),
  ]).filter(([from, to]) => (from as number) < (to as number))
  const nearest = isLeft ? stretches.at(-1) : stretches[0]
  if (nearest === undefined) return null
  const [from, to] = nearest as [number, number]
  return Math.max(left + ROOM, Math.min(right - ROOM, (from + to) / 2))
}

/** Half the width of a long figure, and what a frame is kept clear by, units. */
const ROOM = 28

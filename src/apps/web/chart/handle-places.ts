import type { Hole } from '#golf/course/hole.ts'
import type { Point } from '#numbers/geometry/point.ts'
import type { AimMark } from '#paper/draw/hole-drawing-options.ts'
import type { Sheet } from '#paper/draw/sheet.ts'

/** Where the handles of aim and pin lie on the sheet, CSS pixels, kept clear of each other. */
export interface HandlePlaces {
  /** `null` without an aim. */
  readonly aim: Point | null
  readonly pin: Point
  /** How far the pin's handle stands above the hole it marks. */
  readonly pinLift: number
}

/** How far above and beside its hole the pin is held, by its pennant. */
const PENNANT_LIFT = 30
const PENNANT_SIDE = 4
/** The room a handle needs: its 48 px and a little. */
const HANDLE_ROOM = 50

/** The places of both handles. The aim of a short hole lies over the pin: the pin is then held higher. */
export function handlePlaces(hole: Hole, aim: AimMark | undefined, sheet: Sheet): HandlePlaces {
  const radians = ((aim?.headingDegrees ?? 0) * Math.PI) / 180
  const target =
    aim === undefined
      ? null
      : sheet.toSheet([
          aim.from[0] + aim.atMetres * Math.sin(radians),
          aim.from[1] + aim.atMetres * Math.cos(radians),
        ])
  const [x, y] = sheet.toSheet(hole.pin)
  const [, top] = clearOf([x + PENNANT_SIDE, y - PENNANT_LIFT], [0, -1], target === null ? [] : [target])
  return { aim: target, pin: [x + PENNANT_SIDE, top], pinLift: y - top }
}

/** A place moved in a direction (one pixel long) until a handle there touches none of the others; where no room is, the place itself. */
export function clearOf(place: Point, [dx, dy]: Point, others: readonly Point[]): Point {
  for (let away = 0; away < MOST_AWAY; away += 2) {
    const at: Point = [place[0] + dx * away, place[1] + dy * away]
    const isTouching = others.some(
      ([x, y]) => Math.abs(at[0] - x) < HANDLE_ROOM && Math.abs(at[1] - y) < HANDLE_ROOM,
    )
    if (!isTouching) return at
  }
  return place
}

/** Further than this from what it moves a handle is no longer understood, CSS pixels. */
const MOST_AWAY = 160

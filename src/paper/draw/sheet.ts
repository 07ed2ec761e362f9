import type { Hole } from '#golf/course/hole.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { DRAW_SETTINGS } from './settings.ts'

/** Where a picture lies on its paper, drawing units. */
export interface Frame {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

/** A sheet of paper with a hole laid on it to true scale: how metres become drawing units. */
export interface Sheet {
  readonly width: number
  readonly height: number
  /** The neat line: the ground is drawn inside it. */
  readonly frame: Frame
  readonly unitsPerMetre: number
  /** True when only a part of the hole is laid on the sheet. */
  readonly isEnlarged: boolean
  /** A place of the hole frame on the sheet. */
  readonly toSheet: (place: Point) => Point
  /** A place of the sheet in the hole frame. */
  readonly toHole: (at: Point) => Point
}

/** A part of a hole seen from nearer by. */
export interface SheetView {
  /** How many times as large as the whole hole fits the sheet. */
  readonly scale: number
  /** The place of the hole frame in the middle of the frame. */
  readonly middle: Point
}

/**
 * Lays a hole on a sheet of the given size, tee at the bottom: as large as it goes with its surroundings, or a part of
 * it enlarged.
 */
export function layOutSheet(
  hole: Hole,
  size: { readonly width?: number; readonly height?: number; readonly view?: SheetView | null } = {},
): Sheet {
  const width = size.width ?? DRAW_SETTINGS.sheetWidth
  const height = size.height ?? DRAW_SETTINGS.sheetHeight
  const margin = DRAW_SETTINGS.frameMargin
  const frame = {
    left: margin.left,
    top: margin.top,
    right: width - margin.right,
    bottom: height - margin.bottom,
  }

  const played: Point[] = [...hole.line, hole.pin, ...(hole.green?.[0] ?? [])]
  const [xs, ys] = [played.map(([x]) => x), played.map(([, y]) => y)]
  const minX = Math.min(...xs) - DRAW_SETTINGS.roomBesideLineMetres
  const maxX = Math.max(...xs) + DRAW_SETTINGS.roomBesideLineMetres
  const minY = Math.min(...ys) - DRAW_SETTINGS.roomBehindTeeMetres
  const maxY = Math.max(...ys) + DRAW_SETTINGS.roomBeyondGreenMetres
  const view = size.view ?? null
  const fitting = Math.min(
    (frame.right - frame.left) / (maxX - minX),
    (frame.bottom - frame.top) / (maxY - minY),
  )
  const unitsPerMetre = fitting * (view?.scale ?? 1)
  const middle = view?.middle ?? ([(minX + maxX) / 2, (minY + maxY) / 2] as const)
  return { ...sheetInFrame(frame, middle, unitsPerMetre), width, height, isEnlarged: view !== null }
}

/** Lays places of the hole frame into a frame at so many units a metre, `middle` in its middle; the sheet is as large as the frame. */
export function sheetInFrame(frame: Frame, middle: Point, unitsPerMetre: number): Sheet {
  const centre: Point = [(frame.left + frame.right) / 2, (frame.top + frame.bottom) / 2]
  return {
    width: frame.right - frame.left,
    height: frame.bottom - frame.top,
    frame,
    unitsPerMetre,
    isEnlarged: false,
    toSheet: ([x, y]) => [
      centre[0] + (x - middle[0]) * unitsPerMetre,
      centre[1] - (y - middle[1]) * unitsPerMetre,
    ],
    toHole: ([x, y]) => [
      middle[0] + (x - centre[0]) / unitsPerMetre,
      middle[1] - (y - centre[1]) / unitsPerMetre,
    ],
  }
}

/** Every ring of a polygon on the sheet. */
export function polygonOnSheet(sheet: Sheet, polygon: Polygon): Polygon {
  return polygon.map((ring) => ring.map(sheet.toSheet))
}

import type { Point } from '#numbers/geometry/point.ts'
import { DRAW_SETTINGS } from './settings.ts'
import type { Sheet } from './sheet.ts'

/**
 * Lays a level range on a sheet to true scale, the line of play up its middle, so that balls of a club that usually
 * come down (or stop) at `middleMetres` have room, thin ones and wide ones too. Places are metres right of the line and
 * along it.
 */
export function layOutRange(
  middleMetres: number,
  { width, height }: { readonly width: number; readonly height: number },
): Sheet {
  const { frameMargin, range } = DRAW_SETTINGS
  const frame = {
    left: frameMargin.left,
    top: frameMargin.top,
    right: width - frameMargin.right,
    bottom: height - frameMargin.bottom - range.sideScale,
  }
  const [nearest, furthest] = [range.nearestShare * middleMetres, range.furthestShare * middleMetres]
  const unitsPerMetre = Math.min(
    (frame.bottom - frame.top) / (furthest - nearest),
    (frame.right - frame.left) / (2 * range.besideShare * middleMetres),
  )
  const centre: Point = [(frame.left + frame.right) / 2, (frame.top + frame.bottom) / 2]
  const middle = (nearest + furthest) / 2
  return {
    width,
    height,
    frame,
    unitsPerMetre,
    isEnlarged: false,
    toSheet: ([x, y]) => [centre[0] + x * unitsPerMetre, centre[1] - (y - middle) * unitsPerMetre],
    toHole: ([x, y]) => [(x - centre[0]) / unitsPerMetre, middle - (y - centre[1]) / unitsPerMetre],
  }
}

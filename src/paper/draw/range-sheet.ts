import { DRAW_SETTINGS } from './settings.ts'
import { type Sheet, sheetInFrame } from './sheet.ts'

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
  return { ...sheetInFrame(frame, [0, (nearest + furthest) / 2], unitsPerMetre), width, height }
}

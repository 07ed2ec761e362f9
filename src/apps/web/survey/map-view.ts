import type { Point } from '#numbers/geometry/point.ts'
import { type LonLat, tangentPlane } from '#numbers/geometry/tangent-plane.ts'

/** What of the earth is seen, north up. */
export interface MapView {
  /** The place under the cross. */
  readonly middle: LonLat
  readonly pixelsPerMetre: number
}

/** The place so many pixels right of the middle and down from it. */
export function placeInView({ middle, pixelsPerMetre }: MapView, [right, down]: Point): LonLat {
  return tangentPlane(middle).toLonLat([right / pixelsPerMetre, -down / pixelsPerMetre])
}

/** A place in pixels right of the middle and down from it. */
export function pixelsInView({ middle, pixelsPerMetre }: MapView, place: LonLat): Point {
  const [east, north] = tangentPlane(middle).toPlane(place)
  return [east * pixelsPerMetre, -north * pixelsPerMetre]
}

/** The map carried so that what was so many pixels right and down comes under the cross. */
export function carriedView(view: MapView, by: Point): MapView {
  return { ...view, middle: placeInView(view, by) }
}

/** The map so many times nearer, as far as it may be; what lies at a place of the screen, pixels from the middle, stays there. */
export function nearerView(view: MapView, times: number, [right, down]: Point = [0, 0]): MapView {
  const { nearest, furthest } = PIXELS_PER_METRE
  const pixelsPerMetre = Math.min(nearest, Math.max(furthest, view.pixelsPerMetre * times))
  const stays = 1 - view.pixelsPerMetre / pixelsPerMetre
  return { ...carriedView(view, [right * stays, down * stays]), pixelsPerMetre }
}

/** A pixel is at most 64 m, some 50 km across a chart, and at least 6 cm: nearer there is nothing on a map to see. Our choice. */
export const PIXELS_PER_METRE: { readonly nearest: number; readonly furthest: number } = {
  nearest: 16,
  furthest: 1 / 64,
}

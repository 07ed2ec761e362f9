import { distance, type Point } from '#numbers/geometry/point.ts'

/** A place of a picture, pixels from its left upper corner, in the plane of the survey. */
export type PicturePlace = (pixel: Point) => Point

/** What was tapped on a picture: the tee, a place straight up the first leg, and two places whose distance is known. */
export interface PictureTaps {
  readonly tee: Point
  readonly ahead: Point
  /** Absent = the tee and the place ahead. */
  readonly apart?: readonly [Point, Point]
  readonly metres: number
}

/** Lays a picture under the survey: its tee at the origin, the first leg upwards, to scale. `null` when two of its places are one. */
export function placePicture({ tee, ahead, apart, metres }: PictureTaps): PicturePlace | null {
  const known = apart === undefined ? distance(tee, ahead) : distance(...apart)
  const leg = distance(tee, ahead)
  if (!(known > 0 && leg > 0 && metres > 0)) return null
  const perPixel = metres / known
  // Pictures count downwards, the survey counts away from the tee.
  const [along, beside] = [(tee[1] - ahead[1]) / leg, (ahead[0] - tee[0]) / leg]
  return ([u, v]) => {
    const [right, up] = [(u - tee[0]) * perPixel, (tee[1] - v) * perPixel]
    return [right * along - up * beside, right * beside + up * along]
  }
}

/** The same as a CSS transform of the picture on a sheet. */
export function pictureTransform(place: PicturePlace, toSheet: (at: Point) => Point): string {
  const [origin, right, down] = (
    [
      [0, 0],
      [1, 0],
      [0, 1],
    ] as const
  ).map((pixel) => toSheet(place(pixel)))
  if (origin === undefined || right === undefined || down === undefined) return 'none'
  const by = (to: Point): string => `${to[0] - origin[0]},${to[1] - origin[1]}`
  return `matrix(${by(right)},${by(down)},${origin[0]},${origin[1]})`
}

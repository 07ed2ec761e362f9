/** A hole as it was drawn before the start: a picture to tap, and how its places become metres. */
export interface HolePicture {
  readonly ref: string
  /** Ground without any figure, slope or distance. */
  readonly ground: string
  readonly width: number
  readonly height: number
  /** Drawing units a metre, and the place of the hole frame in the middle. */
  readonly unitsPerMetre: number
  readonly middle: readonly [number, number]
  /** The green alone; `null` where the survey lacks it or the event allows no green map. */
  readonly green: GreenPicture | null
}

/** A green, its picture as wide and as high as so many metres of ground. */
export interface GreenPicture {
  readonly ground: string
  readonly acrossMetres: number
  readonly alongMetres: number
}

type Point = readonly [number, number]
type Frame = Pick<HolePicture, 'width' | 'height' | 'unitsPerMetre' | 'middle'>

/** A place of the picture, drawing units, in the hole frame, metres to the decimetre. */
export function toHole({ width, height, unitsPerMetre, middle }: Frame, [x, y]: Point): Point {
  const metres = (from: number, by: number): number => Math.round((from + by / unitsPerMetre) * 10) / 10
  return [metres(middle[0], x - width / 2), metres(middle[1], height / 2 - y)]
}

/** A place of the hole frame on the picture. */
export function toPicture({ width, height, unitsPerMetre, middle }: Frame, [x, y]: Point): Point {
  return [width / 2 + (x - middle[0]) * unitsPerMetre, height / 2 - (y - middle[1]) * unitsPerMetre]
}

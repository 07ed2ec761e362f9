/** A place on a hole: metres along the line of play from the middle tee, metres off it (right positive). */
export type Place = readonly [along: number, off: number]

/** Width of a corridor at one station, metres: along the line of play, then out to the left and to the right. */
export type Station = readonly [along: number, left: number, right: number]

/** A rounded hollow: its place, its two axes in metres, and the turn of the long axis, degrees clockwise from the line of play. */
export type Hollow = readonly [along: number, off: number, long: number, wide: number, turnDegrees: number]

/** What an outline on a hole is made of. */
export type CoverKind = 'heavy' | 'scrub' | 'heath' | 'wood' | 'pond-red' | 'pond-yellow' | 'reeds-red'

/** One outline drawn by its corners, smoothed later. */
interface Cover {
  readonly kind: CoverKind
  readonly name: string
  /** Places of the corners, run together: along, off, along, off. */
  readonly outline: readonly number[]
}

/** A putting surface: long and short axis in metres, the long one turned clockwise from the line of play, with its fall. */
export interface GreenDesign {
  readonly long: number
  readonly wide: number
  readonly turnDegrees: number
  /** Depth of the waist in the outline, as a share of its radius: 0 is an oval, 0.2 a kidney. */
  readonly waist: number
  readonly fallPercent: number
  /** Downhill, degrees clockwise from the line of play: 180 falls towards the player. */
  readonly fallTowardDegrees: number
  /** What lies on that plane; a green with it is surveyed by spot heights, one without by its fall alone. */
  readonly contours?: GreenContours
}

/** The shapes of a green, metres from its middle: along the line of play and off it, right positive. */
interface GreenContours {
  /** A tier, a false front or a run-off, run together: how far from the middle it stands, the way up (degrees clockwise from the line of play), its height, and over how many metres it rises. */
  readonly steps: readonly number[]
  /** A crown, or a hollow with a negative height, run together: along, off, height, reach. */
  readonly mounds: readonly number[]
}

/** One hole as its architect writes it down. All but `line` is measured along the hole, so that a hole can be moved whole. */
export interface HoleDesign {
  readonly ref: string
  readonly name: string
  readonly par: number
  readonly strokeIndex: number
  /** What the hole asks: for whoever changes the drawing. */
  readonly idea: string
  /** Course plane in metres, east and north run together; middle tee first, middle of the green last. */
  readonly line: readonly number[]
  /** Metres from the middle tee back to the back tee and on to the forward tee, with how far each stands off the line. */
  readonly backTee: Place
  readonly forwardTee: Place
  /** One list a piece of fairway, its stations run together. */
  readonly fairways: readonly (readonly number[])[]
  readonly green: GreenDesign
  readonly fairwayBunkers: readonly Hollow[]
  /** As above, but measured from the middle of the green (short of it is negative). */
  readonly greensideBunkers: readonly Hollow[]
  readonly covers: readonly Cover[]
  /** Single trees, run together: along, off, height in metres. */
  readonly trees: readonly number[]
}

/** Numbers written run together, two by two. */
export function pairs(numbers: readonly number[]): (readonly [number, number])[] {
  return Array.from({ length: numbers.length / 2 }, (_, i) => [
    numbers[2 * i] ?? NaN,
    numbers[2 * i + 1] ?? NaN,
  ])
}

/** Numbers written run together, three by three. */
export function triples(numbers: readonly number[]): (readonly [number, number, number])[] {
  return Array.from({ length: numbers.length / 3 }, (_, i) => [
    numbers[3 * i] ?? NaN,
    numbers[3 * i + 1] ?? NaN,
    numbers[3 * i + 2] ?? NaN,
  ])
}

/** Numbers written run together, four by four. */
export function fours(numbers: readonly number[]): (readonly [number, number, number, number])[] {
  return Array.from({ length: numbers.length / 4 }, (_, i) => [
    numbers[4 * i] ?? NaN,
    numbers[4 * i + 1] ?? NaN,
    numbers[4 * i + 2] ?? NaN,
    numbers[4 * i + 3] ?? NaN,
  ])
}

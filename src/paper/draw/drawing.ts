import type { Point } from '#numbers/geometry/point.ts'

/**
 * The one drawing model of screen, file and page: a sized list of shapes in drawing units, origin at the top
 * left, y downwards. Back ends turn it into SVG text, canvas calls or PDF operators; nothing in it depends on
 * any of them, so every shape must be something all three can do exactly.
 */
export interface Drawing {
  readonly width: number
  readonly height: number
  /** What the picture is, in a few words, for people who cannot see it. */
  readonly title: string
  /** What the picture shows, in sentences, for people who cannot see it. */
  readonly description: string
  readonly shapes: readonly Shape[]
}

/** One ink, one paper, one spot colour for the player's own marks. Nothing else exists. */
export type Paint = 'ink' | 'paper' | 'spot'

export type Shape = PathShape | DotsShape | TextShape | GroupShape

/** Lines and filled outlines. */
export interface PathShape {
  readonly kind: 'path'
  readonly steps: readonly Step[]
  readonly stroke?: Stroke
  readonly fill?: Paint
}

/** One step of a path: start, straight line, cubic curve, close. */
export type Step =
  | readonly ['M', number, number]
  | readonly ['L', number, number]
  | readonly ['C', number, number, number, number, number, number]
  | readonly ['Z']

export interface Stroke {
  readonly paint: Paint
  readonly width: number
  /** Lengths of line and gap in turn; absent = unbroken. */
  readonly dash?: readonly number[]
  /** Absent = butt. */
  readonly cap?: 'butt' | 'round'
  /** Absent = mitre. */
  readonly join?: 'mitre' | 'round'
}

/** Round dots of one size: stipple and sample finishes. */
export interface DotsShape {
  readonly kind: 'dots'
  readonly points: readonly Point[]
  readonly radius: number
  readonly fill: Paint
}

/** One line of text with its baseline at `at`. */
export interface TextShape {
  readonly kind: 'text'
  readonly text: string
  readonly at: Point
  readonly size: number
  readonly paint: Paint
  readonly face: Face
  /** Absent = start. */
  readonly anchor?: 'start' | 'middle' | 'end'
  /** Degrees clockwise about `at`. */
  readonly turn?: number
  /** Width of a paper-coloured margin around the letters, so that they stay readable on a pattern. */
  readonly halo?: number
  /** Extra space between letters. */
  readonly tracking?: number
}

/** A serif for titles and sentences, a sans with tabular figures for numbers. */
export type Face = 'serif' | 'serif-italic' | 'serif-bold' | 'sans' | 'sans-bold'

/** Shapes that belong together, cut to an outline when one is given. */
export interface GroupShape {
  readonly kind: 'group'
  /** A word for style sheets and tests: `sand`, `plan`. */
  readonly name?: string
  readonly clip?: readonly Step[]
  readonly shapes: readonly Shape[]
}

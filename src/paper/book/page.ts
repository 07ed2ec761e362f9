import type { OwnSentence } from '#golf/player/own-sentence.ts'
import type { Polygon } from '#numbers/geometry/point.ts'
import type { Drawing } from '../draw/drawing.ts'

/** One page as it leaves the printer, drawn in points, with what the legal check must know of it. */
export interface Page {
  readonly drawing: Drawing
  /** What the page is, for people: `card, side 1`, `hole 7`. */
  readonly name: string
  /** Greens drawn on it, each in a group of the name `greenName(ref)`. */
  readonly greens: readonly DrawnGreen[]
  /** Where the strokes on it are played from: the tee is known before the round. */
  readonly plansFrom: readonly { readonly ref: string; readonly lie: string }[]
  /** Sentences on it that a person wrote. */
  readonly written?: readonly OwnSentence[]
  /** Where the row of each hole stands, points. */
  readonly rows?: readonly RowPlace[]
}

/** Where what is said of a hole stands, points from the upper left corner: a row of a card, the head of a page of a book. */
export interface RowPlace {
  readonly ref: string
  readonly left: number
  readonly top: number
  readonly width: number
  readonly height: number
}

/** A sheet of paper as it comes out of the printer, and where on it the rows of holes stand. */
export interface PrintedSheet {
  readonly drawing: Drawing
  readonly rows: readonly RowPlace[]
}

/** A green as surveyed, to be measured against how large it stands on the page. */
export interface DrawnGreen {
  readonly ref: string
  /** Its outline, metres. */
  readonly outline: Polygon
}

/** The name of the group that holds nothing but a green's outline. */
export function greenName(ref: string): string {
  return `green-outline ${ref}`
}

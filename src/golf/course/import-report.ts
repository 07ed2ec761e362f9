/** What became of a source: every element of it is in exactly one of `used`, `ignored` and `needsPerson`. */
export interface ImportReport {
  /** The kind of source: `osm-xml`, `overpass-json`, `geojson`, `hole-table`, `gpx`. */
  readonly kind: string
  readonly courseName: string
  /** Elements with a meaning of their own, and beside them the nodes that only carry the shape of a line. */
  readonly elements: {
    readonly total: number
    readonly used: number
    readonly ignored: number
    readonly needsPerson: number
    readonly vertices: number
  }
  readonly used: readonly UsedElement[]
  readonly ignored: readonly SetAside[]
  readonly needsPerson: readonly SetAside[]
  readonly holes: readonly ReportedHole[]
  /** Greens to which more than one hole is played. */
  readonly sharedGreens: readonly { readonly id: string; readonly holes: readonly string[] }[]
  /** Sand, water, trees and the like that lie in no hole's corridor and are named by none. */
  readonly unownedHazards: readonly { readonly id: string; readonly ground: string }[]
  /** The courses found in the source when its hole numbers repeat; the one taken is first. One entry when there is one course. */
  readonly courses: readonly { readonly name: string | null; readonly refs: readonly string[] }[]
  /** What is missing before the holes can be planned, in sentences. Empty when nothing is. */
  readonly missing: readonly string[]
}

/** An element that is now part of the course. */
export interface UsedElement {
  readonly id: string
  /** What it became: `hole 7`, `bunker`, `tee markers`. */
  readonly as: string
}

/** An element that is not part of the course, and why. */
export interface SetAside {
  readonly id: string
  /** What it is by its own tags: `golf=hole`, `highway=service`. */
  readonly what: string
  readonly reason: string
}

/** One hole as it was found. */
export interface ReportedHole {
  readonly ref: string
  readonly id: string
  readonly par: number | null
  /** `guess`: by length, a person should say; `asked`: the source does not say, a person must. */
  readonly parFrom: 'tag' | 'name' | 'guess' | 'asked'
  /** The usual par for its length, offered where par is guessed or asked; `null` where it is known. */
  readonly parSuggested: number | null
  /** Along the line, metres. */
  readonly lengthMetres: number
  /** The card's own length, metres, or `null`. */
  readonly cardLengthMetres: number | null
  /** Id of the green it is played to, or `null`. */
  readonly green: string | null
  /** Ids of its tee markers. */
  readonly tees: readonly string[]
  /** Ids of the fairways its line crosses or that name it. */
  readonly fairways: readonly string[]
  /** Ids of the sand, water, trees, scrub and out of bounds in its corridor or naming it. */
  readonly hazards: readonly string[]
}

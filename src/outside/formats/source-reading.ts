import type { Fault } from '#faults/fault.ts'
import type { SurveyFeature } from '#golf/course/survey-feature.ts'

/** The kinds of course source that Marram reads. */
type SourceKind = 'osm-xml' | 'overpass-json' | 'geojson' | 'hole-table' | 'gpx'

/** A source as features, nothing decided yet; hand it whole to `assembleCourse`. */
export interface SourceReading {
  readonly kind: SourceKind
  readonly features: readonly SurveyFeature[]
  /** What was doubtful about the source as a whole; what is wrong with a single element shows when it is assembled. */
  readonly faults: readonly Fault[]
  /** What the source says of itself: of a course file its `marram` object and `marram:*` members, of a map its credit. */
  readonly collection: Readonly<Record<string, unknown>>
  /** Nodes that only carry the shape of a line and are not elements of their own. */
  readonly vertices: number
}

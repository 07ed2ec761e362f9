import type { FaultCode } from '#faults/codes.ts'

/** A position as sources give it: `[longitude, latitude]` in degrees, WGS 84. */
export type LonLat = readonly [longitude: number, latitude: number]

/**
 * Where a feature lies. Rings repeat their first position at the end, as in RFC 7946; an area's first ring is its
 * outline, the others are holes in it. `none` keeps an element whose place the source does not tell, so that it can
 * be listed instead of lost; its code is `MAR-IMPORT-012` unless given.
 */
export type SurveyGeometry =
  | { readonly kind: 'point'; readonly position: LonLat }
  | { readonly kind: 'line'; readonly positions: readonly LonLat[] }
  | { readonly kind: 'area'; readonly rings: readonly (readonly LonLat[])[] }
  | { readonly kind: 'areas'; readonly polygons: readonly (readonly (readonly LonLat[])[])[] }
  | { readonly kind: 'none'; readonly reason: string; readonly code?: FaultCode }

/** One element of any source, before anything is decided about it: what every importer makes and {@link assembleCourse} takes. */
export interface SurveyFeature {
  /** As the source names it, unique in the source: `way/12`, `feature 3`, `line 4`. */
  readonly id: string
  /** OpenStreetMap's golf scheme as it stands, and our `marram:*` properties. */
  readonly tags: Readonly<Record<string, string>>
  readonly geometry: SurveyGeometry
  /** Where a person finds it, when the id does not say: `line 12, column to`. */
  readonly faultsAt?: string
}

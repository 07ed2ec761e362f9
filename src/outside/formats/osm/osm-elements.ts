/** A place on a map element; `null` where a reply was cut at its edge. */
export interface OsmPlace {
  readonly lat: number
  readonly lon: number
}

/** A node, way or relation of OpenStreetMap, whichever way it was written down. */
export type OsmElement = OsmNode | OsmWay | OsmRelation

interface OsmNamed {
  readonly id: string
  readonly tags: Readonly<Record<string, string>>
}

interface OsmNode extends OsmNamed {
  readonly type: 'node'
  /** `null` when the source gives none or no numbers. */
  readonly place: OsmPlace | null
}

export interface OsmWay extends OsmNamed {
  readonly type: 'way'
  readonly nodes: readonly string[]
  /** Given with the way itself; `null` = by its nodes. */
  readonly geometry: readonly (OsmPlace | null)[] | null
}

export interface OsmRelation extends OsmNamed {
  readonly type: 'relation'
  readonly members: readonly OsmMember[]
}

export interface OsmMember {
  readonly type: string
  readonly ref: string
  readonly role: string
  readonly geometry: readonly (OsmPlace | null)[] | null
}

/** A place from values of unknown kind, or `null` when they are no latitude and longitude in degrees. */
export function readPlace(lat: unknown, lon: unknown): OsmPlace | null {
  if (lat === undefined || lon === undefined || lat === null || lon === null || lat === '' || lon === '')
    return null
  const place = { lat: Number(lat), lon: Number(lon) }
  return Math.abs(place.lat) <= 90 && Math.abs(place.lon) <= 180 ? place : null
}

import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import { isJsonObject, type JsonObject } from './json-text.ts'
import { type OsmElement, type OsmMember, type OsmPlace, readPlace } from './osm/osm-elements.ts'
import { OSM_COLLECTION, surveyElements } from './osm/survey-elements.ts'
import type { SourceReading } from './source-reading.ts'

/**
 * Map data as a JSON reply with a list of `elements`, in either full form: places on the ways (`out geom`) or ways by
 * their nodes together with these nodes (`out body` and the nodes). Throws `MAR-IMPORT-003` when the reply names
 * ways but not where they lie.
 */
export function readOverpassJson(reply: JsonObject, where: string): SourceReading {
  const items = Array.isArray(reply.elements) ? reply.elements : []
  const { placed, shapes, ...surveyed } = surveyElements(items.flatMap(readElement))
  if (shapes > 0 && placed === 0) {
    throw new Failure(
      'MAR-IMPORT-003',
      `The reply names ${shapes} ways but not where they lie. Ask again with “out geom;” at the end, or with “out body; >; out skel qt;”.`,
      where,
    )
  }
  const faults = typeof reply.remark === 'string' ? [remarkFault(reply.remark, where)] : []
  const credit = isJsonObject(reply.osm3s) ? reply.osm3s.copyright : undefined
  const collection =
    typeof credit === 'string' ? { ...OSM_COLLECTION, 'marram:credit': credit } : OSM_COLLECTION
  return { kind: 'overpass-json', collection, faults, ...surveyed }
}

function remarkFault(remark: string, where: string): Fault {
  return {
    severity: 'warning',
    code: 'MAR-IMPORT-031',
    message: `The map server remarks: “${remark}”. Elements may be missing.`,
    place: where,
    advice: 'Ask again for a smaller area or with a longer time limit.',
  }
}

function readElement(item: unknown): OsmElement[] {
  if (!isJsonObject(item)) return []
  const named = { id: String(item.id ?? ''), tags: readTags(item.tags) }
  switch (item.type) {
    case 'node':
      return [{ type: 'node', ...named, place: readPlace(item.lat, item.lon) }]
    case 'way':
      return [{ type: 'way', ...named, nodes: readNodes(item.nodes), geometry: readGeometry(item.geometry) }]
    case 'relation':
      return [{ type: 'relation', ...named, members: readMembers(item.members) }]
    default:
      return []
  }
}

function readTags(value: unknown): Record<string, string> {
  if (!isJsonObject(value)) return {}
  return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, String(item)]))
}

function readNodes(value: unknown): string[] {
  return Array.isArray(value) ? value.map(String) : []
}

function readGeometry(value: unknown): (OsmPlace | null)[] | null {
  if (!Array.isArray(value)) return null
  return value.map((place: unknown) => (isJsonObject(place) ? readPlace(place.lat, place.lon) : null))
}

function readMembers(value: unknown): OsmMember[] {
  if (!Array.isArray(value)) return []
  return value.filter(isJsonObject).map((member) => ({
    type: String(member.type),
    ref: String(member.ref),
    role: typeof member.role === 'string' ? member.role : '',
    geometry: readGeometry(member.geometry),
  }))
}

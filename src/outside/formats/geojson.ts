import { Failure } from '#faults/failure.ts'
import type { SurveyFeature } from '#golf/course/survey-feature.ts'
import { surveyGeometries } from './geojson/survey-geometries.ts'
import { isJsonObject, type JsonObject, parseJsonText } from './json-text.ts'
import type { SourceReading } from './source-reading.ts'

/**
 * A GeoJSON text (RFC 7946), among them our own course file, as features: the one way to read a course, here and
 * in a browser. `where` names the file in messages. Throws `MAR-IMPORT-002` (not JSON) and `MAR-IMPORT-004` (not
 * GeoJSON); a feature whose geometry cannot be used stays in the list with the reason.
 */
export function parseGeojson(text: string, where: string): SourceReading {
  return readGeojson(parseJsonText(text, where), where)
}

/** The same for a JSON value that is already read, such as the answer of a server. */
export function readGeojson(value: unknown, where: string): SourceReading {
  if (!isJsonObject(value) || typeof value.type !== 'string') throw notGeojson(where)
  if (value.type === 'FeatureCollection') {
    if (!Array.isArray(value.features)) {
      throw new Failure('MAR-IMPORT-004', 'The FeatureCollection has no list of features.', where)
    }
    refuseProjected(value, where)
    return readFeatures(value.features, ownMembers(value))
  }
  if (value.type === 'Feature') return readFeatures([value], {})
  if ('coordinates' in value || 'geometries' in value) {
    return readFeatures([{ type: 'Feature', properties: {}, geometry: value }], {})
  }
  throw notGeojson(where)
}

function notGeojson(where: string): Failure {
  return new Failure(
    'MAR-IMPORT-004',
    'This JSON is neither GeoJSON (a FeatureCollection of golf features) nor a map reply with a list of elements.',
    where,
  )
}

// RFC 7946 section 4 removed other reference systems; files of the 2008 draft may still name one.
function refuseProjected(collection: JsonObject, where: string): void {
  const crs = collection.crs
  const named = isJsonObject(crs) && isJsonObject(crs.properties) ? crs.properties.name : undefined
  if (typeof named !== 'string' || /CRS84|:4326$|WGS ?84/i.test(named)) return
  throw new Failure(
    'MAR-IMPORT-013',
    `The coordinates are in ${named}. Save the file again in WGS 84 longitude and latitude.`,
    where,
  )
}

function ownMembers(collection: JsonObject): Record<string, unknown> {
  const kept: Record<string, unknown> = {}
  for (const [key, member] of Object.entries(collection)) {
    if (key === 'marram' || key.startsWith('marram:')) kept[key] = member
  }
  return kept
}

function readFeatures(items: readonly unknown[], collection: JsonObject): SourceReading {
  const features: SurveyFeature[] = []
  const taken = new Set<string>()
  for (const [index, item] of items.entries()) {
    const place = `feature ${index + 1}`
    if (!isJsonObject(item)) {
      features.push({ id: place, tags: {}, geometry: { kind: 'none', reason: 'it is not an object' } })
      continue
    }
    const named = identity(item, place)
    const id = taken.has(named) ? `${named} (${place})` : named
    taken.add(id)
    const tags = readTags(item.properties)
    const geometries = surveyGeometries(item.geometry)
    for (const [part, geometry] of geometries.entries()) {
      const partId = geometries.length === 1 ? id : `${id} part ${part + 1}`
      features.push({ id: partId, tags, geometry, ...(id === place ? {} : { faultsAt: place }) })
    }
  }
  return { kind: 'geojson', features, faults: [], collection, vertices: 0 }
}

function identity(feature: JsonObject, place: string): string {
  const properties = isJsonObject(feature.properties) ? feature.properties : {}
  for (const id of [feature.id, properties['@id'], properties.id]) {
    if (typeof id === 'string' && id !== '') return id
    if (typeof id === 'number') return String(id)
  }
  return place
}

function readTags(properties: unknown): Record<string, string> {
  const tags: Record<string, string> = {}
  if (!isJsonObject(properties)) return tags
  for (const [key, value] of Object.entries(properties)) {
    if (typeof value === 'string') tags[key] = value
    else if (typeof value === 'number' || typeof value === 'boolean') tags[key] = String(value)
    // Tags are text; what is more than that under our own prefix is read further where it is used.
    else if (key.startsWith('marram:') && value !== null) tags[key] = JSON.stringify(value)
  }
  return tags
}

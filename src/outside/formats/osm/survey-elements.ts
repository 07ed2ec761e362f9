import osm2geojson from 'osm2geojson-lite'
import type { SurveyFeature, SurveyGeometry } from '#golf/course/survey-feature.ts'
import { surveyGeometries } from '../geojson/survey-geometries.ts'
import { type CompleteElements, completeElements, isOutline } from './complete-elements.ts'
import type { OsmElement, OsmRelation } from './osm-elements.ts'

/** Map elements as survey features. */
export interface SurveyedElements {
  readonly features: readonly SurveyFeature[]
  /** Elements without tags that only carry the shape of others. */
  readonly vertices: number
  /** Ways and outlines whose place is known, and all ways and outlines. */
  readonly placed: number
  readonly shapes: number
}

/** Makes one feature of every element that stands for itself. Never throws: an element without a place becomes `none`. */
export function surveyElements(given: readonly OsmElement[]): SurveyedElements {
  const complete = completeElements(given)
  const geometries = convert(complete)
  const outlined = tagsByOutline(complete)
  const features: SurveyFeature[] = []
  let vertices = 0
  let placed = 0
  let shapes = 0
  for (const element of complete.elements) {
    const id = `${element.type}/${element.id}`
    const isShape = element.type === 'way' || (element.type === 'relation' && isOutline(element))
    const geometry = geometryOf(element, geometries, complete)
    if (isShape) shapes++
    if (isShape && geometry.kind !== 'none') placed++
    const tags = outlined.relations.get(id) ?? element.tags
    if (outlined.ways.has(id) || (complete.carried.has(id) && Object.keys(tags).length === 0)) {
      vertices++
      continue
    }
    features.push({ id, tags, geometry })
  }
  return { features, vertices, placed, shapes }
}

function geometryOf(
  element: OsmElement,
  geometries: ReadonlyMap<string, SurveyGeometry>,
  complete: CompleteElements,
): SurveyGeometry {
  if (element.type === 'node') {
    const { place } = element
    return place
      ? { kind: 'point', position: [place.lon, place.lat] }
      : { kind: 'none', reason: 'the source does not say where it lies' }
  }
  const found = geometries.get(`${element.type}/${element.id}`)
  if (found) {
    const isLine = element.tags.golf === 'hole' && found.kind === 'area'
    return isLine ? { kind: 'line', positions: found.rings[0] ?? [] } : found
  }
  const reason =
    element.type === 'way'
      ? (complete.incomplete.get(element.id) ?? 'its line cannot be made out')
      : isOutline(element)
        ? 'its outline is not complete in the source'
        : `a relation of type ${element.tags.type ?? 'unknown'} has no outline of its own`
  return { kind: 'none', reason }
}

// The converter is given complete ways and relations of ways only: it cannot tell a gap from an end, nor leave a circle of relations.
function convert(complete: CompleteElements): Map<string, SurveyGeometry> {
  const elements: object[] = []
  const tags = new Map(complete.elements.map((element) => [`${element.type}/${element.id}`, element.tags]))
  for (const [id, places] of complete.places) {
    elements.push({ type: 'way', id, tags: tags.get(`way/${id}`) ?? {}, geometry: places })
  }
  for (const element of complete.elements) {
    if (element.type !== 'relation' || !isOutline(element)) continue
    const ways = element.members.filter((member) => member.type === 'way')
    if (ways.length === 0 || ways.some((member) => !complete.places.has(member.ref))) continue
    const members = ways.map((way) => ({
      type: 'way',
      ref: way.ref,
      role: way.role === '' ? 'outer' : way.role,
    }))
    elements.push({ type: 'relation', id: element.id, tags: element.tags, members })
  }
  const options = { completeFeature: true, renderTagged: true, excludeWay: false }
  const geometries = new Map<string, SurveyGeometry>()
  for (const feature of osm2geojson({ elements }, options).features) {
    const [geometry] = surveyGeometries(feature.geometry)
    const id = String(feature.id)
    if (geometry && geometry.kind !== 'none' && !geometries.has(id)) geometries.set(id, geometry)
  }
  return geometries
}

// In older map data the tags of an outline stand on its one outer way, and in careless data on both.
function tagsByOutline(complete: CompleteElements): {
  readonly relations: ReadonlyMap<string, SurveyFeature['tags']>
  readonly ways: ReadonlySet<string>
} {
  const tags = new Map(complete.elements.map((element) => [`${element.type}/${element.id}`, element.tags]))
  const relations = new Map<string, SurveyFeature['tags']>()
  const ways = new Set<string>()
  for (const element of complete.elements) {
    if (element.type !== 'relation' || !isOutline(element)) continue
    const outer = outerWays(element)
    const [first] = outer
    const own = Object.keys(element.tags).filter((key) => key !== 'type' && key !== 'source')
    if (own.length === 0 && outer.length === 1 && first !== undefined) {
      relations.set(`relation/${element.id}`, { ...tags.get(first), ...element.tags })
      ways.add(first)
      continue
    }
    for (const way of outer) {
      const other = tags.get(way) ?? {}
      const isSame = ['golf', 'natural'].some(
        (key) => other[key] !== undefined && other[key] === element.tags[key],
      )
      if (isSame) ways.add(way)
    }
  }
  return { relations, ways }
}

function outerWays(relation: OsmRelation): string[] {
  return relation.members
    .filter((member) => member.type === 'way' && member.role !== 'inner')
    .map((member) => `way/${member.ref}`)
}

/** What is shown wherever data of OpenStreetMap is: its own words of attribution. */
export const OSM_COLLECTION: Readonly<Record<string, string>> = {
  'marram:source': 'OpenStreetMap',
  'marram:credit': '© OpenStreetMap contributors, Open Database License 1.0',
}

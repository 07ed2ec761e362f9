import { Failure } from '#faults/failure.ts'
import type { OsmElement, OsmMember, OsmPlace } from './osm/osm-elements.ts'
import { readPlace } from './osm/osm-elements.ts'
import { OSM_COLLECTION, surveyElements } from './osm/survey-elements.ts'
import type { SourceReading } from './source-reading.ts'
import { wholeXml, type XmlTag } from './xml/read-xml.ts'

/**
 * Map data in OSM XML (API 0.6, with nodes or with places on the ways) as features. Throws `MAR-IMPORT-001` (broken
 * or cut off, with the line) and `MAR-IMPORT-003` (ways without their nodes).
 */
export function parseOsmXml(text: string, where: string): SourceReading {
  const { placed, shapes, ...surveyed } = surveyElements(readElements(text, where))
  if (shapes > 0 && placed === 0) {
    throw new Failure(
      'MAR-IMPORT-003',
      `The file names ${shapes} ways but not where they lie. Fetch it again together with the nodes of the ways.`,
      where,
    )
  }
  return { kind: 'osm-xml', collection: OSM_COLLECTION, faults: [], ...surveyed }
}

interface Draft {
  readonly type: string
  readonly attributes: XmlTag['attributes']
  readonly tags: Record<string, string>
  readonly nodes: string[]
  readonly geometry: (OsmPlace | null)[]
  readonly members: (OsmMember & { geometry: (OsmPlace | null)[] })[]
}

function readElements(text: string, where: string): OsmElement[] {
  const elements: OsmElement[] = []
  let draft: Draft | null = null
  let depth = 0
  for (const tag of wholeXml(text, where)) {
    if (tag.kind === 'close') {
      depth--
      if (depth === 1 && draft) {
        const element = finished(draft)
        if (element) elements.push(element)
        draft = null
      }
      continue
    }
    depth++
    if (depth === 1 && tag.name !== 'osm') {
      throw new Failure(
        'MAR-FILE-007',
        `This is XML, but not map data: its root is <${tag.name}>, not <osm>.`,
        where,
      )
    }
    if (depth === 2)
      draft = { type: tag.name, attributes: tag.attributes, tags: {}, nodes: [], geometry: [], members: [] }
    else if (draft && depth > 2) readPart(draft, tag)
  }
  return elements
}

function readPart(draft: Draft, { name, attributes }: XmlTag): void {
  if (name === 'tag' && attributes.k !== undefined) draft.tags[attributes.k] = attributes.v ?? ''
  if (name === 'member') {
    const { type = '', ref = '', role = '' } = attributes
    draft.members.push({ type, ref, role, geometry: [] })
  }
  if (name !== 'nd') return
  const place = readPlace(attributes.lat, attributes.lon)
  const member = draft.members.at(-1)
  if (member) member.geometry.push(place)
  else {
    if (attributes.ref !== undefined) draft.nodes.push(attributes.ref)
    draft.geometry.push(place)
  }
}

function finished(draft: Draft): OsmElement | null {
  const { type, attributes } = draft
  const isDeleted = attributes.visible === 'false' || attributes.action === 'delete'
  const named = { id: attributes.id ?? '', tags: isDeleted ? { visible: 'false' } : draft.tags }
  switch (type) {
    case 'node':
      return { type, ...named, place: readPlace(attributes.lat, attributes.lon) }
    case 'way': {
      const isPlaced = draft.geometry.some((place) => place !== null)
      return { type, ...named, nodes: draft.nodes, geometry: isPlaced ? draft.geometry : null }
    }
    case 'relation': {
      const members = draft.members.map((member) => ({
        ...member,
        geometry: member.geometry.length > 0 ? member.geometry : null,
      }))
      return { type, ...named, members }
    }
    default:
      return null
  }
}

import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { Failure } from '#faults/failure.ts'
import { type AssembledCourse, assembleCourse } from '#golf/course/assemble-course.ts'
import { encodeCourse } from '#golf/course/encode-course.ts'
import { parseOsmXml } from './osm-xml.ts'
import { readOverpassJson } from './overpass-json.ts'
import { readSource } from './read-source.ts'

const XML = readFileSync(
  new URL('../../../test/fixtures/courses/albany-bahamas.osm', import.meta.url),
  'utf8',
)

interface PlainElement {
  type: string
  id: number
  lat?: number
  lon?: number
  nodes?: number[]
  geometry?: { lat: number; lon: number }[]
  members?: { type: string; ref: number; role: string; geometry?: { lat: number; lon: number }[] }[]
  tags?: Record<string, string>
}

/** The same map as a reply of `out body; >; out skel`, made by hand from the XML. */
function bodyForm(): PlainElement[] {
  return [...XML.matchAll(/<(node|way|relation) id="(\d+)"([^>]*?)(?:\/>|>([\s\S]*?)<\/\1>)/g)].map(
    ([, type, id, attributes, body = '']) => {
      const element: PlainElement = { type: type!, id: Number(id) }
      const tags = [...body.matchAll(/<tag k="([^"]+)" v="([^"]*)"/g)].map(([, key, value]) => [key, value])
      if (tags.length > 0) element.tags = Object.fromEntries(tags) as Record<string, string>
      if (type === 'node') {
        element.lat = Number(/ lat="([^"]+)"/.exec(attributes!)![1])
        element.lon = Number(/ lon="([^"]+)"/.exec(attributes!)![1])
      }
      if (type === 'way') element.nodes = [...body.matchAll(/<nd ref="(\d+)"/g)].map(([, ref]) => Number(ref))
      if (type === 'relation') {
        element.members = [...body.matchAll(/<member type="(\w+)" ref="(\d+)" role="(\w*)"/g)].map(
          ([, kind, ref, role]) => ({ type: kind!, ref: Number(ref), role: role! }),
        )
      }
      return element
    },
  )
}

/** The same map as a reply of `out geom`: places on the ways, and no nodes but those with tags. */
function geomForm(): PlainElement[] {
  const all = bodyForm()
  const places = new Map(
    all.filter((item) => item.type === 'node').map(({ id, lat, lon }) => [id, { lat: lat!, lon: lon! }]),
  )
  const lines = new Map(
    all
      .filter((item) => item.type === 'way')
      .map(({ id, nodes }) => [id, nodes!.map((node) => places.get(node)!)]),
  )
  return all
    .filter((item) => item.type !== 'node' || item.tags)
    .map((item) => {
      if (item.type === 'way') return { ...item, geometry: lines.get(item.id)! }
      if (item.type !== 'relation') return item
      const members = item.members!.map((member) => ({
        ...member,
        ...(lines.has(member.ref) ? { geometry: lines.get(member.ref)! } : {}),
      }))
      return { ...item, members }
    })
}

function assemble(elements: readonly PlainElement[]): AssembledCourse {
  const reading = readOverpassJson({ elements }, 'reply.json')
  return assembleCourse(reading.features, reading)
}

describe('readOverpassJson', () => {
  const fromXml = parseOsmXml(XML, 'albany.osm')
  const course = encodeCourse(assembleCourse(fromXml.features, fromXml).course)

  it('makes the same course of a reply by nodes as of the XML', () => {
    expect(encodeCourse(assemble(bodyForm()).course)).toBe(course)
  })

  it('makes the same course of a reply with places on the ways', () => {
    const sorted = (text: string): unknown[] =>
      (JSON.parse(text) as { features: { id: string }[] }).features.sort((a, b) => a.id.localeCompare(b.id))
    expect(sorted(encodeCourse(assemble(geomForm()).course))).toEqual(sorted(course))
  })

  it('is recognised by its elements, whatever the file is called', () => {
    const bytes = new TextEncoder().encode(JSON.stringify({ elements: bodyForm() }))
    expect(readSource(bytes, 'reply.txt').kind).toBe('overpass-json')
  })

  it('joins an element that two questions gave twice', () => {
    const twins: PlainElement[] = [
      { type: 'node', id: 1, lat: 1, lon: 2, tags: { golf: 'pin', ref: '1' } },
      { type: 'node', id: 1, lat: 1, lon: 2 },
      { type: 'way', id: 5, nodes: [1, 2], tags: { golf: 'hole', ref: '1' } },
      { type: 'node', id: 2, lat: 1.002, lon: 2 },
      { type: 'way', id: 5, nodes: [1, 2] },
    ]
    const reading = readOverpassJson({ elements: twins }, 'reply.json')
    expect(reading.features.map((feature) => feature.id)).toEqual(['node/1', 'way/5'])
    expect(reading.vertices).toBe(1)
  })

  it('refuses a reply that says which ways but not where, and says what to ask instead', () => {
    const bare = bodyForm().filter((item) => item.type === 'way')
    expect(() => readOverpassJson({ elements: bare }, 'reply.json')).toThrow(Failure)
    expect(() => readOverpassJson({ elements: bare }, 'reply.json')).toThrow(/out geom/)
  })

  it('takes an empty reply for a map without holes', () => {
    const { report } = assemble([])
    expect(report.holes).toEqual([])
    expect(report.elements.total).toBe(0)
  })

  it('lists a way cut off at the edge of the reply instead of joining its ends', () => {
    const geometry = [{ lat: 0, lon: 0 }, null, { lat: 0.003, lon: 0 }]
    const elements = [
      { type: 'way', id: 1, tags: { golf: 'hole', ref: '1' }, geometry: [geometry[0], geometry[2]] },
      { type: 'way', id: 2, tags: { golf: 'hole', ref: '2' }, geometry },
    ]
    const reading = readOverpassJson({ elements }, 'reply.json')
    const { course: small, report } = assembleCourse(reading.features, reading)
    expect(small.holes.map((hole) => hole.ref)).toEqual(['1'])
    expect(report.needsPerson.map((item) => item.id)).toEqual(['way/2'])
    expect(report.needsPerson[0]!.reason).toContain('1 of its 3 points')
  })
})

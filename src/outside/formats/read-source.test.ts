import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { Failure } from '#faults/failure.ts'
import { assembleCourse } from '#golf/course/assemble-course.ts'
import { checkCourse } from '#golf/course/check-course.ts'
import { encodeCourse } from '#golf/course/encode-course.ts'
import { readSource } from './read-source.ts'

const FOLDER = new URL('../../../test/fixtures/courses/', import.meta.url)
const utf8 = new TextEncoder()

const TABLE =
  'hole,what,side,from_m,to_m,near_m,far_m,note\n1,bunker,left,200,210,10,20,\n1,green,,300,320,,20,par 4\n'
const MAP = `<?xml version='1.0'?><osm version="0.6"><node id="1" lat="1" lon="1"/><node id="2" lat="1.003" lon="1">
<tag k="golf" v="pin"/></node><way id="5"><nd ref="1"/><nd ref="2"/><tag k="golf" v="hole"/><tag k="ref" v="1"/></way>
<relation id="7"><member type="way" ref="5" role="outer"/><tag k="type" v="multipolygon"/><tag k="golf" v="green"/></relation></osm>`
const REPLY =
  '{"elements":[{"type":"way","id":5,"tags":{"golf":"hole","ref":"1","par":"4"},"geometry":[{"lat":1,"lon":1},{"lat":1.003,"lon":1}]},{"type":"node","id":9,"lat":1,"lon":1,"tags":{"golf":"tee"}}]}'
const FILE =
  '{"type":"FeatureCollection","marram":{"schema":"course/1","name":"x","origin":[1,1],"tees":[{"name":"w"}]},"features":[{"type":"Feature","properties":{"golf":"hole","ref":"1","par":4},"geometry":{"type":"LineString","coordinates":[[1,1],[1,1.003]]}},{"type":"Feature","properties":{"golf":"green"},"geometry":{"type":"Polygon","coordinates":[[[1,1.003],[1.0001,1.003],[1.0001,1.0031],[1,1.003]]]}}]}'

/** Reads, assembles, checks and writes; true when it came to an end or failed in an expected way. */
function endsWell(bytes: Uint8Array, name: string): boolean {
  try {
    const reading = readSource(bytes, name)
    const { course } = assembleCourse(reading.features, reading)
    checkCourse(course)
    encodeCourse(course)
    return true
  } catch (error) {
    if (error instanceof Failure) return true
    throw error
  }
}

describe('readSource', () => {
  it('knows the kind of a source by what is in it', () => {
    const kind = (text: string, name: string): string => readSource(utf8.encode(text), name).kind
    expect(kind(MAP, 'a')).toBe('osm-xml')
    expect(kind(REPLY, 'a')).toBe('overpass-json')
    expect(kind(FILE, 'a')).toBe('geojson')
    expect(kind(TABLE, 'a')).toBe('hole-table')
    expect(kind(`\uFEFF\n${TABLE}`, 'a.txt')).toBe('hole-table')
    expect(kind(`\n  ${FILE}`, 'a.csv')).toBe('geojson')
    expect(readSource(readFileSync(new URL('albany-bahamas.osm', FOLDER)), 'x').kind).toBe('osm-xml')
  })

  it('never fails in an unexpected way, however a source is damaged', () => {
    const damage = fc.record({
      text: fc.constantFrom(TABLE, MAP, REPLY, FILE),
      at: fc.double({ min: 0, max: 1, noNaN: true }),
      length: fc.integer({ min: 0, max: 40 }),
      put: fc.oneof(
        fc.constantFrom(
          '',
          '"',
          '<',
          '>',
          '}',
          ']',
          ',',
          ';',
          '\n',
          'null',
          '-1e400',
          '&#0;',
          '/>',
          '</way>',
          '"golf":',
          '[]',
        ),
        fc.string({ maxLength: 6 }),
      ),
    })
    fc.assert(
      fc.property(damage, ({ text, at, length, put }) => {
        const from = Math.floor(at * text.length)
        return endsWell(utf8.encode(text.slice(0, from) + put + text.slice(from + length)), 'damaged')
      }),
      { numRuns: 1500 },
    )
  })

  it('never fails in an unexpected way on bytes of any kind', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), fc.constantFrom('a.osm', 'a.csv', 'a.json'), endsWell),
      { numRuns: 500 },
    )
  })
})

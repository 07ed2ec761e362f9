import { describe, expect, it } from 'vitest'
import { Failure } from '#faults/failure.ts'
import type { SurveyGeometry } from '#golf/course/survey-feature.ts'
import { parseGeojson, readGeojson } from './geojson.ts'

function geometriesOf(geometry: unknown): readonly SurveyGeometry[] {
  return readGeojson({ type: 'Feature', properties: {}, geometry }, 'x.geojson').features.map(
    (item) => item.geometry,
  )
}

const RING = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 0],
]

describe('parseGeojson', () => {
  it('reads every kind of geometry of RFC 7946', () => {
    expect(geometriesOf({ type: 'Point', coordinates: [1, 2, 99] })).toEqual([
      { kind: 'point', position: [1, 2] },
    ])
    expect(
      geometriesOf({
        type: 'LineString',
        coordinates: [
          [1, 2],
          [3, 4],
        ],
      }),
    ).toEqual([
      {
        kind: 'line',
        positions: [
          [1, 2],
          [3, 4],
        ],
      },
    ])
    expect(geometriesOf({ type: 'Polygon', coordinates: [RING] })).toEqual([{ kind: 'area', rings: [RING] }])
    expect(geometriesOf({ type: 'MultiPolygon', coordinates: [[RING], [RING]] })).toEqual([
      { kind: 'areas', polygons: [[RING], [RING]] },
    ])
    expect(geometriesOf({ type: 'MultiPolygon', coordinates: [[RING]] })).toEqual([
      { kind: 'area', rings: [RING] },
    ])
    expect(
      geometriesOf({
        type: 'MultiPoint',
        coordinates: [
          [1, 2],
          [3, 4],
        ],
      }),
    ).toHaveLength(2)
    expect(
      geometriesOf({
        type: 'MultiLineString',
        coordinates: [
          [
            [1, 2],
            [3, 4],
          ],
          [
            [5, 6],
            [7, 8],
          ],
        ],
      }),
    ).toHaveLength(2)
    expect(
      geometriesOf({
        type: 'MultiLineString',
        coordinates: [
          [
            [1, 2],
            [3, 4],
          ],
          [
            [3, 4],
            [7, 8],
          ],
        ],
      }),
    ).toEqual([
      {
        kind: 'line',
        positions: [
          [1, 2],
          [3, 4],
          [7, 8],
        ],
      },
    ])
    expect(
      geometriesOf({ type: 'GeometryCollection', geometries: [{ type: 'Point', coordinates: [1, 2] }] }),
    ).toEqual([{ kind: 'point', position: [1, 2] }])
  })

  it('keeps a feature whose geometry cannot be used, with the reason', () => {
    const bad: unknown[] = [
      null,
      undefined,
      7,
      {},
      { type: 'Circle', coordinates: [1, 2] },
      { type: 'Point', coordinates: ['1', 2] },
      { type: 'Point', coordinates: [1] },
      { type: 'Point', coordinates: [181, 0] },
      { type: 'LineString', coordinates: [[1, 2]] },
      { type: 'Polygon', coordinates: [] },
      { type: 'Polygon', coordinates: [RING.slice(0, 3)] },
      { type: 'MultiPolygon', coordinates: [] },
      { type: 'MultiPoint', coordinates: [] },
      { type: 'GeometryCollection', geometries: [] },
    ]
    for (const geometry of bad) {
      const found = geometriesOf(geometry)
      expect(found, JSON.stringify(geometry)).toHaveLength(1)
      expect(found[0]!.kind, JSON.stringify(geometry)).toBe('none')
    }
  })

  it('stops at collections nested without end', () => {
    let geometry: object = { type: 'Point', coordinates: [0, 0] }
    for (let depth = 0; depth < 5000; depth++)
      geometry = { type: 'GeometryCollection', geometries: [geometry] }
    expect(geometriesOf(geometry).map((item) => item.kind)).toEqual(['none'])
  })

  it('names features by their id, else by their place in the file', () => {
    const point = { type: 'Point', coordinates: [0, 0] }
    const { features } = readGeojson(
      {
        type: 'FeatureCollection',
        features: [
          { type: 'Feature', properties: null, geometry: point },
          { type: 'Feature', id: 17, properties: {}, geometry: point },
          { type: 'Feature', properties: { '@id': 'way/5' }, geometry: point },
          { type: 'Feature', id: '17', properties: {}, geometry: point },
          {
            type: 'Feature',
            id: 'two',
            properties: {},
            geometry: {
              type: 'MultiPoint',
              coordinates: [
                [0, 0],
                [1, 1],
              ],
            },
          },
        ],
      },
      'x.geojson',
    )
    expect(features.map((item) => item.id)).toEqual([
      'feature 1',
      '17',
      'way/5',
      '17 (feature 4)',
      'two part 1',
      'two part 2',
    ])
  })

  it('takes texts, numbers and truth values as tags and leaves out what is none', () => {
    const properties = { golf: 'tee', par: 4, lit: true, note: null, list: [1] }
    const { features } = readGeojson(
      { type: 'Feature', properties, geometry: { type: 'Point', coordinates: [0, 0] } },
      'x',
    )
    expect(features[0]!.tags).toEqual({ golf: 'tee', par: '4', lit: 'true' })
  })

  it('reads a bare geometry and a file with a byte order mark', () => {
    expect(
      parseGeojson(`\uFEFF${JSON.stringify({ type: 'Point', coordinates: [1, 2] })}`, 'x.geojson').features,
    ).toHaveLength(1)
  })

  it('accepts the reference system that RFC 7946 means and refuses others', () => {
    const named = (name: string): object => ({
      type: 'FeatureCollection',
      crs: { type: 'name', properties: { name } },
      features: [],
    })
    expect(readGeojson(named('urn:ogc:def:crs:OGC:1.3:CRS84'), 'x').features).toEqual([])
    expect(() => readGeojson(named('urn:ogc:def:crs:EPSG::3857'), 'x')).toThrow(Failure)
  })

  it('hands on what the file says of itself and nothing else', () => {
    const { collection } = readGeojson(
      {
        type: 'FeatureCollection',
        name: 'layer',
        marram: { schema: 'course/1' },
        'marram:credit': 'me',
        features: [],
      },
      'x',
    )
    expect(collection).toEqual({ marram: { schema: 'course/1' }, 'marram:credit': 'me' })
  })
})

import { describe, expect, it } from 'vitest'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { parseGeojson } from '#outside/formats/geojson.ts'
import { assembleCourse } from './assemble-course.ts'
import type { Area, Course } from './course.ts'
import { encodeCourse } from './encode-course.ts'
import { GROUND_CLASSES } from './ground.ts'

const square = (x: number, y: number, size: number): Point[] => [
  [x, y],
  [x + size, y],
  [x + size, y + size],
  [x, y + size],
]

const plain: Omit<Area, 'id' | 'ground' | 'polygon'> = {
  holes: null,
  name: null,
  unplayableShare: null,
  lostShare: null,
  heightMetres: null,
  crownBaseMetres: null,
  densityPerMetre: null,
  fallPercent: null,
  fallTowardDegrees: null,
  heightGrid: null,
  gridCellMetres: null,
  elevationMetres: null,
}

const course: Course = {
  name: 'Round trip',
  origin: [-3.25, 56.125],
  holes: [
    {
      id: 'hole 1',
      ref: '1',
      par: 4,
      strokeIndex: 7,
      name: 'Out and back',
      line: [
        [0, 0],
        [12.5, 210.25],
        [80, 355],
      ],
      isBearingInvented: false,
      cardLengths: { '': 371.5, white: 371.5, red: 322 },
    },
    {
      id: 'hole 2',
      ref: '2',
      par: null,
      strokeIndex: null,
      name: null,
      line: [
        [90, 360],
        [90, 500],
      ],
      isBearingInvented: true,
      cardLengths: {},
    },
  ],
  areas: [
    ...GROUND_CLASSES.map(
      (ground, index): Area => ({ id: `a${index}`, ground, polygon: [square(index * 30, 40, 20)], ...plain }),
    ),
    {
      ...plain,
      id: 'with a grid of heights',
      ground: 'green',
      polygon: [square(600, 40, 4)],
      heightGrid: {
        origin: [600, 44],
        stepX: [2.5, 0],
        stepY: [0, -2.5],
        columns: 3,
        rows: 2,
        heights: [3.125, 3.25, 3.25, 3, 2.875, 2.801],
      },
    },
    {
      id: 'with a hole in it',
      ground: 'fairway',
      polygon: [square(-60, 100, 90), square(-40, 120, 30).reverse()] as Polygon,
      holes: ['1', '2'],
      name: 'The Strip',
      unplayableShare: 0.25,
      lostShare: 0.1,
      heightMetres: 12,
      crownBaseMetres: 2.5,
      densityPerMetre: 0.03,
      fallPercent: 2.5,
      fallTowardDegrees: 190,
      heightGrid: null,
      gridCellMetres: 10.25,
      elevationMetres: 41.5,
    },
  ],
  spotHeights: [
    { id: 's1', position: [391, 42], elevationMetres: 12.345 },
    { id: 's2', position: [405, 55], elevationMetres: -0.5 },
  ],
  tees: [
    { id: 't1', name: 'white', holes: ['1'], position: [0, 1], elevationMetres: 40 },
    { id: 't2', name: '', holes: null, position: [90, 361], elevationMetres: null },
  ],
  pins: [{ id: 'p1', holes: ['1'], position: [80, 355] }],
  trees: [
    {
      id: 'x1',
      position: [20, 200],
      heightMetres: 14,
      crownBaseMetres: 1.8,
      crownRadiusMetres: 3.5,
      densityPerMetre: 0.2,
    },
  ],
  teeSets: [{ name: 'white', par: 72, courseRating: 71.4, slopeRating: 128 }],
  localRules: ['E-5'],
  source: 'invented',
  credit: 'nobody',
}

function read(text: string): ReturnType<typeof assembleCourse> {
  const reading = parseGeojson(text, 'course.geojson')
  expect(reading.faults).toEqual([])
  return assembleCourse(reading.features, reading)
}

/** Every number of a course to a tenth of a millimetre, which is what a course file keeps. */
function rounded(value: unknown): unknown {
  return JSON.parse(JSON.stringify(value), (_, item) =>
    typeof item === 'number' ? Math.round(item * 5000) / 5000 + 0 : item,
  )
}

describe('encodeCourse', () => {
  it('writes a course that assembles to the same course', () => {
    expect(rounded(read(encodeCourse(course)).course)).toEqual(rounded(course))
  })

  it('writes the same text again from what it wrote', () => {
    const text = encodeCourse(course)
    expect(encodeCourse(read(text).course)).toBe(text)
  })

  it('leaves no feature of its own aside', () => {
    const { report } = read(encodeCourse(course))
    expect(report.ignored).toEqual([])
    expect(report.needsPerson).toEqual([])
    expect(report.elements.used).toBe(course.holes.length + course.areas.length + 2 + 1 + 1 + 2)
  })

  it('is GeoJSON as RFC 7946 has it: closed rings, outline anticlockwise, its holes clockwise', () => {
    const file = JSON.parse(encodeCourse(course)) as {
      type: string
      features: { geometry: { type: string; coordinates: [number, number][][] } }[]
    }
    expect(file.type).toBe('FeatureCollection')
    const polygons = file.features.filter((feature) => feature.geometry.type === 'Polygon')
    expect(polygons).toHaveLength(course.areas.length)
    for (const { geometry } of polygons) {
      for (const [index, ring] of geometry.coordinates.entries()) {
        expect(ring.at(-1)).toEqual(ring[0])
        let twice = 0
        for (let i = 1; i < ring.length; i++) {
          twice += (ring[i - 1]![0] - ring[0]![0]) * (ring[i]![1] - ring[0]![1])
          twice -= (ring[i]![0] - ring[0]![0]) * (ring[i - 1]![1] - ring[0]![1])
        }
        expect(twice > 0).toBe(index === 0)
      }
    }
  })
})

import { describe, expect, it } from 'vitest'
import type { Point } from '#numbers/geometry/point.ts'
import { parseGeojson } from '#outside/formats/geojson.ts'
import { assembleCourse } from './assemble-course.ts'
import { checkCourse } from './check-course.ts'
import type { Course, SpotHeight } from './course.ts'
import { encodeCourse } from './encode-course.ts'
import { greenHeights } from './green-heights.ts'
import { greenSurface } from './green-surface.ts'
import { holeFromCourse } from './hole-from-course.ts'
import { area, carryCourse, course, holeLine, rectangle, tee } from './invented-course.fixture.ts'

// A hole due north, 300 m, its green 20 m wide and 30 deep; heights fall 2 per cent to the south and 1 to the east.
const rise = ([x, y]: Point): number => 12 + 0.02 * (y - 300) - 0.01 * x
const PLACES: readonly Point[] = [
  [-8, 290],
  [8, 288],
  [9, 312],
  [-7, 313],
  [0, 300],
]

function spots(places: readonly Point[], height: (place: Point) => number = rise): SpotHeight[] {
  return places.map((position, k) => ({ id: `spot ${k + 1}`, position, elevationMetres: height(position) }))
}

function surveyed(change: Partial<Course>): Course {
  return course({
    holes: [
      holeLine(
        '1',
        [
          [0, 0],
          [0, 300],
        ],
        { par: 3 },
      ),
    ],
    areas: [area('green', 'green', rectangle(-10, 285, 10, 315))],
    tees: [tee('tee', 'white', [0, 0])],
    ...change,
  })
}

const codes = (of: Course): string[] => checkCourse(of).map(({ code, place }) => `${code} ${place}`)

describe('the heights of a green', () => {
  it('give the hole its mean fall and its surface, however the course lies', () => {
    const plain = surveyed({ spotHeights: spots(PLACES) })
    for (const turned of [plain, carryCourse(plain, 2.1, -400, 90)]) {
      const hole = holeFromCourse(turned, '1')
      expect(hole.greenFallPercent).toBeCloseTo(100 * Math.hypot(0.02, 0.01), 7)
      // Downhill is to the south-south-east of a hole that looks north, whichever way it was turned.
      expect(hole.greenFallTowardDegrees).toBeCloseTo(180 - (Math.atan2(0.01, 0.02) * 180) / Math.PI, 6)
      const surface = greenSurface(hole)
      expect(surface.source).toBe('spot-heights')
      expect(surface.gradientAt(3, 295)[0]).toBeCloseTo(-0.01, 9)
      expect(surface.gradientAt(3, 295)[1]).toBeCloseTo(0.02, 9)
    }
  })

  it('are those on the green and its apron, and not those of another green', () => {
    const far = spots([
      [0, 330],
      [60, 300],
    ])
    const both = surveyed({ spotHeights: [...spots([...PLACES, [0, 279]]), ...far] })
    const heights = greenHeights(both, both.areas[0] ?? area('none', 'green', []))
    expect(heights?.kind === 'spot-heights' && heights.spots).toHaveLength(6)
    expect(codes(both)).toEqual(['MAR-COURSE-033 spot 1', 'MAR-COURSE-033 spot 2'])
  })

  it('are left out while they fix no slope, and the typed fall stands', () => {
    const areas = [
      area('green', 'green', rectangle(-10, 285, 10, 315), { fallPercent: 1.5, fallTowardDegrees: 90 }),
    ]
    for (const places of [PLACES.slice(0, 2), [[0, 290] as Point, [0, 300] as Point, [0.1, 310] as Point]]) {
      const few = surveyed({ areas, spotHeights: spots(places) })
      expect(codes(few)).toEqual(['MAR-COURSE-034 green'])
      expect(holeFromCourse(few, '1').greenHeights).toBeNull()
      expect(holeFromCourse(few, '1').greenFallPercent).toBe(1.5)
    }
  })

  it('are checked against a typed fall and against what a green can be', () => {
    const typed = (fallPercent: number, fallTowardDegrees: number, spotHeights: SpotHeight[]): string[] =>
      codes(
        surveyed({
          areas: [area('green', 'green', rectangle(-10, 285, 10, 315), { fallPercent, fallTowardDegrees })],
          spotHeights,
        }),
      )
    expect(typed(2.2, 150, spots(PLACES))).toEqual([])
    expect(typed(2.2, 330, spots(PLACES))).toEqual(['MAR-COURSE-036 green'])
    expect(typed(9, 150, [])).toEqual(['MAR-COURSE-035 green'])
    expect(codes(surveyed({ spotHeights: spots(PLACES, ([, y]) => 0.1 * y) }))).toEqual([
      'MAR-COURSE-035 green',
    ])
    // One height of five is mistyped: 21 for 12.
    const mistyped = spots(PLACES).map((spot, k) => (k === 4 ? { ...spot, elevationMetres: 21 } : spot))
    expect(codes(surveyed({ spotHeights: mistyped }))).toEqual(['MAR-COURSE-035 green'])
    expect(codes(surveyed({ spotHeights: spots(PLACES, () => 6000) }))).toContain('MAR-COURSE-031 spot 1')
  })

  it('are thinned when there are more than a survey by hand has', () => {
    const many = Array.from({ length: 400 }, (_, k): Point => [-9.5 + (k % 20), 285.5 + Math.floor(k / 20)])
    const crowded = surveyed({ spotHeights: spots(many) })
    const heights = greenHeights(crowded, crowded.areas[0] ?? area('none', 'green', []))
    expect(heights?.kind === 'spot-heights' && heights.spots).toHaveLength(134)
    expect(codes(crowded)).toEqual(['MAR-COURSE-037 green'])
  })
})

describe('heights in a course file', () => {
  const file = (properties: object, geometry: object): ReturnType<typeof assembleCourse> => {
    const text = encodeCourse(surveyed({}))
    const feature = JSON.stringify({ type: 'Feature', id: 'new', properties, geometry })
    const reading = parseGeojson(
      text.replace('"features":[\n', `"features":[\n${feature},\n`),
      'course.geojson',
    )
    return assembleCourse(reading.features, reading)
  }
  const point = { type: 'Point', coordinates: [0, 0.0027] }
  const outline = {
    type: 'Polygon',
    coordinates: [
      [
        [0, 0],
        [0.001, 0],
        [0.001, 0.001],
        [0, 0],
      ],
    ],
  }
  const grid = {
    cell_m: 2,
    north_west: [0, 0.001],
    rows_m: [
      [1, 1.1],
      [1.2, 1.3],
    ],
  }

  it('are spot heights by their own property, with a fault for one that says nothing', () => {
    const good = file({ 'marram:survey': 'spot-height', 'marram:elevation_m': 4.25 }, point)
    expect(good.course.spotHeights).toMatchObject([{ id: 'new', elevationMetres: 4.25 }])
    expect(good.faults).toEqual([])
    const bad: readonly [object, object, string][] = [
      [{ 'marram:survey': 'spot-height' }, point, 'MAR-IMPORT-032'],
      [
        { 'marram:survey': 'spot-height', 'marram:elevation_m': 'high' },
        point,
        'MAR-IMPORT-011 MAR-IMPORT-032',
      ],
      [{ 'marram:survey': 'spot-height', 'marram:elevation_m': 4 }, outline, 'MAR-IMPORT-014'],
    ]
    for (const [properties, geometry, code] of bad) {
      const { course: read, faults, report } = file(properties, geometry)
      expect(read.spotHeights).toEqual([])
      expect(faults.map((fault) => fault.code).join(' ')).toBe(code)
      expect(report.needsPerson.map(({ id }) => id)).toEqual(['new'])
    }
    expect(file({ 'marram:survey': 'bench-mark' }, point).report.needsPerson).toHaveLength(1)
  })

  it('are a grid on the green, with a fault for one that cannot be read', () => {
    const read = (height: unknown): ReturnType<typeof assembleCourse> =>
      file({ golf: 'green', 'marram:height_grid': height }, outline)
    const green = read(grid).course.areas.find(({ id }) => id === 'new')
    expect(green?.heightGrid).toMatchObject({
      columns: 2,
      rows: 2,
      heights: [1, 1.1, 1.2, 1.3],
      stepY: [0, -2],
    })
    const bad: readonly unknown[] = [
      'a word',
      [1, 2],
      { ...grid, cell_m: 30 },
      { ...grid, cell_m: '2' },
      { ...grid, north_west: [200, 0] },
      { ...grid, north_west: [0] },
      { ...grid, rows_m: [[1, 2]] },
      { ...grid, rows_m: [[1, 2], [3]] },
      {
        ...grid,
        rows_m: [
          [1, 2],
          [3, null],
        ],
      },
      { ...grid, rows_m: Array.from({ length: 101 }, () => Array.from({ length: 100 }, () => 1)) },
    ]
    for (const one of bad) {
      const { course: left, faults } = read(one)
      expect(left.areas.find(({ id }) => id === 'new')?.heightGrid).toBeNull()
      expect(faults.map(({ code }) => code)).toEqual(['MAR-IMPORT-033'])
    }
  })
})

import { describe, expect, it } from 'vitest'
import type { FaultCode } from '#faults/codes.ts'
import type { Fault } from '#faults/fault.ts'
import { assembleCourse } from '#golf/course/assemble-course.ts'
import { checkCourse } from '#golf/course/check-course.ts'
import { readSource } from '#outside/formats/read-source.ts'
import { expectPlain } from './expect-plain.ts'

/** Everything the import and the check of a course find in a source. */
function faultsOf(content: string, name: string): readonly Fault[] {
  const reading = readSource(new TextEncoder().encode(content), name)
  const { course, faults } = assembleCourse(reading.features, reading)
  return [...reading.faults, ...faults, ...checkCourse(course)]
}

interface BadContent {
  readonly name: string
  readonly code: FaultCode
  readonly where: string
  readonly file: string
  readonly content: string
}

const HEADER = 'hole,what,side,from_m,to_m,near_m,far_m,note\n'
const GREEN = '1,green,,300,320,,20,par 4\n'

type Position = readonly [number, number]

function feature(properties: object, type: string, coordinates: unknown): object {
  return { type: 'Feature', properties, geometry: { type, coordinates } }
}

/** A map of somebody else's, of which nothing is taken on trust. */
function foreignMap(features: readonly object[]): string {
  return JSON.stringify({ type: 'FeatureCollection', features })
}

function courseFile(features: readonly object[], marram: object = {}): string {
  return JSON.stringify({
    type: 'FeatureCollection',
    marram: { schema: 'course/1', name: 'Bad', origin: [0, 0], ...marram },
    features,
  })
}

/** About one metre in degrees at 0° north, 0° east. */
const M = 9e-6
const at = (x: number, y: number): Position => [x * M, y * M]
const box = (x: number, y: number, w: number, h: number): Position[][] => [
  [at(x, y), at(x + w, y), at(x + w, y + h), at(x, y + h), at(x, y)],
]
const HOLE = feature({ golf: 'hole', ref: '1', par: 4 }, 'LineString', [at(0, 0), at(0, 350)])
const GREEN_AREA = feature({ golf: 'green' }, 'Polygon', box(-10, 340, 20, 20))
const TEE = feature({ golf: 'tee', tee: 'white' }, 'Point', at(0, 0))
const FAIRWAY = feature({ golf: 'fairway' }, 'Polygon', box(-15, 150, 30, 180))
const GOOD = [HOLE, GREEN_AREA, TEE, FAIRWAY]

const FAULTY: readonly BadContent[] = [
  {
    name: 'a source without holes',
    code: 'MAR-IMPORT-005',
    where: '',
    file: 'none.geojson',
    content: courseFile([FAIRWAY]),
  },
  {
    name: 'a hole line with ref 0',
    code: 'MAR-IMPORT-006',
    where: 'feature 1',
    file: 'range.geojson',
    content: foreignMap([feature({ golf: 'hole', ref: '0' }, 'LineString', [at(0, 0), at(0, 300)])]),
  },
  {
    name: 'a hole line without a ref',
    code: 'MAR-IMPORT-007',
    where: 'feature 5',
    file: 'noref.geojson',
    content: courseFile([...GOOD, feature({ golf: 'hole' }, 'LineString', [at(200, 0), at(200, 300)])]),
  },
  {
    name: 'two holes with one ref',
    code: 'MAR-IMPORT-008',
    where: 'feature 5',
    file: 'twice.geojson',
    content: courseFile([
      ...GOOD,
      feature({ golf: 'hole', ref: '1', par: 3 }, 'LineString', [at(300, 0), at(300, 150)]),
    ]),
  },
  {
    name: 'a hole without par',
    code: 'MAR-IMPORT-010',
    where: 'hole 1',
    file: 'nopar.geojson',
    content: courseFile([feature({ golf: 'hole', ref: '1' }, 'LineString', [at(0, 0), at(0, 350)])]),
  },
  {
    name: 'a par in words',
    code: 'MAR-IMPORT-011',
    where: 'feature 1',
    file: 'four.geojson',
    content: courseFile([
      feature({ golf: 'hole', ref: '1', par: 'four' }, 'LineString', [at(0, 0), at(0, 350)]),
    ]),
  },
  {
    name: 'a share above 1',
    code: 'MAR-IMPORT-011',
    where: 'feature 5',
    file: 'share.geojson',
    content: courseFile([
      ...GOOD,
      feature({ natural: 'wood', 'marram:lost': 1.5 }, 'Polygon', box(30, 100, 20, 80)),
    ]),
  },
  {
    name: 'a card length in chains',
    code: 'MAR-IMPORT-011',
    where: 'feature 1',
    file: 'chains.geojson',
    content: courseFile([
      feature({ golf: 'hole', ref: '1', par: 4, dist: '17 chains' }, 'LineString', [at(0, 0), at(0, 350)]),
    ]),
  },
  {
    name: 'a ring that is not closed',
    code: 'MAR-IMPORT-012',
    where: 'feature 5',
    file: 'open.geojson',
    content: courseFile([
      ...GOOD,
      feature({ golf: 'bunker' }, 'Polygon', [[at(20, 200), at(30, 200), at(30, 210), at(20, 211)]]),
    ]),
  },
  {
    name: 'a feature without geometry',
    code: 'MAR-IMPORT-012',
    where: 'feature 5',
    file: 'null.geojson',
    content: courseFile([...GOOD, { type: 'Feature', properties: { golf: 'bunker' }, geometry: null }]),
  },
  {
    name: 'latitude and longitude the wrong way round',
    code: 'MAR-IMPORT-013',
    where: 'feature 1',
    file: 'swapped.geojson',
    content: courseFile([
      feature({ golf: 'hole', ref: '1', par: 4 }, 'LineString', [
        [25.01, -177.5],
        [25.01, 277.5],
      ]),
    ]),
  },
  {
    name: 'a green drawn as a point',
    code: 'MAR-IMPORT-014',
    where: 'feature 2',
    file: 'dot.geojson',
    content: courseFile([HOLE, feature({ golf: 'green' }, 'Point', at(0, 350))]),
  },
  {
    name: 'a fairway drawn as an open line',
    code: 'MAR-IMPORT-014',
    where: 'feature 5',
    file: 'line.geojson',
    content: courseFile([...GOOD, feature({ golf: 'fairway' }, 'LineString', [at(0, 100), at(0, 300)])]),
  },
  {
    name: 'a table row of lava',
    code: 'MAR-IMPORT-018',
    where: 'line 3',
    file: 'lava.csv',
    content: `${HEADER}${GREEN}1,lava,left,1,2,3,4,\n`,
  },
  {
    name: 'a table cell in words',
    code: 'MAR-IMPORT-019',
    where: 'line 3',
    file: 'words.csv',
    content: `${HEADER}${GREEN}1,bunker,left,far,2,3,4,\n`,
  },
  {
    name: 'a table row with more cells than the header',
    code: 'MAR-IMPORT-019',
    where: 'line 3',
    file: 'cells.csv',
    content: `${HEADER}${GREEN}1,bunker,left,200,5,210,5,10,20,,\n`,
  },
  {
    name: 'a table hole without a green',
    code: 'MAR-IMPORT-020',
    where: 'hole 2',
    file: 'green.csv',
    content: `${HEADER}${GREEN}2,bunker,left,200,210,10,20,\n`,
  },
  {
    name: 'a hole line that ends on no green',
    code: 'MAR-IMPORT-021',
    where: 'hole 1',
    file: 'nogreen.geojson',
    content: foreignMap([HOLE, TEE, FAIRWAY]),
  },
  {
    name: 'an origin in words',
    code: 'MAR-IMPORT-024',
    where: 'marram.origin',
    file: 'origin.geojson',
    content: courseFile(GOOD, { origin: 'here' }),
  },
  {
    name: 'a tee set without a name',
    code: 'MAR-IMPORT-024',
    where: 'marram.tees[0]',
    file: 'sets.geojson',
    content: courseFile(GOOD, { tees: [{ par: 72 }] }),
  },
  {
    name: 'a course file of another schema',
    code: 'MAR-IMPORT-025',
    where: 'marram.schema',
    file: 'future.geojson',
    content: courseFile(GOOD, { schema: 'course/9' }),
  },
  {
    name: 'a card in yards read as metres',
    code: 'MAR-IMPORT-026',
    where: 'hole 1',
    file: 'yards.geojson',
    content: foreignMap([
      feature({ golf: 'hole', ref: '1', par: 4, dist: '383' }, 'LineString', [at(0, 0), at(0, 350)]),
    ]),
  },
  {
    name: 'a hole without tees',
    code: 'MAR-IMPORT-028',
    where: 'hole 1',
    file: 'notee.geojson',
    content: foreignMap([HOLE, GREEN_AREA, FAIRWAY]),
  },
  {
    name: 'a map server out of time',
    code: 'MAR-IMPORT-031',
    where: 'late.json',
    file: 'late.json',
    content: '{"elements":[],"remark":"runtime error: Query timed out"}',
  },
  {
    name: 'a course file with a hole without a green',
    code: 'MAR-COURSE-019',
    where: 'hole 1',
    file: 'bare.geojson',
    content: courseFile([HOLE, TEE, FAIRWAY]),
  },
  {
    name: 'a course file with a hole without tees',
    code: 'MAR-COURSE-020',
    where: 'hole 1',
    file: 'untee.geojson',
    content: courseFile([HOLE, GREEN_AREA, FAIRWAY]),
  },
  {
    name: 'a ring that crosses itself',
    code: 'MAR-COURSE-011',
    where: 'feature 5',
    file: 'eight.geojson',
    content: courseFile([
      ...GOOD,
      feature({ golf: 'bunker' }, 'Polygon', [
        [at(20, 200), at(40, 220), at(40, 200), at(20, 215), at(20, 200)],
      ]),
    ]),
  },
  {
    name: 'a hole line drawn backwards',
    code: 'MAR-COURSE-013',
    where: 'hole 1',
    file: 'back.geojson',
    content: courseFile([
      feature({ golf: 'hole', ref: '1', par: 4 }, 'LineString', [at(0, 350), at(0, 0)]),
      GREEN_AREA,
      feature({ golf: 'tee', ref: '1' }, 'Point', at(0, 0)),
      FAIRWAY,
    ]),
  },
  {
    name: 'a green far from the line',
    code: 'MAR-COURSE-018',
    where: 'hole 1',
    file: 'far.geojson',
    content: courseFile([
      HOLE,
      TEE,
      FAIRWAY,
      feature({ golf: 'green', 'marram:hole': '1' }, 'Polygon', box(200, 340, 20, 20)),
    ]),
  },
]

describe('a source with a fault in it', () => {
  it('is compared with a good one that has none', () => {
    expect(faultsOf(courseFile(GOOD), 'good.geojson').filter((fault) => fault.severity !== 'note')).toEqual(
      [],
    )
    expect(faultsOf(HEADER + GREEN, 'good.csv').filter((fault) => fault.severity === 'error')).toEqual([])
  })

  it.each(FAULTY)('$name: $code', ({ code, where, file, content }) => {
    const faults = faultsOf(content, file)
    const found = faults.filter((fault) => fault.code === code && fault.place.includes(where))
    expect(faults.map((fault) => fault.code)).toContain(code)
    expect(found).toHaveLength(1)
    for (const fault of faults) {
      expectPlain(fault.message)
      expect(fault.advice).not.toBe('')
    }
  })

  it('is not told the same twice of a course file', () => {
    const faults = faultsOf(courseFile([HOLE]), 'line.geojson')
    expect(faults.map((fault) => fault.code).sort()).toEqual([
      'MAR-COURSE-019',
      'MAR-COURSE-020',
      'MAR-IMPORT-029',
    ])
  })

  it('is told of all its faults at once, not only the first', () => {
    const faults = faultsOf(
      foreignMap([
        feature({ golf: 'hole', ref: '1', par: 'x' }, 'LineString', [at(0, 0), at(0, 350)]),
        feature({ golf: 'green' }, 'Point', at(0, 350)),
        { type: 'Feature', properties: { golf: 'bunker' }, geometry: null },
      ]),
      'many.geojson',
    )
    const codes = new Set(faults.map((fault) => fault.code))
    for (const code of [
      'MAR-IMPORT-010',
      'MAR-IMPORT-011',
      'MAR-IMPORT-012',
      'MAR-IMPORT-014',
      'MAR-IMPORT-021',
    ] as const) {
      expect(codes).toContain(code)
    }
  })
})

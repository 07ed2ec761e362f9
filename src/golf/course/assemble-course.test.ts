import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { polygonArea } from '#numbers/geometry/polygon.ts'
import { tangentPlane } from '#numbers/geometry/tangent-plane.ts'
import { assembleCourse } from './assemble-course.ts'
import type { LonLat, SurveyFeature, SurveyGeometry } from './survey-feature.ts'

const plane = tangentPlane([-2.5, 56])
const at = (x: number, y: number): LonLat => plane.toLonLat([x, y])
const line = (...points: [number, number][]): SurveyGeometry => ({
  kind: 'line',
  positions: points.map(([x, y]) => at(x, y)),
})
const point = (x: number, y: number): SurveyGeometry => ({ kind: 'point', position: at(x, y) })
const box = (x: number, y: number, w: number, h: number): SurveyGeometry => ({
  kind: 'area',
  rings: [[at(x, y), at(x + w, y), at(x + w, y + h), at(x, y + h), at(x, y)]],
})
const make = (id: string, tags: SurveyFeature['tags'], geometry: SurveyGeometry): SurveyFeature => ({
  id,
  tags,
  geometry,
})
const hole = (ref: string, geometry: SurveyGeometry, tags: SurveyFeature['tags'] = {}): SurveyFeature =>
  make(`hole ${ref}`, { golf: 'hole', ref, ...tags }, geometry)

const FIRST = hole('1', line([0, 0], [0, 350]), { par: '4' })

function reasonFor(feature: SurveyFeature, others: readonly SurveyFeature[] = [FIRST]): string | undefined {
  const { report } = assembleCourse([...others, feature])
  return [...report.ignored, ...report.needsPerson].find((item) => item.id === feature.id)?.reason
}

describe('assembleCourse', () => {
  it('sets aside lines that are no hole, each with its reason', () => {
    expect(reasonFor(hole('0', line([0, 0], [0, 300])))).toContain('ref 0')
    expect(reasonFor(hole('37', line([50, 0], [50, 300])))).toContain('ref 37')
    expect(reasonFor(hole('2', line([50, 0], [50, 55])))).toBe('it is only 55 m long')
    expect(reasonFor(hole('2', line([50, 0], [50, 701])))).toBe('it is 701 m long')
    const range = make('range', { golf: 'driving_range' }, box(40, -10, 100, 400))
    expect(reasonFor(hole('2', line([50, 0], [50, 300])), [FIRST, range])).toBe('it lies on a driving range')
    expect(reasonFor(hole('2', line([50, 0], [50, 300])))).toBeUndefined()
  })

  it('lays a course on both sides of 180° on the ground it lies on', () => {
    const pacific = tangentPlane([180, -17])
    const across: SurveyGeometry = {
      kind: 'line',
      positions: [pacific.toLonLat([-175, 0]), pacific.toLonLat([175, 0])],
    }
    const { course } = assembleCourse([make('hole 1', { golf: 'hole', ref: '1', par: '4' }, across)])
    expect(Math.abs(course.origin[0])).toBeCloseTo(180, 5)
    const [start, end] = course.holes[0]!.line
    expect(Math.hypot(end![0] - start![0], end![1] - start![1])).toBeCloseTo(350, 3)
  })

  it('knows a model Local Rule however its number is typed, and says of others that nothing is done', () => {
    const rules = ['G-11', 'g-5', ' E 5 ', 'G11', 'MLR G-11', 'no play from the new wood']
    const { course, faults } = assembleCourse([FIRST], {
      collection: { marram: { schema: 'course/1', localRules: rules } },
    })
    expect(course.localRules).toEqual(['G-11', 'G-5', 'E-5', 'G-11', 'G-11', 'no play from the new wood'])
    expect(faults.filter(({ place }) => place === 'marram.localRules')).toMatchObject([
      { severity: 'warning', code: 'MAR-IMPORT-024' },
    ])
  })

  it('takes a course file at its word: a hole of 55 m is a hole there', () => {
    const short = hole('2', line([50, 0], [50, 55]), { par: '3' })
    const { course } = assembleCourse([FIRST, short], { collection: { marram: { schema: 'course/1' } } })
    expect(course.holes.map((item) => item.ref)).toEqual(['1', '2'])
  })

  it('reads par from the tag first, then from the name, and asks otherwise', () => {
    const par = (tags: SurveyFeature['tags']): unknown => {
      const { report } = assembleCourse([hole('1', line([0, 0], [0, 350]), tags)])
      return [report.holes[0]!.par, report.holes[0]!.parFrom]
    }
    expect(par({ par: '5', name: 'Long (Par 4)' })).toEqual([5, 'tag'])
    expect(par({ name: 'Red (Par 3)' })).toEqual([3, 'name'])
    expect(par({ name: 'par-5 The Dyke' })).toEqual([5, 'name'])
    expect(par({ name: 'Sparrow 4' })).toEqual([null, 'asked'])
    expect(par({})).toEqual([null, 'asked'])
  })

  it('makes two holes of a line that is played as two', () => {
    const { course, report } = assembleCourse([
      { ...FIRST, id: 'way/5', tags: { ...FIRST.tags, ref: '1;10' } },
    ])
    expect(course.holes.map((item) => [item.ref, item.id])).toEqual([
      ['1', 'way/5'],
      ['10', 'way/5 as 10'],
    ])
    expect(report.elements).toMatchObject({ total: 1, used: 1 })
  })

  it('reads card lengths as metres unless a unit is written', () => {
    const tags = { dist: '350', 'dist:blue': '400 yd', 'dist:red': '310 m', 'dist:gold': '1000 ft' }
    const { course } = assembleCourse([hole('1', line([0, 0], [0, 350]), tags)])
    const { cardLengths } = course.holes[0]!
    expect(cardLengths['']).toBe(350)
    expect(cardLengths.blue).toBeCloseTo(365.76, 9)
    expect(cardLengths.red).toBe(310)
    expect(cardLengths.gold).toBeCloseTo(304.8, 9)
  })

  it('gives a tee beside another hole’s green to the hole that starts there', () => {
    const second = hole('2', line([30, 345], [30, 0]), { par: '4' })
    const { report } = assembleCourse([
      FIRST,
      second,
      make('tee 1', { golf: 'tee' }, point(0, 2)),
      make('tee 2', { golf: 'tee' }, point(28, 348)),
    ])
    expect(report.holes.map((item) => item.tees)).toEqual([['tee 1'], ['tee 2']])
  })

  it('puts the markers of a teeing ground where the line starts on it, and makes none where a point stands', () => {
    const ground = make('pad', { golf: 'tee', tee: 'blue' }, box(-5, -4, 10, 20))
    const alone = assembleCourse([FIRST, ground]).course
    expect(alone.tees.map((tee) => [tee.id, tee.name])).toEqual([['pad markers', 'blue']])
    expect(
      Math.hypot(
        alone.tees[0]!.position[0] - alone.holes[0]!.line[0]![0],
        alone.tees[0]!.position[1] - alone.holes[0]!.line[0]![1],
      ),
    ).toBeLessThan(1e-9)
    const both = assembleCourse([
      FIRST,
      ground,
      make('spot', { golf: 'tee', tee: 'white' }, point(1, 10)),
    ]).course
    expect(both.tees.map((tee) => tee.id)).toEqual(['spot'])
    expect(both.areas.map((area) => area.ground)).toEqual(['tee'])
  })

  it('makes markers for every name on a shared teeing ground', () => {
    const { course } = assembleCourse([
      FIRST,
      make('spot', { golf: 'tee', tee: 'white;yellow' }, point(0, 1)),
    ])
    expect(course.tees.map((tee) => [tee.id, tee.name])).toEqual([
      ['spot', 'white'],
      ['spot 2', 'yellow'],
    ])
  })

  it('does not believe a ref that names a hole far away', () => {
    expect(reasonFor(make('t', { golf: 'tee', ref: '1' }, point(900, 0)))).toContain('lies far from its line')
    expect(reasonFor(make('t', { golf: 'tee', ref: '12' }, point(10, 0)))).toBe(
      'its ref 12 is no hole of this course',
    )
  })

  it('gives a hazard to every hole whose corridor it touches', () => {
    const second = hole('2', line([60, 345], [60, 0]), { par: '4' })
    const { report } = assembleCourse([
      FIRST,
      second,
      make('pond', { golf: 'water_hazard' }, box(25, 150, 10, 20)),
      make('far', { golf: 'bunker' }, box(230, 150, 10, 10)),
      make('own', { golf: 'bunker', 'marram:hole': '1' }, box(20, 200, 5, 5)),
    ])
    expect(report.holes.map((item) => item.hazards)).toEqual([['pond', 'own'], ['pond']])
    expect(report.unownedHazards).toEqual([{ id: 'far', ground: 'bunker' }])
  })

  it('knows the colour of water: marked, else by its golf value, else red as the Rules have it', () => {
    const colour = (tags: SurveyFeature['tags']): string =>
      assembleCourse([FIRST, make('w', tags, box(20, 100, 10, 10))]).course.areas[0]!.ground
    expect(colour({ golf: 'water_hazard' })).toBe('penalty-yellow')
    expect(colour({ golf: 'lateral_water_hazard' })).toBe('penalty-red')
    expect(colour({ golf: 'water_hazard', 'marram:penalty': 'red' })).toBe('penalty-red')
    expect(colour({ natural: 'water' })).toBe('penalty-red')
    expect(colour({ golf: 'water_hazard', natural: 'water' })).toBe('penalty-yellow')
  })

  it('ends bare sand at the water, and leaves a bunker whole', () => {
    const sandArea = (tags: SurveyFeature['tags']): number => {
      const { course } = assembleCourse([
        FIRST,
        make('s', tags, box(20, 100, 20, 20)),
        make('w', { natural: 'water' }, box(30, 90, 40, 40)),
      ])
      return course.areas
        .filter((area) => area.ground === 'bunker')
        .reduce((sum, area) => sum + polygonArea(area.polygon), 0)
    }
    expect(sandArea({ natural: 'sand' })).toBeCloseTo(200, 3)
    expect(sandArea({ natural: 'sand', golf: 'bunker' })).toBeCloseTo(400, 3)
  })

  it('gives a stream its written width, else a usual one, and leaves a piped one out', () => {
    const width = (tags: SurveyFeature['tags']): number | undefined => {
      const { course } = assembleCourse([FIRST, make('s', tags, line([-50, 200], [50, 200]))])
      return course.areas[0] && polygonArea(course.areas[0].polygon) / 100
    }
    expect(width({ waterway: 'stream', width: '4' })).toBeCloseTo(4, 4)
    expect(width({ waterway: 'ditch' })).toBeCloseTo(1.5, 4)
    expect(width({ waterway: 'stream', tunnel: 'culvert' })).toBeUndefined()
  })

  it('asks about a shore drawn as a line only where a hole is near it', () => {
    expect(reasonFor(make('c', { natural: 'coastline' }, line([40, 0], [40, 300])))).toContain('only a line')
    expect(reasonFor(make('c', { natural: 'coastline' }, line([900, 0], [900, 300])))).toContain(
      'more than 300 m',
    )
  })

  it('takes one course of two and says how to take the other', () => {
    const nine = (east: number, name: string): SurveyFeature[] => [
      make(name, { leisure: 'golf_course', name }, box(east - 40, -40, 700, 500)),
      ...Array.from({ length: 9 }, (_, index) => {
        const x = east + index * 60
        const ends: [number, number][] = [
          [x, 0],
          [x, 350],
        ]
        const walk = index % 2 === 0 ? ends : ends.reverse()
        return { ...hole(String(index + 1), line(...walk), { par: '4' }), id: `${name} ${index + 1}` }
      }),
    ]
    const both = [...nine(0, 'Near'), ...nine(3000, 'Far')]
    const one = assembleCourse(both)
    expect(one.course.holes).toHaveLength(9)
    expect(one.course.name).toBe('Near')
    expect(one.report.courses.map((item) => item.name)).toEqual(['Near', 'Far'])
    expect(one.report.needsPerson).toHaveLength(9)
    expect(one.faults.filter((fault) => fault.code === 'MAR-IMPORT-009')).toHaveLength(1)
    const two = assembleCourse(both, { part: 2 })
    expect(two.course.name).toBe('Far')
    expect(two.course.holes.map((item) => item.id)).toEqual(
      Array.from({ length: 9 }, (_, index) => `Far ${index + 1}`),
    )
    expect(assembleCourse(both, { name: 'Far' }).course.holes[0]!.id).toBe('Far 1')
  })

  it('puts every feature in exactly one list, whatever it is given', () => {
    const tags = fc.dictionary(
      fc.constantFrom(
        'golf',
        'natural',
        'waterway',
        'ref',
        'par',
        'marram:hole',
        'marram:grass',
        'tee',
        'dist',
        'name',
      ),
      fc.constantFrom(
        'hole',
        'tee',
        'pin',
        'green',
        'bunker',
        'rough',
        'water',
        'sand',
        'coastline',
        'stream',
        '1',
        '2',
        '0',
        'x',
        '',
        'Par 4',
      ),
    )
    const place = fc.tuple(fc.integer({ min: -400, max: 400 }), fc.integer({ min: -400, max: 400 }))
    const geometry: fc.Arbitrary<SurveyGeometry> = fc.oneof(
      place.map(([x, y]) => point(x, y)),
      fc.array(place, { minLength: 2, maxLength: 5 }).map((points) => line(...points)),
      place.map(([x, y]) => box(x, y, 30, 20)),
      place.map(([x, y]) => ({
        kind: 'areas' as const,
        polygons: [[[at(x, y), at(x + 9, y), at(x, y + 9), at(x, y)]]],
      })),
      fc.constant({ kind: 'none' as const, reason: 'lost' }),
    )
    fc.assert(
      fc.property(fc.array(fc.tuple(tags, geometry), { maxLength: 12 }), (items) => {
        const features = items.map(([own, shape], index) => make(`f${index}`, own, shape))
        const { course, report } = assembleCourse(features)
        const listed = [...report.used, ...report.ignored, ...report.needsPerson].map((item) => item.id)
        expect([...listed].sort()).toEqual(features.map((feature) => feature.id).sort())
        expect(new Set(course.holes.map((item) => item.ref)).size).toBe(course.holes.length)
      }),
      { numRuns: 300 },
    )
  })
})

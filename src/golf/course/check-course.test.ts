import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Point } from '#numbers/geometry/point.ts'
import { tangentPlane } from '#numbers/geometry/tangent-plane.ts'
import { checkCourse } from './check-course.ts'
import type { Course } from './course.ts'
import { GROUND_CLASSES } from './ground.ts'
import { area, course, holeLine, rectangle, tee } from './invented-course.fixture.ts'

// A sound hole due north, 300 m, with its green, its tee and a bunker.
const LINE: Point[] = [
  [0, 0],
  [0, 300],
]
const GREEN = area('green', 'green', rectangle(-10, 285, 10, 315))
const TEE = tee('tee', 'white', [0, -2])
const SOUND = course({
  holes: [holeLine('1', LINE, { strokeIndex: 7, cardLengths: { '': 300, white: 303 } })],
  areas: [GREEN, area('bunker', 'bunker', rectangle(20, 200, 30, 210))],
  tees: [TEE],
  teeSets: [{ name: 'white', par: 72, courseRating: 71.5, slopeRating: 128 }],
})

function found(change: Partial<Course>): string[] {
  return checkCourse({ ...SOUND, ...change }).map((fault) => `${fault.severity} ${fault.code} ${fault.place}`)
}

function advice(change: Partial<Course>): string {
  return checkCourse({ ...SOUND, ...change })
    .map((fault) => `${fault.message} ${fault.advice}`)
    .join('\n')
}

describe('checkCourse', () => {
  it('finds nothing wrong with a sound course', () => {
    expect(checkCourse(SOUND)).toEqual([])
  })

  it('finds a course without holes', () => {
    expect(found({ holes: [] })).toEqual(['error MAR-COURSE-032 '])
  })

  it('finds an outline that crosses itself, and says where', () => {
    const bow: Point[] = [
      [20, 100],
      [40, 120],
      [40, 100],
      [20, 120],
    ]
    const areas = [GREEN, area('bow', 'bunker', [bow])]
    expect(found({ areas })).toEqual(['error MAR-COURSE-011 bow'])
    const [longitude, latitude] = tangentPlane(SOUND.origin).toLonLat([30, 110])
    expect(advice({ areas })).toContain(`longitude ${longitude.toFixed(6)}, latitude ${latitude.toFixed(6)}`)
  })

  it('finds ground without area', () => {
    const flat = area('flat', 'bunker', rectangle(20, 100, 20, 120))
    const bare = area('bare', 'bunker', [[[20, 100]]])
    expect(found({ areas: [GREEN, flat] })).toHaveLength(1)
    expect(found({ areas: [GREEN, bare] })).toEqual(['warning MAR-COURSE-012 bare'])
  })

  it('finds a line drawn backwards, by the tee that names the hole or by the green', () => {
    const holes = [holeLine('1', [...LINE].reverse())]
    expect(found({ holes })).toEqual(['error MAR-COURSE-013 hole 1', 'warning MAR-COURSE-020 hole 1'])
    expect(found({ holes, areas: [], tees: [{ ...TEE, holes: ['1'] }] })).toEqual([
      'error MAR-COURSE-013 hole 1',
    ])
    const pins = [{ id: 'pin', holes: ['1'], position: [0, 300] as Point }]
    expect(found({ holes, areas: [], tees: [], pins })).toContain('error MAR-COURSE-013 hole 1')
    // The green of the hole before lies beside this tee, and this hole's own green is not mapped: not backwards.
    const beside = area('before', 'green', rectangle(-25, -10, -10, 5))
    expect(found({ areas: [beside] })).toEqual(['warning MAR-COURSE-019 hole 1'])
  })

  it('finds a green away from the end of the line, or none', () => {
    const green = (x: number, holes: string[] | null = null) => [
      area('g', 'green', rectangle(x, 290, x + 20, 310), { holes }),
    ]
    expect(found({ areas: green(24) })).toEqual([])
    expect(found({ areas: green(40) })).toEqual(['warning MAR-COURSE-018 hole 1'])
    expect(found({ areas: green(140) })).toEqual(['warning MAR-COURSE-019 hole 1'])
    expect(found({ areas: green(140, ['1']) })).toEqual(['warning MAR-COURSE-018 hole 1'])
  })

  it('finds what the card lacks or gets wrong', () => {
    const hole = (more: object) => ({ holes: [holeLine('1', LINE, more)] })
    expect(found(hole({ par: null }))).toEqual(['warning MAR-COURSE-003 hole 1'])
    expect(found(hole({ par: 9 }))).toEqual(['warning MAR-COURSE-021 hole 1'])
    expect(found(hole({ strokeIndex: 0 }))).toEqual(['warning MAR-COURSE-023 hole 1'])
    expect(found(hole({ strokeIndex: 4.5 }))).toEqual(['warning MAR-COURSE-023 hole 1'])
    // 3 % of 309.2 m is 9.3 m, 3 % of 309.4 m still less than what is missing.
    expect(found(hole({ cardLengths: { '': 309.2 } }))).toEqual([])
    expect(found(hole({ cardLengths: { '': 312.5 } }))).toEqual(['warning MAR-COURSE-022 hole 1'])
    expect(found(hole({ cardLengths: { white: 312.5 } }))).toEqual(['warning MAR-COURSE-022 hole 1'])
    expect(found(hole({ cardLengths: { blue: 350 } }))).toEqual([])
    expect(advice(hole({ cardLengths: { '': 328 } }))).toContain('looks like yards')
  })

  it('finds two holes with one ref or one stroke index, and refs that no hole has', () => {
    const second: Point[] = [
      [60, 0],
      [60, 300],
    ]
    const holes = (ref: string, index: number | null) => ({
      holes: [...SOUND.holes, holeLine(ref, second, { strokeIndex: index })],
      areas: [GREEN, area('green 2', 'green', rectangle(50, 285, 70, 315))],
      tees: [TEE, tee('tee 2', 'white', [60, 0])],
    })
    expect(found(holes('2', 8))).toEqual([])
    expect(found(holes('1', 8))).toEqual(['error MAR-COURSE-016 hole 1'])
    expect(found(holes('2', 7))).toEqual(['warning MAR-COURSE-024 hole 2'])
    expect(found(holes('20', 7))).toEqual([])
    expect(found(holes('0', 8))).toEqual(['warning MAR-COURSE-017 hole 0'])
    expect(found(holes('37', 8))).toEqual(['warning MAR-COURSE-017 hole 37'])
    expect(found(holes('7A', 8))).toEqual([])
  })

  it('finds lines that are no hole', () => {
    const hole = (length: number) => ({
      holes: [
        holeLine('1', [
          [0, 0],
          [0, length],
        ]),
      ],
      areas: [area('g', 'green', rectangle(-10, length - 10, 10, length + 10))],
    })
    expect(found(hole(59))).toEqual(['warning MAR-COURSE-014 hole 1'])
    expect(found(hole(701))).toEqual(['warning MAR-COURSE-015 hole 1'])
    expect(found(hole(0))).toContain('error MAR-COURSE-004 hole 1')
  })

  it('finds missing tees and what is wrong with a set of them', () => {
    expect(found({ tees: [] })).toEqual(['warning MAR-COURSE-020 hole 1'])
    const set = { name: 'red', par: null, courseRating: null, slopeRating: 160 }
    expect(found({ teeSets: [set] })).toEqual([
      'warning MAR-COURSE-029 tees red',
      'note MAR-COURSE-028 tees red',
    ])
  })

  it('finds hazards in no corridor and what lies far from play', () => {
    const sand = (x: number, holes: string[] | null = null) => ({
      areas: [GREEN, area('b', 'bunker', rectangle(x, 100, x + 10, 110), { holes })],
    })
    expect(found(sand(89))).toEqual([])
    expect(found(sand(91))).toEqual(['note MAR-COURSE-025 b'])
    expect(found(sand(91, ['1']))).toEqual([])
    expect(found(sand(310))).toEqual(['warning MAR-COURSE-026 b'])
    expect(found({ tees: [TEE, tee('astray', 'red', [0, -400])] })).toEqual(['warning MAR-COURSE-026 astray'])
  })

  it('finds names of holes that are not there', () => {
    expect(found({ tees: [TEE, { ...TEE, id: 'odd', holes: ['1', '19'] }] })).toEqual([
      'warning MAR-COURSE-027 odd',
    ])
  })

  it('finds shares and numbers that cannot be', () => {
    const wood = (more: object) => ({ areas: [GREEN, area('w', 'trees', rectangle(20, 100, 60, 200), more)] })
    expect(found(wood({ unplayableShare: 0.4, lostShare: 1 }))).toEqual([])
    expect(found(wood({ unplayableShare: 40 }))).toEqual(['error MAR-COURSE-030 w'])
    expect(advice(wood({ unplayableShare: 40 }))).toContain('write 0.4 for 40 per cent')
    expect(found(wood({ lostShare: -0.1 }))).toEqual(['error MAR-COURSE-030 w'])
    expect(found(wood({ heightMetres: 150, densityPerMetre: -1 }))).toHaveLength(2)
  })

  it('finds positions that are no numbers, and goes on', () => {
    const areas = [
      GREEN,
      area('nan', 'bunker', [
        [
          [0, 0],
          [Number.NaN, 5],
          [5, 5],
        ],
      ]),
    ]
    expect(found({ areas, tees: [] })).toEqual(['error MAR-COURSE-010 nan', 'warning MAR-COURSE-020 hole 1'])
  })

  it('never throws, and puts the worst first', () => {
    const coordinate = fc.oneof(
      fc.double({ min: -800, max: 800 }),
      fc.integer({ min: -3, max: 3 }),
      fc.constant(NaN),
    )
    const point = fc.tuple(coordinate, coordinate)
    const owner = fc.option(fc.array(fc.constantFrom('1', '2', '0', ''), { maxLength: 2 }))
    const line = fc.array(point, { maxLength: 4 })
    const holes = fc.array(
      fc.tuple(fc.constantFrom('1', '2', '0', ''), line, fc.option(fc.integer()), fc.double()),
      { maxLength: 3 },
    )
    const areas = fc.array(
      fc.tuple(
        fc.constantFrom(...GROUND_CLASSES),
        fc.array(line, { maxLength: 2 }),
        owner,
        fc.option(fc.double()),
      ),
      { maxLength: 4 },
    )
    const tees = fc.array(fc.tuple(point, owner), { maxLength: 3 })
    fc.assert(
      fc.property(holes, areas, tees, (someHoles, someAreas, someTees) => {
        const built = course({
          holes: someHoles.map(([ref, points, strokeIndex, card]) =>
            holeLine(ref, points, { strokeIndex, cardLengths: { '': card, white: card } }),
          ),
          areas: someAreas.map(([ground, polygon, owners, share], index) =>
            area(`a${index}`, ground, polygon, { holes: owners, lostShare: share }),
          ),
          tees: someTees.map(([position, owners], index) =>
            tee(`t${index}`, 'white', position, { holes: owners }),
          ),
        })
        const order = checkCourse(built).map((fault) => ['error', 'warning', 'note'].indexOf(fault.severity))
        expect(order).toEqual([...order].sort((a, b) => a - b))
      }),
      { numRuns: 500 },
    )
  })
})

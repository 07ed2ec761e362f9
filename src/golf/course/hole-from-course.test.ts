import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { Failure } from '#faults/failure.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { REFERENCE_DAY } from './day.ts'
import { type HoleChoice, holeFromCourse } from './hole-from-course.ts'
import { area, carryCourse, course, holeLine, rectangle, tee } from './invented-course.fixture.ts'

// A straight hole due east, 300 m: green 30 m deep (285 to 315) and 20 m wide, the line ends in its middle.
const straight = course({
  holes: [
    holeLine('1', [
      [100, 0],
      [400, 0],
    ]),
    holeLine(
      '2',
      [
        [400, 40],
        [400, 240],
        [300, 240],
      ],
      { cardLengths: { '': 300, blue: 310 } },
    ),
  ],
  areas: [
    area('green 1', 'green', rectangle(385, -10, 415, 10), {
      fallPercent: 2,
      fallTowardDegrees: 180,
      elevationMetres: 21,
    }),
    area('bunker', 'bunker', rectangle(300, 30, 310, 40)),
    area('far', 'bunker', rectangle(300, 95, 310, 105)),
    area('wood', 'trees', rectangle(100, -60, 400, -30)),
  ],
  tees: [
    tee('tee a', 'White', [95, 3], { elevationMetres: 25.5 }),
    tee('tee b', 'red', [140, 0]),
    tee('tee c', 'white', [405, 30]),
  ],
})

function codeOf(action: () => unknown): string {
  try {
    action()
  } catch (error) {
    if (error instanceof Failure) return `${error.code} ${error.message}`
    throw error
  }
  return 'no failure'
}

function expectPoint(actual: Point, expected: Point): void {
  expect(actual[0]).toBeCloseTo(expected[0], 9)
  expect(actual[1]).toBeCloseTo(expected[1], 9)
}

describe('holeFromCourse', () => {
  it('starts from the tee nearest the line and looks along its first leg', () => {
    const hole = holeFromCourse(straight, '1')
    expect(hole.teeName).toBe('White')
    expect(hole.lengthMetres).toBeCloseTo(Math.hypot(305, 3), 9)
    expect(hole.bearingDegrees).toBeCloseTo(90 + (Math.atan2(3, 305) * 180) / Math.PI, 9)
    expectPoint(hole.pin, [0, Math.hypot(305, 3)])
    expect(hole.riseMetres).toBeCloseTo(-4.5, 12)
    expect(hole.greenFallPercent).toBe(2)
    expect(hole.greenFallTowardDegrees).toBeCloseTo(180 - hole.bearingDegrees, 9)
  })

  it('keeps a tee beside the green of another hole for the hole that starts there', () => {
    const hole = holeFromCourse(straight, '2', { tee: 'white' })
    expectPoint(hole.line[0] as Point, [0, 0])
    expect(hole.lengthMetres).toBeCloseTo(Math.hypot(5, 210) + 100, 9)
    expect(codeOf(() => holeFromCourse(straight, '2', { tee: 'red' }))).toMatch(/MAR-COURSE-002.*white, blue/)
  })

  it('takes a tee by name in any case, and a name that is only on the card by its length', () => {
    expect(holeFromCourse(straight, '1', { tee: 'RED' }).lengthMetres).toBeCloseTo(260, 9)
    // The card says 310 and the line is 300, so the markers stand 10 m behind its start.
    const blue = holeFromCourse(straight, '2', { tee: 'Blue' })
    expect(blue.lengthMetres).toBeCloseTo(310, 9)
    expect(blue.bearingDegrees).toBeCloseTo(0, 9)
  })

  it('lists what it knows when asked for what is not there', () => {
    expect(codeOf(() => holeFromCourse(straight, '7'))).toMatch(/MAR-COURSE-001.*1, 2/)
    expect(codeOf(() => holeFromCourse(straight, '1', { tee: 'gold' }))).toMatch(/MAR-COURSE-002.*White, red/)
    const parless = course({
      holes: [
        holeLine(
          '1',
          [
            [0, 0],
            [0, 200],
          ],
          { par: null },
        ),
      ],
    })
    expect(holeFromCourse(parless, '1')).toMatchObject({ par: 3, isParGuess: true })
    const dot = course({
      holes: [
        holeLine('1', [
          [5, 5],
          [5, 5],
        ]),
      ],
    })
    expect(codeOf(() => holeFromCourse(dot, '1'))).toMatch(/MAR-COURSE-004/)
    const bare = course({
      holes: [
        holeLine('1', [
          [0, 0],
          [0, 200],
        ]),
      ],
    })
    expect(codeOf(() => holeFromCourse(bare, '1', { pin: 'back' }))).toMatch(/MAR-COURSE-006/)
  })

  it('cuts the hole 4 yards in from front and back, and where the day says', () => {
    // From the red tee the line is due east, so the green runs from 245 to 275 m along it.
    const at = (choice: HoleChoice): Point => holeFromCourse(straight, '1', { tee: 'red', ...choice }).pin
    expectPoint(at({}), [0, 260])
    expectPoint(at({ pin: 'front' }), [0, 245 + 3.6576])
    expectPoint(at({ pin: 'back' }), [0, 275 - 3.6576])
    const day = { ...REFERENCE_DAY, pins: { 1: { xPaces: 5, yPaces: 10, from: 'left' as const } } }
    expectPoint(at({ day }), [-10 + 5 * 0.9144, 245 + 10 * 0.9144])
    const right = { ...REFERENCE_DAY, pins: { 1: { xPaces: 5, yPaces: 10, from: 'right' as const } } }
    expectPoint(at({ day: right }), [10 - 5 * 0.9144, 245 + 10 * 0.9144])
    const between = { ...REFERENCE_DAY, pins: { 1: { xPaces: 0, yPaces: 10, from: 'middle' as const } } }
    expectPoint(at({ day: between }), [0, 245 + 10 * 0.9144])
    expectPoint(at({ day, pin: 'middle' }), [0, 260])
    expectPoint(at({ pin: [-3, 250] }), [-3, 250])
    const over = { ...REFERENCE_DAY, pins: { 1: { xPaces: 5, yPaces: 34, from: 'left' as const } } }
    expect(codeOf(() => at({ day: over }))).toMatch(/MAR-COURSE-005.*33 paces deep/)
    expect(codeOf(() => at({ pin: [0, 240] }))).toMatch(/MAR-COURSE-005.*5 m outside/)
  })

  it('moves the markers ahead along the first leg', () => {
    const day = { ...REFERENCE_DAY, tees: { 1: { movedMetres: -8 } } }
    const hole = holeFromCourse(straight, '1', { tee: 'red', day })
    expect(hole.lengthMetres).toBeCloseTo(268, 9)
    expectPoint(hole.pin, [0, 268])
  })

  it('takes the ground within 90 m of the line, in painting order, in the hole frame', () => {
    const hole = holeFromCourse(straight, '1', { tee: 'red' })
    expect(hole.areas.map((piece) => piece.id)).toEqual(['wood', 'bunker', 'green 1'])
    // East is ahead and north is left: the bunker 160 to 170 m on lies 30 to 40 m left.
    const corners = hole.areas.find((piece) => piece.id === 'bunker')?.polygon[0] ?? []
    expect(corners.map((corner) => corner.map((value) => Math.round(value * 1e6) / 1e6 + 0))).toEqual([
      [-30, 160],
      [-30, 170],
      [-40, 170],
      [-40, 160],
    ])
  })

  it('takes its own ground from anywhere, and leaves a boundary that names another hole to that hole', () => {
    const owned = course({
      ...straight,
      areas: [
        area('mine', 'bunker', rectangle(300, 200, 310, 210), { holes: ['1'] }),
        area('theirs', 'bunker', rectangle(300, 30, 310, 40), { holes: ['2'] }),
        area('their boundary', 'out', rectangle(300, 30, 310, 40), { holes: ['2'] }),
        area('my boundary', 'out', rectangle(300, 50, 310, 60), { holes: ['1', '2'] }),
      ],
    })
    const ids = holeFromCourse(owned, '1').areas.map((piece) => piece.id)
    expect(ids).toEqual(['my boundary', 'mine', 'theirs'])
  })

  it('finds the green that names the hole, that holds the line end, or that lies within 25 m of it', () => {
    const at = (x: number, more = {}): string | undefined => {
      const holes = [
        holeLine('1', [
          [0, 0],
          [200, 0],
        ]),
      ]
      const found = holeFromCourse(
        course({ holes, areas: [area('g', 'green', rectangle(x, -10, x + 20, 10), more)] }),
        '1',
      )
      return found.green ? `pin ${found.pin.map((value) => Math.round(value)).join(' ')}` : 'none'
    }
    expect(at(190)).toBe('pin 0 200')
    expect(at(224)).toBe('pin 0 234')
    expect(at(226)).toBe('none')
    expect(at(226, { holes: ['1'] })).toBe('pin 0 236')
    expect(at(224, { holes: ['2'] })).toBe('none')
    expect(at(190, { holes: ['2'] })).toBe('pin 0 200')
  })

  it('looks past a bend that forward markers have reached', () => {
    const bent = course({
      holes: [
        holeLine('1', [
          [0, 0],
          [0, 100],
          [300, 100],
        ]),
      ],
      tees: [tee('t', 'red', [20, 98], { holes: ['1'] })],
    })
    const hole = holeFromCourse(bent, '1', { tee: 'red' })
    expect(hole.line).toHaveLength(2)
    expect(hole.lengthMetres).toBeCloseTo(Math.hypot(280, 2), 9)
  })

  it('does not change when the course is turned and moved', () => {
    const reference = holeFromCourse(straight, '2', { tee: 'white' })
    fc.assert(
      fc.property(
        fc.double({ min: -3.1, max: 3.1, noNaN: true }),
        fc.double({ min: -2000, max: 2000, noNaN: true }),
        fc.double({ min: -2000, max: 2000, noNaN: true }),
        (turn, east, north) => {
          const hole = holeFromCourse(carryCourse(straight, turn, east, north), '2', { tee: 'white' })
          expect(hole.lengthMetres).toBeCloseTo(reference.lengthMetres, 6)
          expect(hole.areas.map((piece) => piece.id)).toEqual(reference.areas.map((piece) => piece.id))
          for (const [index, point] of hole.line.entries()) {
            expect(point[0]).toBeCloseTo((reference.line[index] as Point)[0], 6)
            expect(point[1]).toBeCloseTo((reference.line[index] as Point)[1], 6)
          }
        },
      ),
      { numRuns: 60 },
    )
  })
})

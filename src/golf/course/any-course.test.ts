import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { Failure } from '#faults/failure.ts'
import type { Course } from './course.ts'
import { REFERENCE_DAY } from './day.ts'
import { GROUND_CLASSES } from './ground.ts'
import { holeFromCourse } from './hole-from-course.ts'
import { area, course, holeLine, tee } from './invented-course.fixture.ts'
import { measureHole } from './measure-hole.ts'

const coordinate = fc.oneof(fc.double({ min: -400, max: 400, noNaN: true }), fc.integer({ min: -3, max: 3 }))
const point = fc.tuple(coordinate, coordinate)
const owner = fc.option(fc.array(fc.constantFrom('1', '2'), { maxLength: 2 }))
const line = fc.array(point, { maxLength: 5 })

/** Courses as careless as a hand can draw them: short rings, lines on a spot, greens anywhere. */
const anyCourse: fc.Arbitrary<Course> = fc
  .tuple(
    line,
    fc.array(fc.tuple(fc.constantFrom(...GROUND_CLASSES), fc.array(line, { maxLength: 2 }), owner), {
      maxLength: 5,
    }),
    fc.array(fc.tuple(point, owner, fc.constantFrom('', 'white', 'red')), { maxLength: 3 }),
    fc.array(fc.tuple(point, owner), { maxLength: 2 }),
  )
  .map(([played, areas, tees, pins]) =>
    course({
      holes: [
        holeLine('1', played, { cardLengths: { blue: 250 } }),
        holeLine('2', [
          [50, 0],
          [50, 200],
        ]),
      ],
      areas: areas.map(([ground, polygon, holes], index) => area(`a${index}`, ground, polygon, { holes })),
      tees: tees.map(([position, holes, name], index) => tee(`t${index}`, name, position, { holes })),
      pins: pins.map(([position, holes], index) => ({ id: `p${index}`, holes, position })),
    }),
  )

describe('any course', () => {
  it('gives a hole with finite measures, or a Failure that says why not', () => {
    const choice = fc.record({
      tee: fc.constantFrom(undefined, 'white', 'BLUE'),
      pin: fc.oneof(fc.constantFrom(undefined, 'middle' as const, 'front' as const, 'back' as const), point),
      day: fc.constantFrom(undefined, {
        ...REFERENCE_DAY,
        pins: { 1: { xPaces: 4, yPaces: 6, from: 'right' as const } },
        tees: { 1: { movedMetres: 5 } },
      }),
    })
    let measured = 0
    fc.assert(
      fc.property(anyCourse, choice, (drawn, chosen) => {
        try {
          const hole = holeFromCourse(drawn, '1', chosen)
          const found = measureHole(hole)
          measured += 1
          expect(hole.line[0]?.map((value) => Math.abs(value) < 1e-9)).toEqual([true, true])
          expect(JSON.stringify(found)).toBe(JSON.stringify(found, (_, value) => finiteOnly(value)))
          for (const hazard of found.hazards) expect(hazard.reachMetres).toBeLessThanOrEqual(hazard.farMetres)
          for (const width of found.fairway) expect(width.widthMetres).toBeGreaterThan(0)
        } catch (error) {
          expect(error).toBeInstanceOf(Failure)
        }
      }),
      { numRuns: 800 },
    )
    expect(measured).toBeGreaterThan(100)
  })
})

/** JSON writes what is no number as null: this tells them apart. */
function finiteOnly(value: unknown): unknown {
  return typeof value === 'number' && !Number.isFinite(value) ? 'not finite' : value
}

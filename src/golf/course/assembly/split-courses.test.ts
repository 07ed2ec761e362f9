import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Point } from '#numbers/geometry/point.ts'
import { type RefLine, splitCourses } from './split-courses.ts'

/** Holes up and down side by side, each starting 60 m from where the one before ended. */
function loop(east: number, north: number, first: number, count: number): (RefLine & { of: string })[] {
  return Array.from({ length: count }, (_, index) => {
    const x = east + index * 60
    const ends: Point[] = [
      [x, north],
      [x, north + 350],
    ]
    return {
      ref: String(first + index),
      line: index % 2 === 0 ? ends : ends.reverse(),
      of: `${east},${north}`,
    }
  })
}

const refs = (course: readonly RefLine[]): string[] => course.map((line) => line.ref)
const oneToEighteen = Array.from({ length: 18 }, (_, index) => String(index + 1))

describe('splitCourses', () => {
  it('leaves one course whole, however far its holes lie apart', () => {
    const lines = [...loop(0, 0, 1, 9), ...loop(20_000, 0, 10, 9)]
    expect(splitCourses(lines)).toEqual([lines])
    expect(splitCourses([])).toEqual([])
  })

  it('tells two courses of 18 with the same refs apart, in whatever order their holes are listed', () => {
    const lines = [...loop(0, 0, 1, 18), ...loop(0, 900, 1, 18)]
    fc.assert(
      fc.property(fc.shuffledSubarray(lines, { minLength: 36 }), (shuffled) => {
        const courses = splitCourses(shuffled)
        expect(courses).toHaveLength(2)
        for (const course of courses) {
          expect([...refs(course)].sort((a, b) => Number(a) - Number(b))).toEqual(oneToEighteen)
          expect(new Set(course.map((line) => line.of)).size).toBe(1)
        }
      }),
      { numRuns: 50 },
    )
  })

  it('joins a front and a back nine that start far apart to the course that lacks them', () => {
    const courses = splitCourses([...loop(0, 0, 1, 9), ...loop(5000, 0, 1, 18), ...loop(1500, 0, 10, 9)])
    expect(courses.map((course) => course.length)).toEqual([18, 18])
    const first = courses.find((course) => course[0]!.of === '0,0')!
    expect(new Set(first.map((line) => line.of))).toEqual(new Set(['0,0', '1500,0']))
  })

  it('puts a hole drawn twice in a course of its own', () => {
    const twice = {
      ref: '5',
      line: [
        [300, 30],
        [320, 380],
      ] as Point[],
      of: 'twice',
    }
    const courses = splitCourses([...loop(0, 0, 1, 9), twice])
    expect(courses.map((course) => course.length)).toEqual([9, 1])
    expect(courses[1]).toEqual([twice])
    expect(splitCourses([twice, ...loop(0, 0, 1, 9)])[1]).toEqual([twice])
  })
})

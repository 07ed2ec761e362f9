import { describe, expect, it } from 'vitest'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { area, course, holeLine, rectangle } from '#golf/course/invented-course.fixture.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { layOutSheet } from '#paper/draw/sheet.ts'
import { AT_REST, carried, enlarged, viewAfter } from './chart-view.ts'

const line: readonly Point[] = [
  [0, 0],
  [0, 350],
]
const areas = [area('green', 'green', rectangle(-8, 342, 8, 358))]
const hole = holeFromCourse(course({ holes: [holeLine('1', line)], areas }), '1')
const size = { width: 600, height: 800 }
const whole = layOutSheet(hole, size)

describe('the view of a chart', () => {
  it('keeps the place under the pointer where it is while it enlarges', () => {
    const at: Point = [310, 420]
    const gesture = enlarged(enlarged(AT_REST, 2, at), 1.5, at)
    const view = viewAfter(whole, whole, null, gesture)!
    expect(view.scale).toBeCloseTo(3, 12)
    const sheet = layOutSheet(hole, { ...size, view })
    const [x, y] = sheet.toSheet(whole.toHole(at))
    expect([x, y]).toEqual([expect.closeTo(at[0], 9), expect.closeTo(at[1], 9)])
  })

  it('lies after a gesture exactly where the gesture carried it', () => {
    const first = viewAfter(whole, whole, null, enlarged(AT_REST, 4, [300, 400]))!
    const sheet = layOutSheet(hole, { ...size, view: first })
    const place: Point = [3, 190]
    const from = sheet.toSheet(place)
    const second = viewAfter(whole, sheet, first, carried(AT_REST, [12, -25]))!
    const to = layOutSheet(hole, { ...size, view: second }).toSheet(place)
    expect([to[0] - from[0], to[1] - from[1]]).toEqual([expect.closeTo(12, 9), expect.closeTo(-25, 9)])
  })

  it('never leaves the hole, and shows the whole of it when it is made small again', () => {
    const near = viewAfter(whole, whole, null, enlarged(AT_REST, 4, [300, 400]))!
    const sheet = layOutSheet(hole, { ...size, view: near })
    const far = viewAfter(whole, sheet, near, carried(AT_REST, [0, 100_000]))!
    const edge = layOutSheet(hole, { ...size, view: far }).toHole([300, whole.frame.top])
    expect(edge[1]).toBeCloseTo(whole.toHole([300, whole.frame.top])[1], 6)
    expect(viewAfter(whole, sheet, near, enlarged(AT_REST, 0.2, [300, 400]))).toBeNull()
    expect(viewAfter(whole, whole, null, enlarged(AT_REST, 1000, [300, 400]))!.scale).toBe(16)
  })
})

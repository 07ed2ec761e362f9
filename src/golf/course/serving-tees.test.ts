import { describe, expect, it } from 'vitest'
import { course, holeLine, tee } from './invented-course.fixture.ts'
import { servingTees, teeStretch } from './serving-tees.ts'

// Hole 1 runs 400 m north; hole 2 starts 30 m east of its green and runs back south.
const first = holeLine('1', [
  [0, 0],
  [0, 400],
])
const second = holeLine('2', [
  [30, 400],
  [30, 60],
])
const holes = [first, second]

function idsFor(hole: typeof first, ...tees: ReturnType<typeof tee>[]): string[] {
  return servingTees(course({ holes, tees }), hole).map((found) => found.id)
}

describe('servingTees', () => {
  it('gives a hole the tees along its first stretch, nearest its start first', () => {
    const forward = tee('forward', 'red', [10, 120])
    const back = tee('back', 'blue', [0, -25])
    const plate = tee('plate', 'white', [2, 0])
    expect(idsFor(first, forward, back, plate)).toEqual(['plate', 'back', 'forward'])
    expect(idsFor(second, forward, back, plate)).toEqual([])
  })

  it('gives the tee beside a green to the hole that starts there', () => {
    const beside = tee('beside', 'white', [14, 400])
    expect(idsFor(first, beside)).toEqual([])
    expect(idsFor(second, beside)).toEqual(['beside'])
  })

  it('believes a tee that names its holes, wherever it is and however many they are', () => {
    const far = tee('far', 'white', [500, 500], { holes: ['1', '2'] })
    const other = tee('other', 'white', [0, 0], { holes: ['2'] })
    expect(idsFor(first, far, other)).toEqual(['far'])
    expect(idsFor(second, far, other)).toEqual(['other', 'far'])
  })

  it('leaves out tees further than 40 m from the stretch', () => {
    expect(idsFor(first, tee('near', '', [-40, 50]), tee('off', '', [-41, 50]))).toEqual(['near'])
  })
})

describe('teeStretch', () => {
  it('is the first 150 m, and no more than 45 % of a short hole, round its bends', () => {
    expect(teeStretch(first.line)).toEqual([
      [0, 0],
      [0, 150],
    ])
    // 45 % of 200 m is 90 m: 60 m to the bend and 30 m beyond.
    expect(
      teeStretch([
        [0, 0],
        [0, 60],
        [140, 60],
      ]),
    ).toEqual([
      [0, 0],
      [0, 60],
      [30, 60],
    ])
  })
})

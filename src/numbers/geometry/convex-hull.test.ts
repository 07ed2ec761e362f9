import fc from 'fast-check'
import { expect, test } from 'vitest'
import { convexHull } from './convex-hull.ts'
import { fadeOutside } from './fade-outside.ts'
import { meanGradient } from './mean-gradient.ts'
import type { Point } from './point.ts'
import { polygonArea, signedRingArea } from './polygon.ts'

test('the hull leaves out what lies inside and on its sides, and runs anticlockwise', () => {
  const places: readonly Point[] = [
    [2, 2],
    [0, 0],
    [4, 0],
    [2, 0],
    [4, 4],
    [0, 4],
    [0, 4],
    [0, 1],
  ]
  const hull = convexHull(places)
  expect(hull).toHaveLength(4)
  expect(signedRingArea(hull)).toBe(16)
})

test('every place lies in the hull: adding it again never makes the hull larger', () => {
  const place = fc.tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: -50, max: 50 }))
  fc.assert(
    fc.property(fc.array(place, { minLength: 3, maxLength: 40 }), (places) => {
      const hull = convexHull(places)
      for (const one of places) expect(polygonArea([convexHull([...hull, one])])).toBe(polygonArea([hull]))
    }),
    { numRuns: 60 },
  )
})

test('a surface fades from what it is at the rim to nothing', () => {
  const ring: readonly Point[] = [
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 10],
  ]
  const faded = fadeOutside({ heightAt: () => 2, gradientAt: () => [0, 0] }, ring, 8)
  expect(faded.heightAt(5, 5)).toBe(2)
  expect(faded.heightAt(14, 5)).toBeCloseTo(1, 12)
  expect(faded.gradientAt(14, 5)[0]).toBeCloseTo((-2 * 1.5) / 8, 12)
  expect(faded.heightAt(18, 5)).toBe(0)
  expect(faded.gradientAt(30, 30)).toEqual([0, 0])
})

test('the mean slope of a bowl over a square is its slope in the middle, a hole in the square left out', () => {
  const bowl = {
    heightAt: (x: number, y: number): number => 0.01 * x * x - 0.02 * y * y + 7,
    gradientAt: (x: number, y: number): Point => [0.02 * x, -0.04 * y],
  }
  const square = (x: number, y: number, side: number): Point[] => [
    [x, y],
    [x + side, y],
    [x + side, y + side],
    [x, y + side],
  ]
  const [riseX, riseY] = meanGradient(bowl, [square(2, 2, 4)])
  expect(riseX).toBeCloseTo(0.08, 12)
  expect(riseY).toBeCloseTo(-0.16, 12)
  // 16 of middle 4 less 4 of middle 3 leave 12 of middle 13/3, whichever way the rings run.
  for (const ring of [square(2, 2, 2), square(2, 2, 2).reverse()])
    expect(meanGradient(bowl, [square(2, 2, 4).reverse(), ring])[0]).toBeCloseTo(0.02 * (13 / 3), 12)
  expect(meanGradient(bowl, [])).toEqual([0, 0])
})

import { expect, test } from 'vitest'
import { fitPlane } from './fit-plane.ts'
import type { Point } from './point.ts'

const corners: readonly Point[] = [
  [0, 0],
  [4, 0],
  [4, 2],
  [0, 2],
]

test('the plane through four corners is met, and the one nearest to a warped four is the mean of its sides', () => {
  const met = fitPlane(corners, [1, 1.4, 1.6, 1.2])
  expect(met?.centre).toEqual([2, 1])
  expect(met?.gradient[0]).toBeCloseTo(0.1, 12)
  expect(met?.gradient[1]).toBeCloseTo(0.1, 12)
  // One corner lifted by 0.4: a quarter of it is height, half the rest goes to each slope.
  const warped = fitPlane(corners, [0, 0, 0.4, 0])
  expect(warped?.height).toBeCloseTo(0.1, 12)
  expect(warped?.gradient[0]).toBeCloseTo(0.05, 12)
  expect(warped?.gradient[1]).toBeCloseTo(0.1, 12)
})

test('places hold a plane as firmly as they spread off one line, and not at all on it', () => {
  expect(fitPlane(corners, [0, 0, 0, 0])?.spreadMetres).toBeCloseTo(1, 12)
  const line: readonly Point[] = [
    [1000, 2000],
    [1001, 2003],
    [1003, 2009],
  ]
  expect(fitPlane(line, [0, 1, 2])).toBeNull()
  expect(fitPlane(corners.slice(0, 2), [0, 1])).toBeNull()
  expect(fitPlane([], [])).toBeNull()
})

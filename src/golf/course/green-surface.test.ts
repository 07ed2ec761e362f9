import fc from 'fast-check'
import { describe, expect, it, test } from 'vitest'
import type { Point } from '#numbers/geometry/point.ts'
import type { HeightGrid, SpotHeight } from './course.ts'
import { type GreenHeights, moveGreenHeights } from './green-heights.ts'
import { type GreenSurface, greenSurface } from './green-surface.ts'

type Height = (x: number, y: number) => number

/** Twelve places on and round a green of 30 by 24 metres, as a person walks them. */
const PLACES: readonly Point[] = [
  [-12, 100],
  [-9, 109],
  [-1, 114],
  [8, 111],
  [13, 102],
  [9, 92],
  [0, 88],
  [-8, 91],
  [-4, 101],
  [4, 104],
  [3, 96],
  [-3, 107],
]

function spotsOf(height: Height, places: readonly Point[] = PLACES): GreenHeights {
  const spots = places.map(
    (position, k): SpotHeight => ({ id: `s${k}`, position, elevationMetres: height(...position) }),
  )
  return { kind: 'spot-heights', spots }
}

function gridOf(height: Height, cell = 2): GreenHeights {
  const [columns, rows] = [16, 15]
  const grid: Omit<HeightGrid, 'heights'> = {
    origin: [-15, 115],
    stepX: [cell, 0],
    stepY: [0, -cell],
    columns,
    rows,
  }
  const heights = Array.from({ length: columns * rows }, (_, k) =>
    height(-15 + cell * (k % columns), 115 - cell * Math.floor(k / columns)),
  )
  return { kind: 'grid', grid: { ...grid, heights } }
}

function surfaceOf(greenHeights: GreenHeights, pin: Point = [2, 103]): GreenSurface {
  return greenSurface({ pin, greenFallPercent: 0, greenFallTowardDegrees: 0, greenHeights })
}

/** A green in two tiers: the back 40 cm up over five metres. */
const tiers: Height = (x, y) => 41 + 0.2 * Math.tanh((y - 101) / 2.5) + 0.01 * x

const SEEN: readonly Point[] = [
  [0, 100],
  [-7.3, 95.2],
  [6.1, 108.4],
  [12.5, 99.9],
  [-30, 140],
  [55, 60],
]

test('a green that falls towards +x rises towards −x and is as high as the pin at the pin', () => {
  const surface = greenSurface({ pin: [3, 100], greenFallPercent: 2, greenFallTowardDegrees: 90 })
  expect(surface.source).toBe('mean-fall')
  expect(surface.gradientAt(0, 0)[0]).toBeCloseTo(-0.02, 12)
  expect(surface.gradientAt(0, 0)[1]).toBeCloseTo(0, 12)
  expect(surface.heightAt(3, 100)).toBeCloseTo(0, 12)
  expect(surface.heightAt(13, 100)).toBeCloseTo(-0.2, 12)
})

test('a green without a surveyed fall is level', () => {
  const surface = greenSurface({ pin: [0, 100], greenFallPercent: 0, greenFallTowardDegrees: 0 })
  expect(surface.source).toBe('level')
  expect(surface.heightAt(10, 90)).toBeCloseTo(0, 12)
})

describe.each([
  ['spot-heights', spotsOf],
  ['grid', gridOf],
] as const)('a surface from %s', (source, measure) => {
  it('keeps a plane exactly, on the green and far from it', () => {
    const surface = surfaceOf(measure((x, y) => 38.2 - 0.021 * x + 0.034 * y))
    expect(surface.source).toBe(source)
    for (const [x, y] of SEEN) {
      expect(surface.gradientAt(x, y)[0]).toBeCloseTo(-0.021, 9)
      expect(surface.gradientAt(x, y)[1]).toBeCloseTo(0.034, 9)
      expect(surface.heightAt(x, y)).toBeCloseTo(-0.021 * (x - 2) + 0.034 * (y - 103), 9)
    }
  })

  it('is smooth: its gradient is the slope of its heights, everywhere', () => {
    const surface = surfaceOf(measure(tiers))
    const step = 1e-5
    fc.assert(
      fc.property(
        fc.double({ min: -45, max: 45, noNaN: true }),
        fc.double({ min: 55, max: 145, noNaN: true }),
        (x, y) => {
          const [riseX, riseY] = surface.gradientAt(x, y)
          const slope = (dx: number, dy: number): number =>
            (surface.heightAt(x + dx, y + dy) - surface.heightAt(x - dx, y - dy)) / (2 * step)
          expect(riseX).toBeCloseTo(slope(step, 0), 5)
          expect(riseY).toBeCloseTo(slope(0, step), 5)
        },
      ),
      { numRuns: 300 },
    )
  })

  it('has no jump in its gradient, on the green, at its rim or beyond', () => {
    const surface = surfaceOf(measure(tiers))
    for (let k = 0; k < 4000; k++) {
      const [x, y] = [-40 + k * 0.02, 80 + k * 0.011]
      const here = surface.gradientAt(x, y)
      const next = surface.gradientAt(x + 0.02, y + 0.011)
      expect(Math.hypot(next[0] - here[0], next[1] - here[1])).toBeLessThan(0.005)
    }
  })

  it('goes over into the plane that fits best where nothing was measured', () => {
    const surface = surfaceOf(measure(tiers))
    const far = surface.gradientAt(0, 160)
    for (const place of [
      [70, 100],
      [-60, 95],
      [3, 40],
    ] as const) {
      expect(surface.gradientAt(place[0], place[1])[0]).toBeCloseTo(far[0], 9)
      expect(surface.gradientAt(place[0], place[1])[1]).toBeCloseTo(far[1], 9)
    }
    expect(far[1]).toBeGreaterThan(0.01)
    expect(far[1]).toBeLessThan(0.04)
  })

  it('is mirrored when the green is mirrored, and turns with it', () => {
    const heights = measure(tiers)
    const plain = surfaceOf(heights)
    const mirror = surfaceOf(
      moveGreenHeights(heights, ([x, y]) => [-x, y]),
      [-2, 103],
    )
    const [sin, cos] = [Math.sin(0.7), Math.cos(0.7)]
    const turn = ([x, y]: Point): Point => [x * cos + y * sin + 31, y * cos - x * sin - 17]
    const turned = surfaceOf(moveGreenHeights(heights, turn), turn([2, 103]))
    for (const [x, y] of SEEN) {
      expect(mirror.heightAt(-x, y)).toBeCloseTo(plain.heightAt(x, y), 9)
      expect(mirror.gradientAt(-x, y)[0]).toBeCloseTo(-plain.gradientAt(x, y)[0], 9)
      expect(mirror.gradientAt(-x, y)[1]).toBeCloseTo(plain.gradientAt(x, y)[1], 9)
      const [riseX, riseY] = plain.gradientAt(x, y)
      const seen = turned.gradientAt(...turn([x, y]))
      expect(turned.heightAt(...turn([x, y]))).toBeCloseTo(plain.heightAt(x, y), 9)
      expect(seen[0]).toBeCloseTo(riseX * cos + riseY * sin, 9)
      expect(seen[1]).toBeCloseTo(riseY * cos - riseX * sin, 9)
    }
  })
})

describe('spot heights', () => {
  it('are met within four millimetres, tier and all', () => {
    const surface = surfaceOf(spotsOf(tiers))
    const difference = (a: Point, b: Point): number =>
      surface.heightAt(...a) - surface.heightAt(...b) - (tiers(...a) - tiers(...b))
    for (const place of PLACES) expect(Math.abs(difference(place, [-4, 101]))).toBeLessThan(0.004)
  })

  it('show a bowl of known shape within a few millimetres between them', () => {
    const bowl: Height = (x, y) => 0.002 * x * x + 0.001 * (y - 100) ** 2
    const places = Array.from(
      { length: 49 },
      (_, k): Point => [-12 + 4 * (k % 7), 88 + 4 * Math.floor(k / 7)],
    )
    const surface = surfaceOf(spotsOf(bowl, places), [0, 100])
    for (const [x, y] of [
      [2, 102],
      [-6, 98],
      [5, 93],
    ] as const) {
      expect(surface.heightAt(x, y)).toBeCloseTo(bowl(x, y), 2)
      expect(surface.gradientAt(x, y)[0]).toBeCloseTo(0.004 * x, 2)
      expect(surface.gradientAt(x, y)[1]).toBeCloseTo(0.002 * (y - 100), 2)
    }
  })

  it('of two readings in one place make no step but the height between', () => {
    const twice: SpotHeight[] = [
      ...PLACES.map((position, k): SpotHeight => ({ id: `s${k}`, position, elevationMetres: 10 })),
      { id: 'again', position: [-4, 101.001], elevationMetres: 10.04 },
    ]
    const surface = surfaceOf({ kind: 'spot-heights', spots: twice }, [9, 92])
    expect(surface.heightAt(-4, 101)).toBeGreaterThan(0.01)
    expect(surface.heightAt(-4, 101)).toBeLessThan(0.03)
    expect(Math.hypot(...surface.gradientAt(-4, 101))).toBeLessThan(0.02)
  })
})

describe('a grid', () => {
  it('is met at its nodes and keeps a surface of second degree two cells in', () => {
    const bowl: Height = (x, y) => 5 + 0.002 * x * x + 0.001 * (y - 100) ** 2 - 0.0015 * x * (y - 100)
    const surface = surfaceOf(gridOf(bowl), [0, 100])
    for (const [x, y] of [
      [2.3, 102.1],
      [-6.7, 98],
      [5, 93.4],
    ] as const) {
      expect(surface.heightAt(x, y)).toBeCloseTo(bowl(x, y) - 5, 9)
      expect(surface.gradientAt(x, y)[0]).toBeCloseTo(0.004 * x - 0.0015 * (y - 100), 9)
      expect(surface.gradientAt(x, y)[1]).toBeCloseTo(0.002 * (y - 100) - 0.0015 * x, 9)
    }
    expect(surface.heightAt(-15, 115)).toBeCloseTo(bowl(-15, 115) - 5, 9)
  })
})

import { describe, expect, it } from 'vitest'
import { discAround, discWithin } from './disc-polygon.ts'
import { nearestEdge } from './nearest-edge.ts'
import { distance, type Point } from './point.ts'
import { polygonArea } from './polygon.ts'

const CENTRE: Point = [12.5, -40]

describe('discWithin and discAround', () => {
  it.each([0.3, 2.28, 45, 350])('stay on their side of a circle of %s m, within a millimetre', (radius) => {
    const within = discWithin(CENTRE, radius)
    const around = discAround(CENTRE, radius)
    for (const corner of within[0] ?? []) expect(distance(corner, CENTRE)).toBeLessThan(radius + 1e-9)
    expect(nearestEdge(within, CENTRE).distance).toBeGreaterThan(radius - 0.001)
    expect(nearestEdge(around, CENTRE).distance).toBeGreaterThan(radius - 1e-9)
    for (const corner of around[0] ?? []) expect(distance(corner, CENTRE)).toBeLessThan(radius + 0.001)
    expect(polygonArea(within)).toBeLessThan(Math.PI * radius ** 2)
    expect(polygonArea(around)).toBeGreaterThan(Math.PI * radius ** 2)
  })
})

import fc from 'fast-check'
import geodesic from 'geographiclib-geodesic'
import { describe, expect, it } from 'vitest'
import { seededGenerator } from '../statistics/seeded-generator.ts'
import { distance, type Point } from './point.ts'
import { tangentPlane } from './tangent-plane.ts'

// The outside answer: C. F. F. Karney's geodesics on the WGS 84 ellipsoid (Journal of Geodesy 87 (2013) 43–55,
// accurate to 15 nm), in his own library.
const ellipsoid = geodesic.Geodesic.WGS84

function geodesicMetres(a: readonly [number, number], b: readonly [number, number]): number {
  return ellipsoid.Inverse(a[1], a[0], b[1], b[0]).s12 as number
}

function* randomOrigins(
  count: number,
  seed: number,
): Generator<{ origin: [number, number]; random: () => number }> {
  const random = seededGenerator(seed)
  for (let i = 0; i < count; i++) yield { origin: [random() * 360 - 180, random() * 130 - 65], random }
}

describe('tangentPlane', () => {
  it('keeps every distance between points up to 1.5 km from the origin to 0.011 mm', () => {
    let worst = 0
    for (const { origin, random } of randomOrigins(4000, 11)) {
      const plane = tangentPlane(origin)
      const place = (): Point => {
        const radius = 1500 * (random() < 0.4 ? 1 : Math.sqrt(random()))
        const angle = 2 * Math.PI * random()
        return [radius * Math.sin(angle), radius * Math.cos(angle)]
      }
      const a = place()
      const b = place()
      const error = Math.abs(geodesicMetres(plane.toLonLat(a), plane.toLonLat(b)) - distance(a, b))
      worst = Math.max(worst, error)
    }
    expect(worst).toBeLessThan(1.1e-5)
    // The curvature of the earth cannot be hidden: an error of exactly 0 would mean that nothing was measured.
    expect(worst).toBeGreaterThan(1e-6)
  })

  it('puts a place 3 km away at its own distance and bearing to 0.0005 mm', () => {
    let worst = 0
    for (const { origin, random } of randomOrigins(4000, 12)) {
      const azimuth = random() * 360
      const end = ellipsoid.Direct(origin[1], origin[0], azimuth, 3000)
      const angle = (azimuth * Math.PI) / 180
      const point = tangentPlane(origin).toPlane([end.lon2 as number, end.lat2 as number])
      worst = Math.max(worst, distance(point, [3000 * Math.sin(angle), 3000 * Math.cos(angle)]))
    }
    expect(worst).toBeLessThan(5e-7)
  })

  it('comes back to the same place of the plane to 4 nm', () => {
    let worst = 0
    for (const { origin, random } of randomOrigins(4000, 13)) {
      const plane = tangentPlane(origin)
      const point: Point = [random() * 6000 - 3000, random() * 6000 - 3000]
      worst = Math.max(worst, distance(plane.toPlane(plane.toLonLat(point)), point))
    }
    // Half the last digit of a longitude near 180° in a double is 1.6 nm on the equator.
    expect(worst).toBeLessThan(4e-9)
  })

  it('comes back to the same longitude and latitude', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -180, max: 180, noNaN: true }),
        fc.double({ min: -65, max: 65, noNaN: true }),
        fc.double({ min: -0.02, max: 0.02, noNaN: true }),
        fc.double({ min: -0.02, max: 0.02, noNaN: true }),
        (lon, lat, dLon, dLat) => {
          const plane = tangentPlane([lon, lat])
          const there: [number, number] = [lon + dLon, lat + dLat]
          const back = plane.toLonLat(plane.toPlane(there))
          const turn = (back[0] - there[0]) / 360
          expect(Math.abs(turn - Math.round(turn)) * 360).toBeLessThan(1e-13)
          expect(Math.abs(back[1] - there[1])).toBeLessThan(5e-14)
        },
      ),
    )
  })

  it('has its origin at the origin and works over the date line', () => {
    expect(tangentPlane([12, 34]).toPlane([12, 34])).toEqual([0, 0])
    expect(tangentPlane([12, 34]).toLonLat([0, 0])).toEqual([12, 34])
    const plane = tangentPlane([179.999, -17])
    const east = plane.toPlane([-179.999, -17])
    expect(east[0]).toBeCloseTo(geodesicMetres([179.999, -17], [-179.999, -17]), 5)
    expect(plane.toLonLat(east)[0]).toBeCloseTo(-179.999, 12)
  })
})

import { degreesToRadians, radiansToDegrees } from '#numbers/units/units.ts'
import type { Point } from './point.ts'

/** `[longitude, latitude]` in degrees, WGS 84. */
export type LonLat = readonly [longitude: number, latitude: number]

/** A local plane in metres, x east and y north of the point where it touches the ellipsoid. */
export interface TangentPlane {
  readonly toPlane: (position: LonLat) => Point
  readonly toLonLat: (point: Point) => [longitude: number, latitude: number]
}

// WGS 84: semi-major axis in metres and flattening, exact by definition (NIMA TR8350.2, table 3.1).
const SEMI_MAJOR = 6378137
const FLATTENING = 1 / 298.257223563
const SEMI_MINOR = SEMI_MAJOR * (1 - FLATTENING)
const ECCENTRICITY_SQUARED = FLATTENING * (2 - FLATTENING)

/**
 * The tangent plane of the WGS 84 ellipsoid at `origin`, in metres along the ellipsoid (height is left out:
 * ground 100 m up is longer by 16 mm a kilometre).
 *
 * A position on the ellipsoid is dropped square onto the plane, then drawn out from the origin so that its
 * distance becomes the length of the arc (radius of curvature in its direction by Euler's theorem). Lengths
 * from the origin are therefore kept, and both ways are closed forms. What no plane can keep, because the
 * ellipsoid is curved, grows with the cube of the distance: measured against geodesics, at most 0.011 mm between
 * any two points up to 1.5 km from the origin (3 km apart), and under 0.0005 mm from the origin to a point 3 km away.
 * There and back is exact to about 3 nm, which is the last digit of a longitude in degrees.
 * Made for a course: do not use it beyond some tens of kilometres.
 */
export function tangentPlane(origin: LonLat): TangentPlane {
  const latitude = degreesToRadians(origin[1])
  const sin = Math.sin(latitude)
  const cos = Math.cos(latitude)
  const shrink = 1 - ECCENTRICITY_SQUARED * sin * sin
  const primeVertical = SEMI_MAJOR / Math.sqrt(shrink)
  const meridian = (primeVertical * (1 - ECCENTRICITY_SQUARED)) / shrink
  const axisDistance = primeVertical * cos
  const height = primeVertical * (1 - ECCENTRICITY_SQUARED) * sin

  function curvature(east: number, north: number, lengthSquared: number): number {
    return (east * east) / (lengthSquared * primeVertical) + (north * north) / (lengthSquared * meridian)
  }

  function toPlane(position: LonLat): Point {
    const turn = degreesToRadians(wrapDegrees(position[0] - origin[0]))
    const phi = degreesToRadians(position[1])
    const sinPhi = Math.sin(phi)
    const radius = SEMI_MAJOR / Math.sqrt(1 - ECCENTRICITY_SQUARED * sinPhi * sinPhi)
    const fromAxis = radius * Math.cos(phi)
    const east = fromAxis * Math.sin(turn)
    const north =
      cos * (radius * (1 - ECCENTRICITY_SQUARED) * sinPhi - height) -
      sin * (fromAxis * Math.cos(turn) - axisDistance)
    const lengthSquared = east * east + north * north
    if (lengthSquared === 0) return [0, 0]
    const bend = curvature(east, north, lengthSquared) * Math.sqrt(lengthSquared)
    const stretch = Math.asin(bend) / bend
    return [east * stretch, north * stretch]
  }

  function toLonLat(point: Point): [longitude: number, latitude: number] {
    const lengthSquared = point[0] * point[0] + point[1] * point[1]
    if (lengthSquared === 0) return [origin[0], origin[1]]
    const bend = curvature(point[0], point[1], lengthSquared) * Math.sqrt(lengthSquared)
    const shorten = Math.sin(bend) / bend
    const east = point[0] * shorten
    const north = point[1] * shorten
    // Where the plumb line through the point of the plane meets the ellipsoid: in coordinates in which the
    // ellipsoid is a unit sphere this is a quadratic, a·up² + 2b·up + c = 0, of which the root near 0 is wanted.
    const a = (cos / SEMI_MAJOR) ** 2 + (sin / SEMI_MINOR) ** 2
    const b = (axisDistance * cos) / SEMI_MAJOR ** 2 + (height * sin) / SEMI_MINOR ** 2
    const c = (east ** 2 + (north * sin) ** 2) / SEMI_MAJOR ** 2 + ((north * cos) / SEMI_MINOR) ** 2
    // The plumb line is not square to the tangent directions in those coordinates.
    const skew = -(north * sin * cos) / SEMI_MAJOR ** 2 + (north * cos * sin) / SEMI_MINOR ** 2
    const half = b + skew
    const up = -c / (half + Math.sqrt(half * half - a * c))
    const outward = axisDistance - north * sin + up * cos
    const longitude = origin[0] + radiansToDegrees(Math.atan2(east, outward))
    const phi = Math.atan2(
      height + north * cos + up * sin,
      (1 - ECCENTRICITY_SQUARED) * Math.hypot(outward, east),
    )
    return [wrapDegrees(longitude), radiansToDegrees(phi)]
  }

  return { toPlane, toLonLat }
}

function wrapDegrees(degrees: number): number {
  return degrees >= -180 && degrees <= 180 ? degrees : degrees - 360 * Math.round(degrees / 360)
}

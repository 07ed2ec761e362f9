import type { Point } from './point.ts'

/** A turned and moved set of axes on the same plane. */
export interface PlanarFrame {
  readonly toFrame: (point: Point) => Point
  readonly fromFrame: (point: Point) => Point
}

/**
 * Axes with their origin at `origin` (metres) and y along `bearingRadians`, clockwise from the plane's own y;
 * x lies to the right of y, so lengths, areas and handedness are kept.
 */
export function planarFrame(origin: Point, bearingRadians: number): PlanarFrame {
  const sin = Math.sin(bearingRadians)
  const cos = Math.cos(bearingRadians)
  return {
    toFrame(point) {
      const dx = point[0] - origin[0]
      const dy = point[1] - origin[1]
      return [dx * cos - dy * sin, dx * sin + dy * cos]
    },
    fromFrame(point) {
      return [origin[0] + point[0] * cos + point[1] * sin, origin[1] - point[0] * sin + point[1] * cos]
    },
  }
}

import type { HeightSurface } from './height-surface.ts'
import type { Point, Polygon } from './point.ts'
import { polygonArea, signedRingArea } from './polygon.ts'

/**
 * Mean rise per metre of a surface over an area: by Gauss's theorem from the heights along its edges, which are sampled
 * at three places each (Gauss–Legendre), so exactly for planes. `[0, 0]` without area.
 */
export function meanGradient(surface: HeightSurface, polygon: Polygon): Point {
  const area = polygonArea(polygon)
  if (!(area > 0)) return [0, 0]
  let [sumX, sumY] = [0, 0]
  for (const [index, ring] of polygon.entries()) {
    const sign = signedRingArea(ring) >= 0 === (index === 0) ? 1 : -1
    const base = surface.heightAt(...(ring[0] ?? [0, 0]))
    for (const [k, from] of ring.entries()) {
      const to = ring[(k + 1) % ring.length] ?? from
      const [dx, dy] = [to[0] - from[0], to[1] - from[1]]
      let height = 0
      for (const [share, weight] of GAUSS_POINTS)
        height += weight * (surface.heightAt(from[0] + share * dx, from[1] + share * dy) - base)
      sumX += sign * height * dy
      sumY -= sign * height * dx
    }
  }
  return [sumX / area, sumY / area]
}

const GAUSS_POINTS: readonly (readonly [share: number, weight: number])[] = [
  [0.5 - Math.sqrt(0.15), 5 / 18],
  [0.5, 8 / 18],
  [0.5 + Math.sqrt(0.15), 5 / 18],
]

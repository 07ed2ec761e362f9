import type { HeightSurface } from './height-surface.ts'
import { nearestEdge } from './nearest-edge.ts'
import type { Ring } from './point.ts'
import { polygonContains } from './polygon.ts'

/**
 * A surface as it is inside a convex outline, fading to height 0 over `metres` outside it, without a jump in height or
 * rise.
 */
export function fadeOutside(surface: HeightSurface, outline: Ring, metres: number): HeightSurface {
  const polygon = [outline]
  const away = (x: number, y: number): { distance: number; x: number; y: number } => {
    if (polygonContains(polygon, [x, y])) return { distance: 0, x: 0, y: 0 }
    const { point, distance } = nearestEdge(polygon, [x, y])
    return distance === 0
      ? { distance, x: 0, y: 0 }
      : { distance, x: (x - point[0]) / distance, y: (y - point[1]) / distance }
  }
  return {
    heightAt(x, y) {
      const share = fadeShare(away(x, y).distance / metres)
      return share === 0 ? 0 : share * surface.heightAt(x, y)
    },
    gradientAt(x, y) {
      const from = away(x, y)
      if (from.distance === 0) return surface.gradientAt(x, y)
      const share = fadeShare(from.distance / metres)
      if (share === 0) return [0, 0]
      const at = from.distance / metres
      const change = (-6 * at * (1 - at) * surface.heightAt(x, y)) / metres
      const [riseX, riseY] = surface.gradientAt(x, y)
      return [share * riseX + change * from.x, share * riseY + change * from.y]
    },
  }
}

/** 1 at 0, 0 from 1 on, level at both (3t² − 2t³). */
export function fadeShare(at: number): number {
  if (at <= 0) return 1
  return at >= 1 ? 0 : 1 - at * at * (3 - 2 * at)
}

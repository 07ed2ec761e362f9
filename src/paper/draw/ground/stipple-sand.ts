import type { Point } from '#numbers/geometry/point.ts'
import type { Shape } from '../drawing.ts'
import { hashNoise } from '../hash-noise.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import type { GroundMap } from './ground-map.ts'

/** Sand as dots: dense along the lip, open in the middle, the same dots every time. */
export function stippleSand(map: GroundMap): Shape[] {
  const spacing = DRAW_SETTINGS.sandSpacing
  const points: Point[] = []
  for (let row = 0; row * spacing < map.bottom; row += 1)
    for (let column = 0; column * spacing < map.right; column += 1) {
      const x = (column + hashNoise(column, row, 1) * 0.9) * spacing
      const y = (row + hashNoise(column, row, 2) * 0.9) * spacing
      if (map.groundAt(x, y) !== 'bunker') continue
      const edge = map.edgeAt(x, y)
      if (edge < 0.8) continue
      const isLip = edge < 4
      if (!isLip && hashNoise(column, row, 3) > 0.55) continue
      points.push([x, y])
    }
  return points.length === 0
    ? []
    : [{ kind: 'dots', points, radius: DRAW_SETTINGS.sandDotRadius, fill: 'ink' }]
}

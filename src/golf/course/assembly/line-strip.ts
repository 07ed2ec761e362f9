import { distance, type Point, type Ring } from '#numbers/geometry/point.ts'

/**
 * The outline of a strip along an open line, so wide in all, square at its ends; metres. Corners are mitred, at most
 * to twice the half width. `null` when the line has no length.
 */
export function lineStrip(line: readonly Point[], widthMetres: number): Ring | null {
  const points = line.filter((point, index) => index === 0 || distance(point, line[index - 1] ?? point) > 0)
  if (points.length < 2) return null
  const half = widthMetres / 2
  const left: Point[] = []
  const right: Point[] = []
  for (const [index, point] of points.entries()) {
    const before = direction(points, index)
    const after = direction(points, index + 1)
    const sum: Point = [before[0] + after[0], before[1] + after[1]]
    const length = Math.hypot(sum[0], sum[1])
    // Of a line that turns straight back the mitre has no direction: keep the square end of the leg before.
    const along: Point = length < 1e-9 ? before : [sum[0] / length, sum[1] / length]
    const reach = half * Math.min(2, 1 / Math.max(0.5, along[0] * before[0] + along[1] * before[1]))
    right.push([point[0] + along[1] * reach, point[1] - along[0] * reach])
    left.push([point[0] - along[1] * reach, point[1] + along[0] * reach])
  }
  return [...right, ...left.reverse()]
}

// Direction of the leg that ends at `index`; before the first and after the last leg, that leg's own.
function direction(points: readonly Point[], index: number): Point {
  const leg = Math.min(points.length - 1, Math.max(1, index))
  const a = points[leg - 1] ?? [0, 0]
  const b = points[leg] ?? [0, 0]
  const length = distance(a, b)
  return [(b[0] - a[0]) / length, (b[1] - a[1]) / length]
}

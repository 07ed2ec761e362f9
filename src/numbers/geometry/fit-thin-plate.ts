import type { HeightSurface } from './height-surface.ts'
import { solveLinear } from './linear/solve-linear.ts'
import type { Point } from './point.ts'

/**
 * The thin plate through heights over places, metres: the surface of least bending whose squared misses, over
 * `smoothing` in square metres, are least together with it (Duchon 1977; in the form of Bookstein 1989, IEEE TPAMI 11,
 * with the smoothing of Wahba 1990). A plane is kept exactly; with smoothing over zero it exists for any places that are
 * not all on one line, even where two have different heights.
 * `null` for places on one line.
 */
export function fitThinPlate(
  places: readonly Point[],
  heights: readonly number[],
  smoothing: number,
): HeightSurface | null {
  const count = places.length
  const middle: Point = [mean(places.map(([x]) => x)), mean(places.map(([, y]) => y))]
  // In units of its own size the equations stay well scaled, whatever the size of the ground.
  const size = Math.sqrt(mean(places.map(([x, y]) => (x - middle[0]) ** 2 + (y - middle[1]) ** 2)))
  if (!(size > 0)) return null
  const u = places.map(([x]) => (x - middle[0]) / size)
  const v = places.map(([, y]) => (y - middle[1]) / size)
  const knots = Array.from({ length: count }, (_, k): Point => [u[k] ?? 0, v[k] ?? 0])
  const solution = solveLinear(equations(knots, smoothing / size ** 2), Float64Array.of(...heights, 0, 0, 0))
  if (!solution) return null
  const [a, b, c] = [0, 1, 2].map((k) => solution[count + k] as number) as [number, number, number]
  return {
    heightAt(x, y) {
      const [px, py] = [(x - middle[0]) / size, (y - middle[1]) / size]
      let height = a + b * px + c * py
      for (let k = 0; k < count; k++) {
        const squared = (px - (u[k] as number)) ** 2 + (py - (v[k] as number)) ** 2
        height += (solution[k] as number) * kernel(squared)
      }
      return height
    },
    gradientAt(x, y) {
      const [px, py] = [(x - middle[0]) / size, (y - middle[1]) / size]
      let [riseX, riseY] = [b, c]
      for (let k = 0; k < count; k++) {
        const [dx, dy] = [px - (u[k] as number), py - (v[k] as number)]
        const squared = dx * dx + dy * dy
        if (squared === 0) continue
        const share = (solution[k] as number) * (Math.log(squared) + 1)
        riseX += share * dx
        riseY += share * dy
      }
      return [riseX / size, riseY / size]
    },
  }
}

/** r² ln r of the squared distance. */
function kernel(squared: number): number {
  return squared === 0 ? 0 : 0.5 * squared * Math.log(squared)
}

function equations(knots: readonly Point[], smoothing: number): Float64Array {
  const count = knots.length
  const size = count + 3
  const matrix = new Float64Array(size * size)
  for (const [row, [x, y]] of knots.entries()) {
    for (const [column, [otherX, otherY]] of knots.entries())
      matrix[row * size + column] =
        kernel((x - otherX) ** 2 + (y - otherY) ** 2) + (row === column ? smoothing : 0)
    for (const [k, term] of [1, x, y].entries()) {
      matrix[row * size + count + k] = term
      matrix[(count + k) * size + row] = term
    }
  }
  return matrix
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length
}

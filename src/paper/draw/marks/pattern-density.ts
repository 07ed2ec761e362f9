import type { Field } from '../contour-lines.ts'
import type { Pattern } from '../pattern.ts'
import { DRAW_SETTINGS } from '../settings.ts'

/**
 * The pattern's density over the ground: a Gaussian kernel on each finish, its width by the usual rule of
 * thumb from the smaller of spread and quartile range (Silverman 1986, eq. 3.31) for each axis, widened so that
 * isolines do not follow single finishes.
 */
export function patternDensity(pattern: Pattern): Field {
  const [bandX, bandY] = [bandwidth(pattern.x, pattern.weight), bandwidth(pattern.y, pattern.weight)]
  const [minX, maxX] = [Math.min(...pattern.x) - 3 * bandX, Math.max(...pattern.x) + 3 * bandX]
  const [minY, maxY] = [Math.min(...pattern.y) - 3 * bandY, Math.max(...pattern.y) + 3 * bandY]
  const resolution = Math.max(maxX - minX, maxY - minY) / DRAW_SETTINGS.densityCells
  const columns = Math.ceil((maxX - minX) / resolution) + 1
  const rows = Math.ceil((maxY - minY) / resolution) + 1
  const values = new Float64Array(columns * rows)
  const acrossX = new Float64Array(columns)
  for (let finish = 0; finish < pattern.x.length; finish += 1) {
    const [x, y, weight] = [pattern.x[finish] ?? 0, pattern.y[finish] ?? 0, pattern.weight[finish] ?? 0]
    const reachColumns = Math.ceil((3.2 * bandX) / resolution)
    const reachRows = Math.ceil((3.2 * bandY) / resolution)
    const [middleColumn, middleRow] = [
      Math.round((x - minX) / resolution),
      Math.round((y - minY) / resolution),
    ]
    const firstColumn = Math.max(0, middleColumn - reachColumns)
    const lastColumn = Math.min(columns - 1, middleColumn + reachColumns)
    for (let column = firstColumn; column <= lastColumn; column += 1)
      acrossX[column] = Math.exp(-0.5 * ((minX + column * resolution - x) / bandX) ** 2)
    for (
      let row = Math.max(0, middleRow - reachRows);
      row <= Math.min(rows - 1, middleRow + reachRows);
      row += 1
    ) {
      const acrossY = Math.exp(-0.5 * ((minY + row * resolution - y) / bandY) ** 2) * weight
      for (let column = firstColumn; column <= lastColumn; column += 1) {
        const index = row * columns + column
        values[index] = (values[index] ?? 0) + (acrossX[column] ?? 0) * acrossY
      }
    }
  }
  return { originX: minX, originY: minY, resolution, columns, rows, values }
}

/** The density level above which the given share of all finishes lies. */
export function levelOfShare(density: Field, share: number): number {
  // Only where there is any, sorted without a function of ours: a drag draws this anew with every step.
  const sorted = density.values
    .filter((value) => value > 0)
    .sort()
    .reverse()
  const total = sorted.reduce((sum, value) => sum + value, 0)
  let sum = 0
  for (const value of sorted) {
    sum += value
    if (sum >= share * total) return value
  }
  return 0
}

function bandwidth(values: Float64Array, weights: Float64Array): number {
  const order = Array.from(values.keys()).sort((a, b) => (values[a] ?? 0) - (values[b] ?? 0))
  const total = weights.reduce((sum, weight) => sum + weight, 0)
  let [mean, square, squareWeight] = [0, 0, 0]
  for (let index = 0; index < values.length; index += 1) {
    const [value, weight] = [values[index] ?? 0, (weights[index] ?? 0) / total]
    mean += weight * value
    square += weight * value * value
    squareWeight += weight * weight
  }
  const quantile = (share: number): number => {
    let sum = 0
    for (const index of order) {
      sum += (weights[index] ?? 0) / total
      if (sum >= share) return values[index] ?? 0
    }
    return values[order.at(-1) ?? 0] ?? 0
  }
  const spread = Math.sqrt(Math.max(0, square - mean * mean))
  const quartiles = (quantile(0.75) - quantile(0.25)) / 1.34
  const width = Math.min(spread, quartiles > 0 ? quartiles : spread)
  return Math.max(0.5, DRAW_SETTINGS.densitySmoothing * width * squareWeight ** 0.2)
}

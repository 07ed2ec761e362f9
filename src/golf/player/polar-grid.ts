/** Nodes in rings about a hole, the first angle along the y axis, clockwise; ring 0 is the hole itself and has one value for all angles. */
export interface PolarGrid {
  readonly hole: readonly [x: number, y: number]
  /** Radii, metres, rising from 0. */
  readonly rings: Float64Array
  readonly angles: number
}

/** Four nodes about a place and their weights, which add up to 1. */
export interface PolarPlace {
  readonly nodes: Int32Array
  readonly weights: Float64Array
}

/** Number of values that a field over the grid has: node = ring · angles + angle. */
export function nodeCount(grid: PolarGrid): number {
  return grid.rings.length * grid.angles
}

/** Place of a node, metres. */
export function nodePlace(grid: PolarGrid, node: number): [x: number, y: number] {
  const ring = Math.floor(node / grid.angles)
  const angle = ((node - ring * grid.angles) * 2 * Math.PI) / grid.angles
  const radius = grid.rings[ring] ?? 0
  return [grid.hole[0] + radius * Math.sin(angle), grid.hole[1] + radius * Math.cos(angle)]
}

/** Writes the four nodes about a place and their weights at `offset`: straight between rings and between angles, and as on the last ring beyond it. */
export function placeInto(place: PolarPlace, offset: number, grid: PolarGrid, x: number, y: number): void {
  const { rings, angles } = grid
  const right = x - grid.hole[0]
  const ahead = y - grid.hole[1]
  const radius = Math.sqrt(right * right + ahead * ahead)
  const last = rings.length - 1
  let ring = 0
  while (ring < last - 1 && radius > (rings[ring + 1] ?? 0)) ring += 1
  const [low = 0, high = 1] = [rings[ring], rings[ring + 1]]
  const outward = Math.min(1, (radius - low) / (high - low))
  const turn = Math.atan2(right, ahead) / (2 * Math.PI)
  const at = (turn < 0 ? turn + 1 : turn) * angles
  const before = Math.floor(at) % angles
  const after = (before + 1) % angles
  const round = at - Math.floor(at)
  place.nodes[offset] = ring * angles + before
  place.nodes[offset + 1] = ring * angles + after
  place.nodes[offset + 2] = (ring + 1) * angles + before
  place.nodes[offset + 3] = (ring + 1) * angles + after
  place.weights[offset] = (1 - outward) * (1 - round)
  place.weights[offset + 1] = (1 - outward) * round
  place.weights[offset + 2] = outward * (1 - round)
  place.weights[offset + 3] = outward * round
}

/** Value of a field at the place written at `offset`. */
export function valueAtPlace(place: PolarPlace, offset: number, field: Float64Array): number {
  let sum = 0
  for (let corner = offset; corner < offset + 4; corner += 1)
    sum += (place.weights[corner] ?? 0) * (field[place.nodes[corner] ?? 0] ?? 0)
  return sum
}

import type { Point } from '#numbers/geometry/point.ts'
import type { GroundMap } from '../ground/ground-map.ts'

/** A rectangle on the sheet. */
export interface Block {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/**
 * The place along the sides of the frame where a block covers least of what matters: plain rough and out of bounds
 * count little, sand, water and fairway much, greens, tees, the hole line, figures to `avoid` and blocks already
 * placed most. `null` when every place costs more than the limit: it would hide what the drawing is for.
 */
export function emptiestPlace(
  map: GroundMap,
  size: { readonly width: number; readonly height: number },
  line: readonly Point[],
  avoid: readonly Point[],
  taken: readonly Block[],
  limit: number,
): Block | null {
  const inset = 8
  const [lowest, highest] = [map.top + inset, map.bottom - inset - size.height]
  const columns = [map.left + inset, map.right - inset - size.width]
  let best: Block = { x: columns[0] ?? 0, y: lowest, ...size }
  let least = Number.POSITIVE_INFINITY
  for (let piece = 0; piece <= 8; piece += 1)
    for (const [side, x] of columns.entries()) {
      const block = { x, y: lowest + ((highest - lowest) * piece) / 8, ...size }
      // Corners before sides, the upper left first.
      const cost =
        coverCost(map, block, line, avoid, taken) + (piece % 8 === 0 ? 0 : 6) + piece * 0.2 + side * 0.1
      if (cost < least) {
        least = cost
        best = block
      }
    }
  return least < limit ? best : null
}

function coverCost(
  map: GroundMap,
  block: Block,
  line: readonly Point[],
  avoid: readonly Point[],
  taken: readonly Block[],
): number {
  let cost = 0
  for (let x = block.x; x <= block.x + block.width; x += 6)
    for (let y = block.y; y <= block.y + block.height; y += 6) {
      const ground = map.groundAt(x, y)
      if (ground === 'rough' || ground === null) continue
      if (ground === 'green' || ground === 'tee') cost += 60
      else
        cost += ground === 'out' || ground === 'trees' || ground === 'scrub' || ground === 'heavy' ? 0.15 : 2
    }
  const isOver = (x: number, y: number, room: number): boolean =>
    x > block.x - room &&
    x < block.x + block.width + room &&
    y > block.y - room &&
    y < block.y + block.height + room
  for (let index = 1; index < line.length; index += 1) {
    const [from, to] = [line[index - 1], line[index]]
    if (from === undefined || to === undefined) continue
    for (let piece = 0; piece <= 40; piece += 1) {
      const [x, y] = [from[0] + ((to[0] - from[0]) * piece) / 40, from[1] + ((to[1] - from[1]) * piece) / 40]
      // The player's marks will stand along the line.
      if (isOver(x, y, 24)) cost += 40
      else if (isOver(x, y, 70)) cost += 2
    }
  }
  for (const [x, y] of avoid) if (isOver(x, y, 22)) cost += 60
  for (const other of taken)
    if (
      block.x < other.x + other.width + 6 &&
      other.x < block.x + block.width + 6 &&
      block.y < other.y + other.height + 6 &&
      other.y < block.y + block.height + 6
    )
      cost += 1e5
  return cost
}

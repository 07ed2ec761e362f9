import { GROUND_CLASSES, type Ground, groundCode } from '../../src/golf/course/ground.ts'
import type { Hole } from '../../src/golf/course/hole.ts'
import { polygonContains } from '../../src/numbers/geometry/polygon.ts'

/** The ground of a hole as the simulator sees it: read from the outlines every half metre, not from the planner's places. */
export type GroundUnder = (x: number, y: number) => Ground

const STEP_METRES = 0.5
const ASIDE_METRES = 130
const BEHIND_METRES = 60
const BEYOND_METRES = 110

/** Reads the outlines of a hole into a grid; beyond it lies rough. */
export function groundGrid(hole: Hole): GroundUnder {
  const columns = Math.ceil((2 * ASIDE_METRES) / STEP_METRES)
  const rows = Math.ceil((hole.lengthMetres + BEHIND_METRES + BEYOND_METRES) / STEP_METRES)
  const codes = new Uint8Array(columns * rows).fill(groundCode('rough'))
  const covered = new Uint8Array(columns * rows)
  for (const { ground, polygon } of hole.areas) {
    const code = groundCode(ground)
    const [xs, ys] = [0, 1].map((axis) => polygon.flat().map((point) => point[axis] as number)) as [
      number[],
      number[],
    ]
    const from = Math.max(0, Math.floor((Math.min(...xs) + ASIDE_METRES) / STEP_METRES))
    const to = Math.min(columns - 1, Math.ceil((Math.max(...xs) + ASIDE_METRES) / STEP_METRES))
    const near = Math.max(0, Math.floor((Math.min(...ys) + BEHIND_METRES) / STEP_METRES))
    const far = Math.min(rows - 1, Math.ceil((Math.max(...ys) + BEHIND_METRES) / STEP_METRES))
    for (let row = near; row <= far; row++)
      for (let column = from; column <= to; column++) {
        const at = row * columns + column
        // Of the areas over a point the one that is painted last counts.
        if (covered[at] === 1 && code < (codes[at] as number)) continue
        const point = [
          (column + 0.5) * STEP_METRES - ASIDE_METRES,
          (row + 0.5) * STEP_METRES - BEHIND_METRES,
        ] as const
        if (!polygonContains(polygon, point)) continue
        codes[at] = code
        covered[at] = 1
      }
  }
  return (x, y) => {
    const column = Math.floor((x + ASIDE_METRES) / STEP_METRES)
    const row = Math.floor((y + BEHIND_METRES) / STEP_METRES)
    if (column < 0 || column >= columns || row < 0 || row >= rows) return 'rough'
    return GROUND_CLASSES[codes[row * columns + column] as number] as Ground
  }
}

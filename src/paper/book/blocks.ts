import type { Shape } from '../draw/drawing.ts'

/** Something of a column that is not cut: its height, and its shapes once it has a place. */
export interface Block {
  readonly height: number
  readonly draw: (left: number, top: number) => Shape[]
}

/** Blocks one below the other, at most so many, in as many columns of this height as they need; one that is higher stands alone. */
export function flowBlocks<One extends Block>(
  blocks: readonly One[],
  room: number,
  most: number = Number.POSITIVE_INFINITY,
): One[][] {
  const columns: One[][] = []
  let left = 0
  for (const block of blocks) {
    const column = columns.at(-1)
    if (column === undefined || column.length === most || block.height > left) {
      columns.push([block])
      left = room - block.height
    } else {
      column.push(block)
      left -= block.height
    }
  }
  return columns
}

/** One column drawn. */
export function drawBlocks(blocks: readonly Block[], left: number, from: number): Shape[] {
  let top = from
  return blocks.flatMap((block) => {
    const shapes = block.draw(left, top)
    top += block.height
    return shapes
  })
}

/** Blocks that stay together. */
export function joinBlocks(blocks: readonly Block[]): Block {
  return {
    height: blocks.reduce((sum, { height }) => sum + height, 0),
    draw: (left, top) => drawBlocks(blocks, left, top),
  }
}

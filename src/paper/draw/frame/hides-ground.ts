import type { Area } from '#golf/course/course.ts'
import type { TextShape } from '../drawing.ts'
import type { Sheet } from '../sheet.ts'

/** A figure on the chart, as far as what it hides goes. */
export type Figure = Pick<TextShape, 'text' | 'at' | 'size' | 'anchor'>

/** Whether a figure would leave the frame to a side, or stand on ground that is too small to be written over. */
export function hidesGround(figure: Figure, areas: readonly Area[], sheet: Sheet): boolean {
  const box = boxOf(figure)
  if (box.left < sheet.frame.left + 2 || box.right > sheet.frame.right - 2) return true
  return areas.some(({ ground, polygon }) => {
    if (!COVERED.includes(ground)) return false
    const ring = (polygon[0] ?? []).map(sheet.toSheet)
    const [xs, ys] = [ring.map(([x]) => x), ring.map(([, y]) => y)]
    return meets(box, {
      left: Math.min(...xs),
      right: Math.max(...xs),
      top: Math.min(...ys),
      bottom: Math.max(...ys),
    })
  })
}

/** Whether two figures stand on each other. */
export function meetFigures(one: Figure, other: Figure): boolean {
  return meets(boxOf(one), boxOf(other))
}

const COVERED: readonly string[] = ['green', 'bunker', 'tee']

interface Box {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

function meets(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom
}

/** Near enough: figures of the charts’ type are about 0.56 of its size wide, and the paper about them is cleared a little below. */
function boxOf({ text, at: [x, y], size, anchor }: Figure): Box {
  const width = size * 0.56 * text.length
  const left = anchor === 'end' ? x - width : anchor === 'middle' ? x - width / 2 : x
  return { left, right: left + width, top: y - size, bottom: y + size / 5 }
}

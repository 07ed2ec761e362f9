import type { Drawing, Shape, TextShape } from '../draw/drawing.ts'
import type { Letters } from '../draw/letters.ts'

/** The box of one line of text, points. */
export interface TextBox {
  readonly text: string
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** Where each upright line of text of a page stands: small letters and their tails, as the eye sees a line. */
export function textBoxes(drawing: Drawing, letters: Letters): TextBox[] {
  return drawing.shapes.flatMap((shape) => boxesOf(shape, letters))
}

function boxesOf(shape: Shape, letters: Letters): TextBox[] {
  if (shape.kind === 'group') return shape.shapes.flatMap((inner) => boxesOf(inner, letters))
  return shape.kind === 'text' && shape.turn === undefined ? [boxOf(shape, letters)] : []
}

function boxOf({ text, at, size, face, anchor }: TextShape, letters: Letters): TextBox {
  const width = letters(text, face, size)
  const left = at[0] - (anchor === 'end' ? width : anchor === 'middle' ? width / 2 : 0)
  return { text, left, right: left + width, top: at[1] - size * 0.68, bottom: at[1] + size * 0.2 }
}

/** Pairs of lines that stand on each other. */
export function overlaps(boxes: readonly TextBox[]): (readonly [string, string])[] {
  return boxes.flatMap((a, index) =>
    boxes
      .slice(index + 1)
      .filter(
        (b) =>
          a.left < b.right - SLACK &&
          b.left < a.right - SLACK &&
          a.top < b.bottom - SLACK &&
          b.top < a.bottom - SLACK,
      )
      .map((b) => [a.text, b.text] as const),
  )
}

/** Lines that stand outside their page. */
export function outside({ width, height }: Drawing, boxes: readonly TextBox[]): string[] {
  return boxes
    .filter(({ left, right, top, bottom }) => left < 0 || top < 0 || right > width || bottom > height)
    .map(({ text }) => text)
}

/** Touching is not overlapping, points. */
const SLACK = 0.2

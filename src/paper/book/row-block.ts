import type { Block } from './blocks.ts'
import type { CardSetting } from './settings.ts'
import { text } from './text.ts'

/** A line of a table of clubs: the club, its figures and a word after them. A line without a club is their heading. */
export function rowBlock(
  club: string,
  figures: readonly string[],
  after: string,
  type: CardSetting['type'],
): Block {
  const size = type.small + 1
  // Where columns end, for type of 10 points.
  const ends = [130, 190, 290].map((end) => (end * type.small) / 10)
  const [face, figureSize] = club === '' ? (['serif-italic', type.small] as const) : (['sans', size] as const)
  return {
    height: type.line + 3.4,
    draw(left, top) {
      const y = top + size
      return [
        ...(club === '' ? [] : [text(club, [left, y], size, 'sans-bold')]),
        ...figures.map((figure, column) =>
          text(figure, [left + (ends[column] ?? 0), y], figureSize, face, 'end'),
        ),
        ...(after === ''
          ? []
          : [text(after, [left + (ends.at(-1) ?? 0) + 8, y], type.small, 'serif-italic')]),
      ]
    },
  }
}

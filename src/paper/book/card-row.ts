import type { Shape } from '../draw/drawing.ts'
import type { Letters } from '../draw/letters.ts'
import { rectangleSteps } from '../draw/steps.ts'
import type { Block } from './blocks.ts'
import type { RowWords } from './row-words.ts'
import { type CardSetting, RULE } from './settings.ts'
import { text } from './text.ts'
import { wrapText } from './wrap-text.ts'

/** The row of a hole. */
export interface CardRow extends Block {
  readonly ref: string
}

/** One hole on the card: its number and facts, the club and what belongs to it in words, and boxes for the log. */
export function cardRow(
  ref: string,
  row: RowWords,
  width: number,
  setting: CardSetting,
  letters: Letters,
): CardRow {
  const { type, rowPadding, numberWidth, boxWidth } = setting
  const facts = row.facts.filter((words) => words !== '')
  // What stands under the number may reach under the facts, where there are none.
  const factsWidth = facts.length === 0 ? underWidth() - numberWidth : setting.factsWidth
  const wordsWidth = width - numberWidth - factsWidth - 2 * boxWidth - 10
  const clubs = wrapText(row.club, wordsWidth, { face: 'sans-bold', size: type.club, letters })
  const lastClub = clubs.at(-1)
  const clubWidth = lastClub === undefined ? 0 : letters(`${lastClub}  `, 'sans-bold', type.club)
  const words = { face: 'sans', size: type.small, letters } as const
  const lines = wrapText(row.words, wordsWidth, words, Math.max(0, wordsWidth - clubWidth))
  // A number that is a long name stands over its row; a long club takes lines of its own.
  const drop = letters(`${ref} `, 'sans-bold', type.number) > numberWidth ? type.number + 2 : 0
  const clubDrop = Math.max(0, clubs.length - 1) * (type.club + 2)
  const height = Math.max(
    setting.leastRow + drop,
    2 * rowPadding +
      drop +
      type.club +
      Math.max(
        clubDrop + Math.max(0, lines.length - 1) * type.line,
        Math.max(0, facts.length - 1) * type.line,
      ) +
      3,
  )
  return { ref, height, draw }

  function underWidth(): number {
    return Math.max(numberWidth, letters(`${row.underNumber}  `, 'sans', type.small))
  }

  function draw(left: number, top: number): Shape[] {
    const refBase = top + rowPadding + type.club - 1.5
    const base = refBase + drop
    const wordsLeft = left + numberWidth + factsWidth
    return [
      text(ref, [left, refBase + 1], type.number, 'sans-bold'),
      text(row.underNumber, [left, base + (drop === 0 ? type.line + 4 : 0)], type.small, 'sans'),
      ...facts.map((fact, line) =>
        text(fact, [left + numberWidth, base + line * type.line], type.small, 'sans'),
      ),
      ...clubs.map((club, index) =>
        text(club, [wordsLeft, base + index * (type.club + 2)], type.club, 'sans-bold'),
      ),
      ...lines.map((line, index) =>
        text(
          line,
          [wordsLeft + (index === 0 ? clubWidth : 0), base + clubDrop + index * type.line],
          type.small,
          'sans',
        ),
      ),
      boxes(left + width, top, setting),
    ].filter((shape) => shape.kind !== 'text' || shape.text !== '')
  }
}

/** Two by two: what the ball lay in and how far was left; putts and score. */
function boxes(right: number, top: number, { leastRow, rowPadding, boxWidth }: CardSetting): Shape {
  const side = (leastRow - 2 * rowPadding) / 2
  const [x, y] = [right - 2 * boxWidth, top + rowPadding]
  return {
    kind: 'path',
    steps: [0, 1].flatMap((column) =>
      [0, 1].flatMap((row) => rectangleSteps(x + column * boxWidth, y + row * side, boxWidth, side)),
    ),
    stroke: { paint: 'ink', width: RULE.fine },
  }
}

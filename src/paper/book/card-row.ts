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
  const clubWidth = row.club === '' ? 0 : letters(`${row.club}  `, 'sans-bold', type.club)
  const words = { face: 'sans', size: type.small, letters } as const
  const lines = wrapText(row.words, wordsWidth, words, wordsWidth - clubWidth)
  const height = Math.max(
    setting.leastRow,
    2 * rowPadding + type.club + Math.max(0, Math.max(lines.length, facts.length) - 1) * type.line + 3,
  )
  return { ref, height, draw }

  function underWidth(): number {
    return Math.max(numberWidth, letters(`${row.underNumber}  `, 'sans', type.small))
  }

  function draw(left: number, top: number): Shape[] {
    const base = top + rowPadding + type.club - 1.5
    const wordsLeft = left + numberWidth + factsWidth
    return [
      text(ref, [left, base + 1], type.number, 'sans-bold'),
      text(row.underNumber, [left, base + type.line + 4], type.small, 'sans'),
      ...facts.map((fact, line) =>
        text(fact, [left + numberWidth, base + line * type.line], type.small, 'sans'),
      ),
      text(row.club, [wordsLeft, base], type.club, 'sans-bold'),
      ...lines.map((line, index) =>
        text(line, [wordsLeft + (index === 0 ? clubWidth : 0), base + index * type.line], type.small, 'sans'),
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

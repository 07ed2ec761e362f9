import type { Shape } from '../draw/drawing.ts'
import { rectangleSteps } from '../draw/steps.ts'
import type { BookFacts } from './book-facts.ts'
import type { BookHole } from './planned-hole.ts'
import { CARD, RULE, TYPE } from './settings.ts'
import { adviceOf } from './stroke-advice.ts'
import { text } from './text.ts'
import { wrapText } from './wrap-text.ts'

/** A hole's row of the card before it has a place: its height, and its shapes once it has one. */
export interface CardRow {
  readonly height: number
  readonly draw: (left: number, top: number) => Shape[]
}

/** One hole on the card: its facts, the stroke from the tee, what comes next, what never to do, and boxes for the log. */
export function cardRow(one: BookHole, width: number, facts: BookFacts): CardRow {
  const { letters, ruler } = facts
  const { hole, received } = one
  const advice = adviceOf(one, facts)
  const wordsWidth = width - CARD.numberWidth - CARD.factsWidth - 2 * CARD.boxWidth - 10
  const clubWidth = advice.club === '' ? 0 : letters(`${advice.club}  `, 'sans-bold', TYPE.club)
  const setting = { face: 'sans', size: TYPE.small, letters } as const
  const lines = wrapText(advice.words, wordsWidth, setting, wordsWidth - clubWidth)
  const height = Math.max(
    CARD.leastRow,
    2 * CARD.rowPadding + TYPE.club + Math.max(0, lines.length - 1) * TYPE.line + 3,
  )
  return { height, draw }

  function draw(left: number, top: number): Shape[] {
    const base = top + CARD.rowPadding + TYPE.club - 1.5
    const wordsLeft = left + CARD.numberWidth + CARD.factsWidth
    const second = base + TYPE.line + 2
    return [
      text(hole.ref, [left, base + 1], TYPE.number, 'sans-bold'),
      text(`par ${hole.par}`, [left, second + 2], TYPE.small, 'sans'),
      ...[
        `${ruler.figure(hole.lengthMetres)} ${ruler.sign}`,
        hole.strokeIndex === null ? '' : `index ${hole.strokeIndex}`,
        received === null ? '' : receivedWords(received),
      ].map((words, line) =>
        text(words, [left + CARD.numberWidth, base + line * TYPE.line], TYPE.small, 'sans'),
      ),
      text(advice.club, [wordsLeft, base], TYPE.club, 'sans-bold'),
      ...lines.map((line, index) =>
        text(line, [wordsLeft + (index === 0 ? clubWidth : 0), base + index * TYPE.line], TYPE.small, 'sans'),
      ),
      ...boxes(left + width, top),
    ].filter((shape) => shape.kind !== 'text' || shape.text !== '')
  }
}

function receivedWords(strokes: number): string {
  if (strokes === 0) return ''
  return strokes > 0 ? `gets ${strokes}` : `gives ${-strokes}`
}

/** Two by two: what the ball lay in and how far was left; putts and score. */
function boxes(right: number, top: number): Shape[] {
  const side = (CARD.leastRow - 2 * CARD.rowPadding) / 2
  const [x, y] = [right - 2 * CARD.boxWidth, top + CARD.rowPadding]
  return [
    {
      kind: 'path',
      steps: [0, 1].flatMap((column) =>
        [0, 1].flatMap((row) =>
          rectangleSteps(x + column * CARD.boxWidth, y + row * side, CARD.boxWidth, side),
        ),
      ),
      stroke: { paint: 'ink', width: RULE.fine },
    },
  ]
}

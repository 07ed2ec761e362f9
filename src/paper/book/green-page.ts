import { approachHole } from '#golf/course/approach-hole.ts'
import { measureHole } from '#golf/course/measure-hole.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { polygonBounds } from '#numbers/geometry/polygon.ts'
import { drawSurvey } from '../draw/draw-hole.ts'
import type { Shape } from '../draw/drawing.ts'
import { polygonOnSheet, sheetInFrame } from '../draw/sheet.ts'
import { polygonSteps, rectangleSteps } from '../draw/steps.ts'
import { adviceWords } from './advice.ts'
import type { BookFacts } from './book-facts.ts'
import { greenNumbers, reachAndCarry } from './hole-numbers.ts'
import { carriedHole, pointsPerMetre } from './hole-page.ts'
import { adviceOf, ownSentences } from './own-words.ts'
import { greenName, type Page } from './page.ts'
import type { BookHole } from './planned-hole.ts'
import { POCKET, RULE, TYPE } from './settings.ts'
import { text } from './text.ts'
import { wrapText } from './wrap-text.ts'

/** The right page of a hole: the plan, what to reach and to carry, and the green to its scale. */
export function greenPage(
  one: BookHole,
  facts: BookFacts,
  size: { readonly width: number; readonly height: number },
  greenScale: number,
): Page {
  const { letters, ruler, purpose } = facts
  const surveyed = carriedHole(one.hole, purpose)
  // The green stands as the player comes to it; lengths are measured on the hole as it lies.
  const hole = approachHole(surveyed)
  const left = POCKET.margin
  const right = size.width - POCKET.margin
  const advice = adviceOf('player', one, facts)
  const measures = measureHole(surveyed)
  const shapes: Shape[] = []
  let y = POCKET.margin + TYPE.club
  const linesOf = (words: string): string[] =>
    wrapText(words, right - left, { face: 'sans', size: TYPE.small, letters })
  const say = (words: string): void => {
    for (const line of linesOf(words)) {
      shapes.push(text(line, [left, y], TYPE.small, 'sans'))
      y += TYPE.line
    }
  }
  shapes.push(text(`${hole.ref}  ${advice.club}`, [left, y], TYPE.club, 'sans-bold'))
  y += TYPE.club
  say(adviceWords(advice))
  const top = POCKET.margin
  const rows = [{ ref: hole.ref, left, top, width: right - left, height: y - TYPE.line + 3 - top }]
  y += 3
  const numbers = reachAndCarry(measures, ruler)
  let count = numbers.length
  while (count > 0 && linesOf(numbersWords(numbers, count)).length > MOST_LINES) count -= 1
  if (count > 0) say(numbersWords(numbers, count))
  say(greenNumbers(measures, ruler))
  const outline = hole.green
  if (outline !== null) {
    const bounds = polygonBounds(outline)
    const frame = { left, top: y, right, bottom: size.height - POCKET.margin - 12 }
    const [across, along] = [bounds.maxX - bounds.minX, bounds.maxY - bounds.minY]
    const room = Math.min((frame.right - frame.left) / across, (frame.bottom - frame.top) / along)
    const fitting = pointsPerMetre(1) / room
    const drawn = greenScale >= fitting ? greenScale : SCALE_STEP * Math.ceil(fitting / SCALE_STEP)
    const middle: Point = [(bounds.minX + bounds.maxX) / 2, (bounds.minY + bounds.maxY) / 2]
    const sheet = sheetInFrame(frame, middle, pointsPerMetre(drawn))
    const [ground] = drawSurvey(hole, sheet, { units: ruler.word }).ground
    shapes.push(
      ...(ground === undefined ? [] : [ground]),
      {
        kind: 'group',
        name: 'green',
        shapes: [
          {
            kind: 'group',
            name: greenName(hole.ref),
            shapes: [
              {
                kind: 'path',
                steps: polygonSteps(polygonOnSheet(sheet, outline)),
                stroke: { paint: 'ink', width: RULE.line },
              },
            ],
          },
        ],
      },
      {
        kind: 'path',
        steps: rectangleSteps(left, frame.top, right - left, frame.bottom - frame.top),
        stroke: { paint: 'ink', width: RULE.fine },
      },
      text(
        `Green 1:${drawn}${purpose === 'practice' ? ', practice only' : ''}`,
        [left, frame.bottom + 12],
        TYPE.small,
        'sans',
      ),
    )
  }
  const plansFrom = one.plan === null ? [] : [{ ref: hole.ref, lie: one.plan.situation.lie }]
  return {
    name: `green ${hole.ref}`,
    greens: outline === null ? [] : [{ ref: hole.ref, outline }],
    plansFrom,
    rows,
    written: ownSentences(facts, 'player').filter((sentence) => sentence.hole === hole.ref),
    drawing: {
      ...size,
      title: `Green ${hole.ref}`,
      description: `${advice.club}: ${adviceWords(advice)}`,
      shapes,
    },
  }
}

/** A green that does not fit stands at the next multiple of this. */
const SCALE_STEP = 60

/** The green needs its room: hazards further on than these lines hold are counted, and stand on the picture. Our assumption. */
const MOST_LINES = 9

function numbersWords(numbers: readonly string[], count: number): string {
  const left = numbers.length - count
  const more = left === 0 ? '' : `; ${left} more on the picture`
  return `To reach–carry: ${numbers.slice(0, count).join('; ')}${more}.`
}

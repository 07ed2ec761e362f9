import { approachHole } from '#golf/course/approach-hole.ts'
import { dayPinWords } from '#golf/course/day-pin-words.ts'
import type { Hole } from '#golf/course/hole.ts'
import { type PinInPaces, pinInPaces } from '#golf/course/pin-in-paces.ts'
import { RULES_2023 } from '#golf/rules/rules-2023.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { polygonBounds } from '#numbers/geometry/polygon.ts'
import { drawSurvey } from '../draw/draw-hole.ts'
import type { Drawing, Shape } from '../draw/drawing.ts'
import type { Letters } from '../draw/letters.ts'
import { type Frame, polygonOnSheet, sheetInFrame } from '../draw/sheet.ts'
import { circleSteps, lineSteps, polygonSteps, rectangleSteps } from '../draw/steps.ts'
import type { RoundFacts } from './book-facts.ts'
import { carriedHole, pointsPerMetre } from './hole-page.ts'
import { greenName, type Page } from './page.ts'
import { purposeWords } from './purpose-words.ts'
import { RULERS, rulers } from './rulers.ts'
import { CARD, PAPERS, POINTS_PER_MILLIMETRE, RULE, TYPE } from './settings.ts'
import { text } from './text.ts'
import { wrapText } from './wrap-text.ts'

/** Cells of the sheet side by side and below each other, and what stands over the green in each, points. */
const ACROSS = 6
const DOWN = 3
const CELL_HEAD = 31
const CELL_GAP = 8

/**
 * Where the holes are cut on one day: a sheet of eighteen greens, each as the player comes to it, all to one scale of 1 to
 * `greenScale` or smaller, with the paces on from the front and in from the nearer side. More holes take another sheet.
 */
export function pinSheets(facts: RoundFacts, greenScale: number): Page[] {
  const { width: height, height: width } = PAPERS[facts.paper]
  const most = ACROSS * DOWN
  const sheets = Math.max(1, Math.ceil(facts.holes.length / most))
  const last = facts.holes.length - (sheets - 1) * most
  // Fewer greens than so many to a sheet may not be carried in a counting round: then all sheets share them evenly.
  const perSheet =
    last < RULES_2023.greenBook.largerSheetHoles ? Math.ceil(facts.holes.length / sheets) : most
  return Array.from({ length: sheets }, (_, sheet) => {
    const holes = facts.holes
      .slice(sheet * perSheet, (sheet + 1) * perSheet)
      .map(({ hole }) => approachHole(carriedHole(hole, facts.purpose)))
    return pinSheet(facts, holes, { width, height }, greenScale, sheets === 1 ? '' : `, sheet ${sheet + 1}`)
  })
}

function pinSheet(
  { course, day, purpose, letters }: RoundFacts,
  holes: readonly Hole[],
  size: { readonly width: number; readonly height: number },
  greenScale: number,
  which: string,
): Page {
  const { margin } = CARD
  const title = wrapText(
    `${course}: hole locations${day.date === null ? '' : `, ${day.date}`}`,
    size.width - 2 * margin,
    {
      face: 'serif-bold',
      size: TYPE.title,
      letters,
    },
  )
  const top = margin + title.length * TYPE.title + TYPE.line + 8
  const bottom = size.height - margin - RULERS.height
  const cellWidth = (size.width - 2 * margin - (ACROSS - 1) * CELL_GAP) / ACROSS
  const cellHeight = (bottom - top - (DOWN - 1) * CELL_GAP) / DOWN
  const scale = Math.max(greenScale, ...holes.map((hole) => leastScale(hole, cellWidth, cellHeight)))
  const hasPins = Object.keys(day.pins).length > 0
  const cells = holes.flatMap((hole, index) => {
    const left = margin + (index % ACROSS) * (cellWidth + CELL_GAP)
    const from = top + Math.floor(index / ACROSS) * (cellHeight + CELL_GAP)
    const frame = { left, top: from + CELL_HEAD, right: left + cellWidth, bottom: from + cellHeight }
    return cell(hole, frame, scale, { letters, isGiven: !hasPins || day.pins[hole.ref] !== undefined })
  })
  return {
    name: `hole locations${which}`,
    greens: holes.flatMap(({ ref, green }) => (green === null ? [] : [{ ref, outline: green }])),
    plansFrom: [],
    drawing: {
      ...size,
      title: `${course}, hole locations`,
      description: holes
        .map(
          (hole) =>
            `${hole.ref}: ${hasPins && day.pins[hole.ref] === undefined ? NOT_GIVEN : pinWords(pinInPaces(hole))}`,
        )
        .join('; '),
      shapes: [
        ...title.map((line, index) =>
          text(line, [margin, margin + TYPE.title - 4 + index * TYPE.title], TYPE.title, 'serif-bold'),
        ),
        text(
          hasPins
            ? 'Paces on from the front edge, and in from the nearer side. Each green is played up the page.'
            : 'No hole locations were given: these are the survey’s. Paces on from the front edge, and in from the nearer side.',
          [margin, top - 8],
          TYPE.small,
          'serif-italic',
        ),
        ...cells,
        rulers([margin, size.height - margin - RULERS.height / 2 + 8]),
        ...purposeLines(`Greens 1:${scale}. ${purposeWords(purpose)}`),
      ],
    },
  }

  function purposeLines(words: string): Shape[] {
    const left = margin + RULERS.width + CARD.gap
    return wrapText(words, size.width - margin - left, {
      face: 'serif-italic',
      size: TYPE.small,
      letters,
    }).map((line, index) =>
      text(
        line,
        [left, size.height - margin - RULERS.height / 2 + 8 + index * TYPE.line],
        TYPE.small,
        'serif-italic',
      ),
    )
  }
}

/** One green as a pin sheet has it, alone: for a screen, never to be carried in a counting round. `CELL` sizes, points. */
export function drawPin(hole: Hole): Drawing {
  const { width, height } = CELL
  const approach = approachHole(hole)
  const frame = { left: 1, top: CELL_HEAD, right: width - 1, bottom: height - 1 }
  return {
    width,
    height,
    title: `Green ${hole.ref}`,
    description: `${hole.ref}: ${pinWords(pinInPaces(approach))}`,
    shapes: cell(approach, frame, leastScale(approach, width - 2, height - CELL_HEAD), {
      letters: (words, _, size) => 0.55 * size * words.length,
      isGiven: true,
    }),
  }
}

const CELL = { width: 150, height: 180 } as const

/** Where the day gives places of some holes, the others' are not known. */
const NOT_GIVEN = 'not given'

/** One green in its frame, its number and pin above; a number that is a long name is set as small as it must be. */
function cell(
  hole: Hole,
  frame: Frame,
  scale: number,
  { letters, isGiven }: { readonly letters: Letters; readonly isGiven: boolean },
): Shape[] {
  const { left, top, right, bottom } = frame
  const pin = pinInPaces(hole)
  const base = top - 16
  const words = isGiven || pin === null ? pinWords(pin) : NOT_GIVEN
  const wordsSize = TYPE.small + 2
  const face = isGiven ? 'sans-bold' : 'sans'
  const room = right - left - letters(`${words}  `, face, wordsSize)
  const refSize = Math.min(TYPE.number, (TYPE.number * room) / letters(hole.ref, 'sans-bold', TYPE.number))
  const shapes: Shape[] = [
    text(hole.ref, [left, base], refSize, 'sans-bold'),
    text(words, [right, base], wordsSize, face, 'end'),
    ...(pin === null
      ? []
      : [text(`${pin.deepPaces} deep`, [right, base + TYPE.line], TYPE.small, 'sans', 'end')]),
  ]
  const { green } = hole
  if (green !== null) {
    const bounds = polygonBounds(green)
    const middle: Point = [(bounds.minX + bounds.maxX) / 2, (bounds.minY + bounds.maxY) / 2]
    const sheet = sheetInFrame(frame, middle, pointsPerMetre(scale))
    const [ground] = drawSurvey(hole, sheet, {}).ground
    if (ground !== undefined) shapes.push(ground)
    shapes.push(
      { kind: 'group', name: 'green', shapes: [outlineOf(hole.ref)] },
      ...(isGiven ? [pinMark(sheet.toSheet(hole.pin))] : []),
    )

    function outlineOf(ref: string): Shape {
      const steps = polygonSteps(polygonOnSheet(sheet, green ?? []))
      return {
        kind: 'group',
        name: greenName(ref),
        shapes: [{ kind: 'path', steps, stroke: { paint: 'ink', width: RULE.line } }],
      }
    }
  }
  shapes.push({
    kind: 'path',
    steps: rectangleSteps(left, top, right - left, bottom - top),
    stroke: { paint: 'ink', width: RULE.fine },
  })
  return shapes
}

/** A cross in a ring: small beside a green, and plain on a photocopy. */
function pinMark([x, y]: Point): Shape {
  const [ring, arm] = [2.6, 5.5]
  return {
    kind: 'path',
    steps: [
      ...lineSteps([x - arm, y], [x + arm, y]),
      ...lineSteps([x, y - arm], [x, y + arm]),
      ...circleSteps([x, y], ring),
    ],
    stroke: { paint: 'ink', width: RULE.heavy },
  }
}

/** As it is typed. */
function pinWords(pin: PinInPaces | null): string {
  if (pin === null) return 'no green surveyed'
  return dayPinWords({ yPaces: pin.onPaces, xPaces: pin.sidePaces, from: pin.side ?? 'middle' })
}

/** The largest scale at which the green stands in its cell with its edge, in steps of 60. */
function leastScale({ green }: Hole, width: number, height: number): number {
  if (green === null) return 0
  const { minX, maxX, minY, maxY } = polygonBounds(green)
  const metresPerPoint = Math.max((maxX - minX) / (width - 10), (maxY - minY) / (height - CELL_HEAD - 10))
  return 60 * Math.ceil((metresPerPoint * 1000 * POINTS_PER_MILLIMETRE) / 60)
}

import type { Shape } from '../draw/drawing.ts'
import { lineSteps } from '../draw/steps.ts'
import type { BookFacts } from './book-facts.ts'
import { cardBack } from './card-back.ts'
import { type CardRow, cardRow } from './card-row.ts'
import { foldMarks } from './fold-marks.ts'
import type { Page } from './page.ts'
import type { BookHole } from './planned-hole.ts'
import { purposeWords } from './purpose-words.ts'
import { CARD, PAPERS, RULE, TYPE } from './settings.ts'
import { text } from './text.ts'
import { wrapText } from './wrap-text.ts'

/**
 * The card of a round: one sheet on its side, the holes in front and the bag, the day and the cautions behind. Rows are as
 * high as their words need, so a course of many words takes another sheet rather than lose one.
 */
export function cardPages(facts: BookFacts): Page[] {
  const { width: height, height: width } = PAPERS[facts.paper]
  const columnWidth = (width - 2 * CARD.margin - CARD.gap) / 2
  const rows = facts.holes.map((one) => cardRow(one, columnWidth, facts))
  const head = heading(facts, width)
  const room = height - CARD.margin - head.bottom
  const columns = columnsOf(rows, room)
  const sheets = Array.from({ length: Math.ceil(columns.length / 2) }, (_, sheet) =>
    columns.slice(2 * sheet, 2 * sheet + 2),
  )
  const plansFrom = facts.holes.flatMap(({ plan }) =>
    plan === null ? [] : [{ ref: plan.hole.ref, lie: plan.situation.lie }],
  )
  const fronts = sheets.map(
    (sheet, index): Page => ({
      name: `card, side ${index + 1}`,
      greens: [],
      plansFrom,
      drawing: {
        width,
        height,
        title: `${facts.course}, card of ${facts.playerName}`,
        description: `Club, start line, safe side and next shot for ${facts.holes.length} holes.`,
        shapes: [
          ...head.shapes,
          ...sheet.flatMap((column, place) =>
            drawColumn(column, CARD.margin + place * (columnWidth + CARD.gap), head.bottom, columnWidth),
          ),
          ...(facts.hasFolds ? foldMarks(width, height) : []),
        ],
      },
    }),
  )
  return [...fronts, cardBack(facts, { width, height }, `card, side ${fronts.length + 1}`)]
}

/** Rows in columns of nine at most, fewer where they are high. */
function columnsOf(rows: readonly CardRow[], room: number): CardRow[][] {
  const columns: CardRow[][] = []
  let left = 0
  for (const row of rows) {
    const column = columns.at(-1)
    if (column === undefined || column.length === CARD.rowsPerColumn || row.height > left) {
      columns.push([row])
      left = room - row.height
    } else {
      column.push(row)
      left -= row.height
    }
  }
  return columns
}

function drawColumn(rows: readonly CardRow[], left: number, from: number, width: number): Shape[] {
  let top = from
  const labels = top - 4
  const shapes: Shape[] = [
    text('lie, left', [left + width, labels - TYPE.line], TYPE.small, 'serif-italic', 'end'),
    text('putts, score', [left + width, labels], TYPE.small, 'serif-italic', 'end'),
  ]
  for (const row of rows) {
    shapes.push(
      {
        kind: 'path',
        steps: lineSteps([left, top], [left + width, top]),
        stroke: { paint: 'ink', width: RULE.line },
      },
      ...row.draw(left, top),
    )
    top += row.height
  }
  shapes.push({
    kind: 'path',
    steps: lineSteps([left, top], [left + width, top]),
    stroke: { paint: 'ink', width: RULE.line },
  })
  return shapes
}

/** Course, player and purpose; a long name takes another line. */
function heading(facts: BookFacts, width: number): { readonly shapes: Shape[]; readonly bottom: number } {
  const { course, playerName, holes, ruler, letters, purpose } = facts
  const [first] = holes
  const received = receivedOf(holes)
  const tees = first === undefined || first.hole.teeName === '' ? '' : `${first.hole.teeName} tees, `
  const par = holes.reduce((sum, { hole }) => sum + hole.par, 0)
  const length = holes.reduce((sum, { hole }) => sum + hole.lengthMetres, 0)
  const whole = width - 2 * CARD.margin
  const setting = { face: 'serif-bold', size: TYPE.title, letters } as const
  const title = wrapText(`${course}: ${playerName}`, whole, setting)
  // The heading of the log boxes stands at the end of the same lines.
  const purposeLines = wrapText(purposeWords(purpose), (whole - CARD.gap) / 2 - 3 * CARD.boxWidth, {
    face: 'serif-italic',
    size: TYPE.small,
    letters,
  })
  const top = CARD.margin + Math.max(0, title.length - 1) * TYPE.title
  const shapes = [
    ...title.map((line, index) =>
      text(line, [CARD.margin, CARD.margin + 14 + index * TYPE.title], TYPE.title, 'serif-bold'),
    ),
    text(
      `${tees}par ${par}, ${ruler.figure(length)} ${ruler.sign}${received}. Numbers in ${ruler.word}.`,
      [CARD.margin, top + 29],
      TYPE.small,
      'sans',
    ),
    ...purposeLines.map((line, index) =>
      text(line, [CARD.margin, top + 42 + index * TYPE.line], TYPE.small, 'serif-italic'),
    ),
  ]
  return { shapes, bottom: top + CARD.heading + Math.max(0, purposeLines.length - 1) * TYPE.line }
}

/** `, 18 strokes received`, `, 1 stroke received`; empty where the card does not tell. */
function receivedOf(holes: readonly BookHole[]): string {
  if (holes.some(({ received }) => received === null)) return ''
  const strokes = holes.reduce((sum, one) => sum + (one.received ?? 0), 0)
  return `, ${strokes} ${strokes === 1 ? 'stroke' : 'strokes'} received`
}

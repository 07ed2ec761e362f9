import type { Point } from '#numbers/geometry/point.ts'
import type { Shape } from '../draw/drawing.ts'
import { lineSteps } from '../draw/steps.ts'
import { flowBlocks } from './blocks.ts'
import type { BookFacts } from './book-facts.ts'
import { cardBack } from './card-back.ts'
import type { CardKind } from './card-kinds.ts'
import { type CardRow, cardRow } from './card-row.ts'
import { cardSize, columnWidth } from './card-size.ts'
import { foldMarks } from './fold-marks.ts'
import { ownSentences } from './own-words.ts'
import type { Page, RowPlace } from './page.ts'
import type { BookHole } from './planned-hole.ts'
import { purposeWords } from './purpose-words.ts'
import { type CardSetting, RULE } from './settings.ts'
import { text } from './text.ts'
import { wrapText } from './wrap-text.ts'

/**
 * The card of a round: the holes in front and the bag, the day and the cautions behind, on one sheet where they fit. Rows are
 * as high as their words need, so a course of many words takes another side rather than lose one.
 */
export function cardPages(facts: BookFacts, kind: CardKind): Page[] {
  const { setting } = kind
  const size = cardSize(facts.paper, setting)
  const width = columnWidth(size, setting)
  const rows = facts.holes.map((one) =>
    cardRow(one.hole.ref, kind.rowOf(one, facts), width, setting, facts.letters),
  )
  const head = heading(facts, size.width, kind)
  const columns = flowBlocks(rows, size.height - setting.margin - head.bottom, setting.rowsPerColumn)
  const sides = Array.from({ length: Math.ceil(columns.length / setting.columns) }, (_, side) =>
    columns.slice(setting.columns * side, setting.columns * (side + 1)),
  )
  const plansFrom = facts.holes.flatMap(({ plan }) =>
    plan === null ? [] : [{ ref: plan.hole.ref, lie: plan.situation.lie }],
  )
  const written = kind.reader === null ? [] : ownSentences(facts, kind.reader)
  const fronts = sides.map((side, index): Page => {
    const placed = side.map((column, place) =>
      placeColumn(column, [setting.margin + place * (width + setting.gap), head.bottom], width, setting),
    )
    return {
      name: `card, side ${index + 1}`,
      greens: [],
      plansFrom,
      written,
      rows: placed.flatMap(({ rows }) => rows),
      drawing: {
        ...size,
        title: `${facts.course}, card of ${facts.playerName}`,
        description: `${kind.description} for ${facts.holes.length} holes.`,
        shapes: [
          ...head.shapes,
          ...placed.flatMap(({ shapes }) => shapes),
          ...(facts.hasFolds ? foldMarks(size.width, size.height) : []),
        ],
      },
    }
  })
  return [...fronts, ...cardBack(facts, kind, size, fronts.length + 1)]
}

/** A column of holes under the heading of its boxes, ruled off. */
function placeColumn(
  rows: readonly CardRow[],
  [left, from]: Point,
  width: number,
  { type }: CardSetting,
): { readonly shapes: Shape[]; readonly rows: RowPlace[] } {
  let top = from
  const labels = top - 4
  const shapes: Shape[] = [
    text('lie, left', [left + width, labels - type.line], type.small, 'serif-italic', 'end'),
    text('putts, score', [left + width, labels], type.small, 'serif-italic', 'end'),
  ]
  const places: RowPlace[] = []
  for (const row of rows) {
    shapes.push(
      {
        kind: 'path',
        steps: lineSteps([left, top], [left + width, top]),
        stroke: { paint: 'ink', width: RULE.line },
      },
      ...row.draw(left, top),
    )
    places.push({ ref: row.ref, left, top, width, height: row.height })
    top += row.height
  }
  shapes.push({
    kind: 'path',
    steps: lineSteps([left, top], [left + width, top]),
    stroke: { paint: 'ink', width: RULE.line },
  })
  return { shapes, rows: places }
}

/** Course, player and purpose; a long name takes another line. */
function heading(
  facts: BookFacts,
  width: number,
  { setting, hasFigures }: CardKind,
): { readonly shapes: Shape[]; readonly bottom: number } {
  const { course, playerName, holes, ruler, letters, purpose } = facts
  const { type, margin, gap, columns, boxWidth, heading: height } = setting
  const [first] = holes
  const received = receivedOf(holes)
  const tees = first === undefined || first.hole.teeName === '' ? '' : `${first.hole.teeName} tees`
  const par = holes.reduce((sum, { hole }) => sum + hole.par, 0)
  const length = holes.reduce((sum, { hole }) => sum + hole.lengthMetres, 0)
  const whole = width - 2 * margin
  const title = wrapText(`${course}: ${playerName}`, whole, {
    face: 'serif-bold',
    size: type.title,
    letters,
  })
  const sums = wrapText(
    hasFigures
      ? `${tees === '' ? '' : `${tees}, `}par ${par}, ${ruler.figure(length)} ${ruler.sign}${received}. Numbers in ${ruler.word}.`
      : tees,
    whole,
    { face: 'sans', size: type.small, letters },
  )
  // The heading of the log boxes stands at the end of the same lines.
  const purposeLines = wrapText(purposeWords(purpose), (whole - gap) / columns - 3 * boxWidth, {
    face: 'serif-italic',
    size: type.small,
    letters,
  })
  const [below, under] = [
    margin + Math.max(0, title.length - 1) * type.title,
    Math.max(0, sums.length - 1) * type.line,
  ]
  const shapes = [
    ...title.map((line, index) =>
      text(line, [margin, margin + type.title - 4 + index * type.title], type.title, 'serif-bold'),
    ),
    ...sums.map((line, index) =>
      text(line, [margin, below + type.title + type.small + 1 + index * type.line], type.small, 'sans'),
    ),
    ...purposeLines.map((line, index) =>
      text(
        line,
        [margin, below + under + type.title + 2 * type.line + 1 + index * type.line],
        type.small,
        'serif-italic',
      ),
    ),
  ]
  return { shapes, bottom: below + under + height + Math.max(0, purposeLines.length - 1) * type.line }
}

/** `, 18 strokes received`, `, gives 1 stroke`; empty where the card does not tell. */
function receivedOf(holes: readonly BookHole[]): string {
  if (holes.some(({ received }) => received === null)) return ''
  const strokes = holes.reduce((sum, one) => sum + (one.received ?? 0), 0)
  const words = `${Math.abs(strokes)} ${Math.abs(strokes) === 1 ? 'stroke' : 'strokes'}`
  return strokes < 0 ? `, gives ${words}` : `, ${words} received`
}

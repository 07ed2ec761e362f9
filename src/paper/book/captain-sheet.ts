import type { PairedHole } from '#golf/round/foursome-table.ts'
import type { Partners } from '#golf/strategy/alternate-shot.ts'
import { splitWords } from '#golf/strategy/foursome-words.ts'
import { hazardWords } from '#golf/strategy/main-hazard.ts'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import { type TeeSplit, teeingOff } from '#golf/strategy/split-tees.ts'
import type { Face, Shape } from '../draw/drawing.ts'
import { lineSteps } from '../draw/steps.ts'
import { type Block, drawBlocks, flowBlocks } from './blocks.ts'
import type { RoundFacts } from './book-facts.ts'
import { cautionsOfBook } from './cautions-of-book.ts'
import type { Page } from './page.ts'
import { RULERS, rulers } from './rulers.ts'
import { sentenceBlocks } from './sentence-blocks.ts'
import { CARD, PAPERS, RULE, TYPE } from './settings.ts'
import { text } from './text.ts'
import { wrapText } from './wrap-text.ts'

/** Where the columns of the table begin, as shares of the width. */
const COLUMNS = { number: 0, tees: 0.07, first: 0.27, second: 0.47, warning: 0.68 } as const

/**
 * The captain's sheet of a foursome: who takes the odd and the even tees, for each hole the club of either partner and what
 * both must keep out of, and what to mind. Holes on which it matters who tees off are marked with what it saves.
 */
export function captainSheet(
  facts: RoundFacts,
  names: Partners<string>,
  holes: readonly PairedHole[],
  split: TeeSplit,
): Page[] {
  const size = PAPERS[facts.paper]
  const width = size.width - 2 * CARD.margin
  const setting = { width, type: TYPE, letters: facts.letters }
  const heading = `${facts.course}: ${names.join(' and ')}`
  const refs = holes.map(({ ref }) => ref)
  const blocks: Block[] = [
    ...sentenceBlocks(heading, splitWords(names, refs, split), setting),
    tableHead(names, width, facts),
    ...holes.map((hole, index) => row(hole, index, names, split, width, facts)),
    { height: 8, draw: () => [] },
    ...sentenceBlocks('Mind', cautionsOfBook(facts), setting),
  ]
  const room = size.height - 2 * CARD.margin - RULERS.height
  return flowBlocks(blocks, room).map((column, index) => ({
    name: `captain's sheet, side ${index + 1}`,
    greens: [],
    plansFrom: refs.map((ref) => ({ ref, lie: 'tee' })),
    drawing: {
      ...size,
      title: `${heading}, captain's sheet`,
      description: splitWords(names, refs, split).join(' '),
      shapes: [
        ...drawBlocks(column, CARD.margin, CARD.margin),
        rulers([CARD.margin, size.height - CARD.margin - RULERS.height / 2]),
      ],
    },
  }))
}

/** Long names take more than one line. */
function tableHead(names: Partners<string>, width: number, { letters }: RoundFacts): Block {
  const words = ['', 'tees off', `if ${names[0]}`, `if ${names[1]}`, 'both keep out of']
  const starts = Object.values(COLUMNS)
  const columns = starts.map((from, column) =>
    wrapText(words[column] ?? '', ((starts[column + 1] ?? 1) - from) * width - 6, {
      face: 'serif-italic',
      size: TYPE.small,
      letters,
    }),
  )
  const lines = Math.max(...columns.map((column) => column.length))
  return {
    height: lines * TYPE.line + 8,
    draw: (left, top) =>
      columns.flatMap((column, at) =>
        column.map((line, index) =>
          text(
            line,
            [left + (starts[at] ?? 0) * width, top + (lines - column.length + index + 1) * TYPE.line + 2],
            TYPE.small,
            'serif-italic',
          ),
        ),
      ),
  }
}

/** One hole: a line of the table, higher where a warning takes more than one line. */
function row(
  { hole, turns, place }: PairedHole,
  index: number,
  names: Partners<string>,
  split: TeeSplit,
  width: number,
  { letters, ruler }: RoundFacts,
): Block {
  const cell = (words: string, from: number, to: number, face: Face = 'sans'): string[] =>
    wrapText(words, (to - from) * width - 6, { face, size: TYPE.small, letters })
  const saved = split.saves[index] ?? 0
  const saves = split.hasSay[index] ? `, ${saved < 0 ? 'costs' : 'saves'} ${Math.abs(saved).toFixed(2)}` : ''
  const columns = [
    cell(`${names[teeingOff(split.odd, place)]}${saves}`, COLUMNS.tees, COLUMNS.first, 'sans-bold'),
    cell(clubWords(turns[0].best.shot), COLUMNS.first, COLUMNS.second),
    cell(clubWords(turns[1].best.shot), COLUMNS.second, COLUMNS.warning),
    cell(sharedWarning(turns), COLUMNS.warning, 1),
  ]
  const starts = [COLUMNS.tees, COLUMNS.first, COLUMNS.second, COLUMNS.warning]
  const facts = `par ${hole.par}, ${ruler.figure(hole.lengthMetres)} ${ruler.sign}`
  const lines = Math.max(2, ...columns.map((column) => column.length))
  return {
    height: lines * TYPE.line + 5,
    draw: (left, top): Shape[] => [
      {
        kind: 'path',
        steps: lineSteps([left, top], [left + width, top]),
        stroke: { paint: 'ink', width: RULE.fine },
      },
      text(hole.ref, [left, top + TYPE.number], TYPE.number, 'sans-bold'),
      ...columns.flatMap((column, at) =>
        column.map((words, line) =>
          text(
            words,
            [left + (starts[at] ?? 0) * width, top + (line + 1) * TYPE.line],
            TYPE.small,
            at === 0 ? 'sans-bold' : 'sans',
          ),
        ),
      ),
      text(facts, [left + width, top + lines * TYPE.line], TYPE.small, 'serif-italic', 'end'),
    ],
  }
}

/** The hazard that both partners' strokes find most dearly. */
function sharedWarning(turns: PairedHole['turns']): string {
  const [first, second] = turns.map(({ hazard }) => hazard)
  if (!first || !second || first.area !== second.area) return ''
  return `${hazardWords(first)}${first.side === 'across' ? '' : `, ${first.side}`}`
}

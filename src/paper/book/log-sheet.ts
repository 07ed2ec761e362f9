import { FINISH_LETTERS } from '#golf/round/round.ts'
import type { Shape } from '../draw/drawing.ts'
import { lineSteps } from '../draw/steps.ts'
import type { RoundFacts } from './book-facts.ts'
import type { Page } from './page.ts'
import { PAPERS, RULE, TYPE } from './settings.ts'
import { text } from './text.ts'
import { wrapText } from './wrap-text.ts'

const MARGIN = 34
/** Holes on a sheet, and the width of what stands before a line, points. */
const HOLES = 18
const BEFORE = 92

/**
 * The sheet on which a round is written down on paper: a line a hole, and below it what is written there, as the paper log is
 * typed afterwards. More than eighteen holes take another sheet.
 */
export function logSheets(facts: RoundFacts): Page[] {
  const sheets = Math.max(1, Math.ceil(facts.holes.length / HOLES))
  return Array.from({ length: sheets }, (_, sheet) =>
    logSheet(
      facts,
      facts.holes.slice(sheet * HOLES, (sheet + 1) * HOLES),
      sheets === 1 ? '' : `, sheet ${sheet + 1}`,
    ),
  )
}

function logSheet(facts: RoundFacts, holes: RoundFacts['holes'], which: string): Page {
  const { course, letters, ruler } = facts
  const size = PAPERS[facts.paper]
  const right = size.width - MARGIN
  const words = { face: 'sans', size: TYPE.small, letters } as const
  const title = wrapText(course, right - MARGIN, { face: 'serif-bold', size: TYPE.title, letters })
  const foot = explained(ruler.word).flatMap((sentence) => wrapText(sentence, right - MARGIN, words))
  const headed = MARGIN + title.length * TYPE.title
  const from = headed + 2 * TYPE.line + 4
  const bottom = size.height - MARGIN - foot.length * TYPE.line - 10
  const row = (bottom - from) / HOLES
  const tee = holes[0]?.hole.teeName ?? ''
  const shapes: Shape[] = [
    ...title.map((line, index) =>
      text(line, [MARGIN, MARGIN + (index + 0.8) * TYPE.title], TYPE.title, 'serif-bold'),
    ),
    text('date', [MARGIN, headed + TYPE.line], TYPE.small, 'serif-italic'),
    text('player', [MARGIN + 150, headed + TYPE.line], TYPE.small, 'serif-italic'),
    text(tee === '' ? 'tee' : `tee ${tee}`, [right, headed + TYPE.line], TYPE.small, 'serif-italic', 'end'),
    ...holes.flatMap(({ hole }, index): Shape[] => {
      const base = from + (index + 1) * row - 5
      return [
        text(`${hole.ref}:`, [MARGIN + 22, base], TYPE.number, 'sans-bold', 'end'),
        text(`par ${hole.par}, ${ruler.figure(hole.lengthMetres)}`, [MARGIN + 28, base], TYPE.small, 'sans'),
        {
          kind: 'path',
          steps: lineSteps([MARGIN + BEFORE, base + 2], [right, base + 2]),
          stroke: { paint: 'ink', width: RULE.line },
        },
      ]
    }),
    ...foot.map((line, index) =>
      text(line, [MARGIN, bottom + 12 + (index + 1) * TYPE.line], TYPE.small, 'sans'),
    ),
  ]
  return {
    name: `log${which}`,
    greens: [],
    plansFrom: [],
    drawing: {
      ...size,
      title: `${course}, log of a round`,
      description: `A line for each of ${holes.length} holes, and the letters that are written on it.`,
      shapes,
    },
  }
}

/** What is written on a line, as the parser of the paper log reads it. */
function explained(unit: 'yards' | 'metres'): readonly string[] {
  const letters = Object.entries(FINISH_LETTERS).map(([letter, means]) => `${letter} ${means}`)
  return [
    `Each stroke: club, letter of where it finished, ${unit} left to the pin; a stroke between each two /. The last is holed. Like: driver f-180 / 5i r-25 / sw g-18ft / 2 putts`,
    `Letters: ${letters.join(', ')}. = after the club, or in its place, says that club and line were the card’s. +1 is a penalty stroke more, 18ft or 5m another unit, pick up an unfinished hole.`,
  ]
}

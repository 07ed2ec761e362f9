import { drawWaterfall, type Waterfall } from '../draw/draw-waterfall.ts'
import type { Drawing } from '../draw/drawing.ts'
import type { Letters } from '../draw/letters.ts'
import { type Block, drawBlocks, flowBlocks } from './blocks.ts'
import { placeShapes } from './place-page.ts'
import { headingBlock, sentenceBlocks } from './sentence-blocks.ts'
import { CARD, PAPERS, type Paper, TYPE } from './settings.ts'
import type { SheetWords } from './sheet-words.ts'

/** What stands on the sheet, how large it is, and the letters it is set in. */
export interface SheetFacts extends SheetWords {
  readonly paper: Paper
  readonly letters: Letters
}

/** Beside the print the hand of a professional needs room to write. */
const WIDTH_SHARE = 0.72

/** The sheet for the lesson after a round: from plan to score, what stood out, sentence by sentence, on upright pages. */
export function recapSheet({ title, opening, waterfall, sections, paper, letters }: SheetFacts): Drawing[] {
  const size = PAPERS[paper]
  const width = (size.width - 2 * CARD.margin) * WIDTH_SHARE
  const setting = { width, type: TYPE, letters }
  const blocks: Block[] = [
    ...sentenceBlocks(title, opening, setting),
    ...(waterfall === undefined
      ? []
      : [headingBlock('From plan to score', TYPE), waterfallBlock(waterfall, width)]),
    ...sections.flatMap(({ heading, sentences }) => sentenceBlocks(heading, sentences, setting)),
  ]
  const room = size.height - 2 * CARD.margin
  return flowBlocks(blocks, room).map((column, index) => ({
    ...size,
    title: `${title}, side ${index + 1}`,
    description: [...opening, ...sections.flatMap(({ sentences }) => sentences)].join(' '),
    shapes: drawBlocks(column, CARD.margin, CARD.margin),
  }))
}

function waterfallBlock(waterfall: Waterfall, width: number): Block {
  const { height, shapes } = drawWaterfall(waterfall, width)
  return {
    height: height + 8,
    draw: (left, top) => placeShapes(shapes, [left, top]),
  }
}

import type { Shape } from '../draw/drawing.ts'
import { bagBlocks } from './bag-blocks.ts'
import { type Block, drawBlocks, flowBlocks } from './blocks.ts'
import type { BookFacts } from './book-facts.ts'
import type { CardKind } from './card-kinds.ts'
import { type CardSize, columnWidth } from './card-size.ts'
import { cautionsOfBook } from './cautions-of-book.ts'
import { chipBlocks } from './chip-blocks.ts'
import { dayWords } from './day-words.ts'
import { foldMarks } from './fold-marks.ts'
import type { Page } from './page.ts'
import { reliefReminders } from './relief-reminders.ts'
import { RULERS, rulers } from './rulers.ts'
import { sentenceBlocks } from './sentence-blocks.ts'

/** The other side of the card: the bag, chips, the day, what to mind, and rulers that prove the scale. */
export function cardBack(
  facts: BookFacts,
  { setting, hasFigures }: CardKind,
  size: CardSize,
  firstSide: number,
): Page[] {
  const { margin, gap, columns } = setting
  const width = columnWidth(size, setting)
  const paragraph = (heading: string, sentences: readonly string[]): Block[] =>
    sentenceBlocks(heading, sentences, { width, type: setting.type, letters: facts.letters })
  const figures = [...bagBlocks(facts, setting.type), ...chipBlocks(facts, setting.type)]
  const words = [
    ...(hasFigures ? paragraph('The day', [dayWords(facts.day, facts.ruler)]) : []),
    ...(hasFigures ? paragraph('Relief', reliefReminders(facts.localRules)) : []),
    ...paragraph('Mind', cautionsOfBook(facts)),
  ]
  const room = size.height - 2 * margin - RULERS.height
  const stacks = hasFigures ? (columns === 1 ? [[...figures, ...words]] : [figures, words]) : [words]
  const filled = stacks.flatMap((blocks) => flowBlocks(blocks, room))
  return Array.from({ length: Math.ceil(filled.length / columns) }, (_, index) => {
    const shapes: Shape[] = filled
      .slice(columns * index, columns * (index + 1))
      .flatMap((column, place) => drawBlocks(column, margin + place * (width + gap), margin))
    return {
      name: `card, side ${firstSide + index}`,
      greens: [],
      plansFrom: [],
      drawing: {
        ...size,
        title: `${facts.course}, bag and day of ${facts.playerName}`,
        description: hasFigures
          ? 'Carry and total of each club, the day, and what to mind.'
          : 'What to mind.',
        shapes: [
          ...shapes,
          rulers([margin, size.height - margin - RULERS.height / 2]),
          ...(facts.hasFolds ? foldMarks(size.width, size.height) : []),
        ],
      },
    }
  })
}

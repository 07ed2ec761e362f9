import { clubWords } from '#golf/strategy/plan-sentence.ts'
import type { Shape } from '../draw/drawing.ts'
import type { BookFacts } from './book-facts.ts'
import { cautionsOfBook } from './cautions-of-book.ts'
import { dayWords } from './day-words.ts'
import { foldMarks } from './fold-marks.ts'
import type { Page } from './page.ts'
import { reliefReminders } from './relief-reminders.ts'
import { RULERS, rulers } from './rulers.ts'
import { CARD, TYPE } from './settings.ts'
import { text } from './text.ts'
import { wrapText } from './wrap-text.ts'

/** The other side of the card: the bag, the day, what to mind, and rulers that prove the scale. */
export function cardBack(
  facts: BookFacts,
  { width, height }: { readonly width: number; readonly height: number },
  name: string,
): Page {
  const columnWidth = (width - 2 * CARD.margin - CARD.gap) / 2
  const right = CARD.margin + columnWidth + CARD.gap
  return {
    name,
    greens: [],
    plansFrom: [],
    drawing: {
      width,
      height,
      title: `${facts.course}, bag and day of ${facts.playerName}`,
      description: 'Carry and total of each club, the day, and what to mind.',
      shapes: [
        ...bagTable(facts, CARD.margin, CARD.margin + 14),
        ...paragraphs(facts, right, CARD.margin + 14, columnWidth),
        rulers([CARD.margin, height - CARD.margin - RULERS.height / 2]),
        ...(facts.hasFolds ? foldMarks(width, height) : []),
      ],
    },
  }
}

/** Carry and total of every club, and the half of good strikes that finishes between two lengths. */
function bagTable({ player, ruler }: BookFacts, left: number, top: number): Shape[] {
  const columns = [130, 190, 290]
  const head = [`carry, ${ruler.sign}`, 'total', 'two in three carry']
  const shapes: Shape[] = [
    text('The bag', [left, top], TYPE.club, 'serif-bold'),
    ...head.map((words, index) =>
      text(words, [left + (columns[index] ?? 0), top], TYPE.small, 'serif-italic', 'end'),
    ),
  ]
  for (const [index, club] of player.clubs.entries()) {
    const y = top + (index + 1) * (TYPE.line + 3.4) + 3
    const spread = club.carryMetres * club.carrySdShare
    const figures = [
      ruler.figure(club.carryMetres),
      ruler.figure(club.totalMetres),
      `${ruler.figure(club.carryMetres - spread)} to ${ruler.figure(club.carryMetres + spread)}`,
    ]
    shapes.push(
      text(clubWords({ club: club.name, shape: 'stock' }), [left, y], TYPE.small + 1, 'sans-bold'),
      ...figures.map((figure, column) =>
        text(figure, [left + (columns[column] ?? 0), y], TYPE.small + 1, 'sans', 'end'),
      ),
      ...(club.isGuess ? [text('guess', [left + (columns[2] ?? 0) + 8, y], TYPE.small, 'serif-italic')] : []),
    )
  }
  return shapes
}

function paragraphs(facts: BookFacts, left: number, top: number, width: number): Shape[] {
  const { letters } = facts
  let y = top
  const shapes: Shape[] = []
  const heading = (words: string): void => {
    shapes.push(text(words, [left, y], TYPE.club, 'serif-bold'))
    y += TYPE.club + 2
  }
  const say = (sentence: string): void => {
    for (const line of wrapText(sentence, width, { face: 'serif', size: TYPE.small + 1, letters })) {
      shapes.push(text(line, [left, y], TYPE.small + 1, 'serif'))
      y += TYPE.line + 1
    }
    y += 4
  }
  heading('The day')
  say(dayWords(facts.day, facts.ruler))
  y += 6
  heading('Relief')
  for (const reminder of reliefReminders(facts.localRules)) say(reminder)
  y += 6
  heading('Mind')
  for (const caution of cautionsOfBook(facts)) say(caution)
  return shapes
}

import { RULES_2023 } from '#golf/rules/rules-2023.ts'
import type { Shape } from '../draw/drawing.ts'
import type { BookFacts } from './book-facts.ts'
import { cautionsOfBook } from './cautions-of-book.ts'
import { dayWords } from './day-words.ts'
import { greenPage } from './green-page.ts'
import { holePage } from './hole-page.ts'
import type { Page } from './page.ts'
import { purposeWords } from './purpose-words.ts'
import { reliefReminders } from './relief-reminders.ts'
import { POCKET, POINTS_PER_INCH, TYPE } from './settings.ts'
import { text } from './text.ts'
import { wrapText } from './wrap-text.ts'

/** The size of a page of the pocket book, points: the most that the Rules allow. */
export const POCKET_SIZE: { readonly width: number; readonly height: number } = {
  width: RULES_2023.greenBook.pageInches[0] * POINTS_PER_INCH,
  height: RULES_2023.greenBook.pageInches[1] * POINTS_PER_INCH,
}

/** The pocket book: a cover, two pages a hole that lie open together, and what to mind at the end. `greenScale`: 1 to this at most. */
export function bookPages(facts: BookFacts, greenScale: number): Page[] {
  return [
    wordsPage('cover', facts, [
      facts.course,
      facts.playerName,
      dayWords(facts.day, facts.ruler),
      purposeWords(facts.purpose),
    ]),
    ...facts.holes.flatMap((one) => [
      holePage(one, facts, POCKET_SIZE),
      greenPage(one, facts, POCKET_SIZE, greenScale),
    ]),
    wordsPage('relief', facts, ['Relief', ...reliefReminders(facts.localRules)]),
    wordsPage('cautions', facts, ['Mind', ...cautionsOfBook(facts)]),
  ]
}

/** A page of sentences under a heading. */
function wordsPage(name: string, { letters }: BookFacts, sentences: readonly string[]): Page {
  const width = POCKET_SIZE.width - 2 * POCKET.margin
  const shapes: Shape[] = []
  let y = POCKET.margin + TYPE.title
  for (const [index, sentence] of sentences.entries()) {
    const [face, size] =
      index === 0 ? (['serif-bold', TYPE.title] as const) : (['serif', TYPE.small] as const)
    for (const line of wrapText(sentence, width, { face, size, letters })) {
      shapes.push(text(line, [POCKET.margin, y], size, face))
      y += size + 2
    }
    y += 6
  }
  return {
    name,
    greens: [],
    plansFrom: [],
    drawing: { ...POCKET_SIZE, title: name, description: sentences.join(' '), shapes },
  }
}

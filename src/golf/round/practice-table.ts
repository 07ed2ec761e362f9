import { practiceWords, type ToldPractice } from './practice-words.ts'
import type { WordTable } from './word-table.ts'

/** Every part of the profile: how fast it gets better, and what so many hours of it are worth. */
export function practiceTable({ practice, hours }: Pick<ToldPractice, 'practice' | 'hours'>): WordTable {
  return {
    columns: [
      { heading: '' },
      { heading: 'better an hour', isFigure: true },
      { heading: `strokes a round in ${hours} h`, isFigure: true },
    ],
    rows: practice.parts.map(({ part, rate, strokesAnHour }) => [
      practiceWords(part),
      `${(100 * rate).toFixed(1)} %`,
      (strokesAnHour * hours).toFixed(2),
    ]),
  }
}

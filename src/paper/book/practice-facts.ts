import {
  itemSentences,
  NOTHING_TO_PRACTISE,
  PRACTICE_BASIS,
  type ToldPractice,
} from '#golf/round/practice-words.ts'
import type { SheetWords } from './sheet-words.ts'

/** The sheet of what to practise: three things, each with its drill and its re-test. */
export function practiceFacts(told: ToldPractice, title: string): SheetWords {
  const { items } = told.practice
  return {
    title,
    opening:
      items.length === 0
        ? [NOTHING_TO_PRACTISE]
        : ['What practice is worth on this course, the most rewarding first.'],
    sections: [
      ...items.map((item, index) => ({
        heading: `${index + 1}`,
        sentences: itemSentences(told, item),
      })),
      { heading: 'Mind', sentences: PRACTICE_BASIS },
    ],
  }
}

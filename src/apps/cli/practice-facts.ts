import { itemWords } from '#golf/round/practice-words.ts'
import type { SheetFacts } from '#paper/book/recap-sheet.ts'
import type { PracticeReport } from './practice-command.ts'
import { OWN_DRILL, PRACTICE_BASIS, retestText } from './practice-page.ts'

/** The sheet of what to practise: three things, each with its drill and its re-test. */
export function practiceFacts(report: PracticeReport, title: string): Omit<SheetFacts, 'letters' | 'paper'> {
  const { practice, notes, hours } = report
  return {
    title,
    opening:
      practice.items.length === 0
        ? ['No part of the game brings enough for an hour of practice to be worth saying.']
        : ['What practice is worth on this course, the most rewarding first.'],
    sections: [
      ...practice.items.map((item, index) => ({
        heading: `${index + 1}`,
        sentences: [itemWords(item, hours), notes.drills[item.part] ?? OWN_DRILL, retestText(report, item)],
      })),
      { heading: 'Mind', sentences: PRACTICE_BASIS },
    ],
  }
}

import { retestWords } from '#golf/round/practice-words.ts'
import type { PracticeReport } from './practice-command.ts'

/** `practice-plan/1`: strokes a round of these holes that an hour of each part is worth, the most rewarding first. */
export function practiceDocument(report: PracticeReport): object {
  const { course, player, practice, notes, hours, weeks, retest, faults } = report
  return {
    schema: 'practice-plan/1',
    course,
    player,
    holes: practice.holes,
    value: practice.value,
    hours,
    weeks,
    retest,
    parts: practice.parts.map(({ part, rate, strokesAnHour }) => ({
      part,
      rate_an_hour: rate,
      strokes_an_hour: strokesAnHour,
    })),
    items: practice.items.map(({ part }) => ({
      part,
      drill: notes.drills[part] ?? null,
      retest: retestWords(part),
    })),
    faults,
  }
}

import pc from 'picocolors'
import { handicapWords, scoreTable, scoreTitle, standingWords, starWords } from '#golf/round/score-words.ts'
import type { Machine } from './machine.ts'
import { faultLines } from './print-faults.ts'
import type { ScoreAnswer } from './score-command.ts'
import { wordTableLines } from './table.ts'
import { titled } from './titled.ts'

/** The card for a person: who plays off what, hole by hole which ball counts, and how it stands. */
export function scorePage({ course, competition, card, faults }: ScoreAnswer, machine: Machine): string[] {
  const colours = pc.createColors(machine.hasColour)
  const { by } = competition
  return [
    colours.bold(scoreTitle(course, competition)),
    ...titled('Handicaps', handicapWords(card, competition)),
    ...titled('Hole by hole', wordTableLines(scoreTable(card, by))),
    ...starWords(card).map((line) => `  ${line}`),
    ...titled('How it stands', standingWords(card, by)),
    ...titled('Faults', faultLines(faults, machine)),
  ]
}

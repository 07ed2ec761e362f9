import pc from 'picocolors'
import { practiceTable } from '#golf/round/practice-table.ts'
import { itemSentences, NOTHING_TO_PRACTISE, PRACTICE_BASIS } from '#golf/round/practice-words.ts'
import type { Machine } from './machine.ts'
import type { PracticeReport } from './practice-command.ts'
import { faultLines } from './print-faults.ts'
import { wordTableLines } from './table.ts'
import { titled } from './titled.ts'

/** What to practise, for a person: three things, then what they rest on. */
export function practicePage(report: PracticeReport, machine: Machine): string[] {
  const colours = pc.createColors(machine.hasColour)
  const { course, player, practice, faults } = report
  const count = `${practice.holes} ${practice.holes === 1 ? 'hole' : 'holes'}`
  return [
    colours.bold(`${course}, ${player}: what practice is worth on ${count}`),
    ...(practice.items.length === 0
      ? [NOTHING_TO_PRACTISE]
      : practice.items.flatMap((item, index) =>
          itemSentences(report, item).map((words, line) => `${line === 0 ? `${index + 1}.` : '  '} ${words}`),
        )),
    ...titled('Every part', wordTableLines(practiceTable(report))),
    ...titled('What this rests on', PRACTICE_BASIS),
    ...titled('Faults', faultLines(faults, machine)),
  ]
}

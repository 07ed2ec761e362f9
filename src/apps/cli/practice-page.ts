import pc from 'picocolors'
import type { PracticeItem } from '#golf/round/practice.ts'
import { itemWords, practiceWords, retestWords } from '#golf/round/practice-words.ts'
import type { Machine } from './machine.ts'
import type { PracticeReport } from './practice-command.ts'
import { faultLines } from './print-faults.ts'
import { tableLines } from './table.ts'
import { titled } from './titled.ts'

/** Where no drill is given. */
export const OWN_DRILL = 'Drill: the professional’s own.'

/** What the figures are, and are not. */
export const PRACTICE_BASIS: readonly string[] = [
  'How much an hour helps is an assumption, not a measurement: put your own experience in its place.',
  'Each figure is what the expected score of the plan on these holes loses when that part alone gets better.',
]

/** When and how it is seen whether it helped. */
export function retestText({ weeks, retest }: PracticeReport, { part }: PracticeItem): string {
  const when = retest === null ? `in ${weeks} ${weeks === 1 ? 'week' : 'weeks'}` : `on ${retest}`
  return `Re-test ${when}: ${retestWords(part)}.`
}

/** What to practise, for a person: three things, then what they rest on. */
export function practicePage(report: PracticeReport, machine: Machine): string[] {
  const colours = pc.createColors(machine.hasColour)
  const { course, player, practice, notes, hours, faults } = report
  const count = `${practice.holes} ${practice.holes === 1 ? 'hole' : 'holes'}`
  return [
    colours.bold(`${course}, ${player}: what practice is worth on ${count}`),
    ...(practice.items.length === 0
      ? ['No part of the game brings enough for an hour of practice to be worth saying.']
      : practice.items.flatMap((item, index) => [
          `${index + 1}. ${itemWords(item, hours)}`,
          `   ${notes.drills[item.part] ?? OWN_DRILL}`,
          `   ${retestText(report, item)}`,
        ])),
    ...titled(
      'Every part',
      tableLines(
        [
          { heading: '' },
          { heading: 'better an hour', isFigure: true },
          { heading: `strokes a round in ${hours} h`, isFigure: true },
        ],
        practice.parts.map(({ part, rate, strokesAnHour }) => [
          practiceWords(part),
          `${(100 * rate).toFixed(1)} %`,
          (strokesAnHour * hours).toFixed(2),
        ]),
      ),
    ),
    ...titled('What this rests on', PRACTICE_BASIS),
    ...titled('Faults', faultLines(faults, machine)),
  ]
}

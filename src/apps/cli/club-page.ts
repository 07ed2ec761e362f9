import pc from 'picocolors'
import { clubBasis, clubTables, clubTitle, clubWords } from '#golf/round/club-words.ts'
import type { ClubReport } from './club-command.ts'
import type { Machine } from './machine.ts'
import { faultLines } from './print-faults.ts'
import { wordTableLines } from './table.ts'
import { titled } from './titled.ts'

/** Rounds of many members, for a committee: what stands out, then the figures. */
export function clubPage(report: ClubReport, machine: Machine): string[] {
  const colours = pc.createColors(machine.hasColour)
  const { course, club, indexes, isQuick, faults } = report
  return [
    colours.bold(clubTitle(club, course)),
    ...clubWords(club, indexes),
    ...clubTables(club, indexes).flatMap(({ heading, table }) => titled(heading, wordTableLines(table))),
    ...titled('What this rests on', clubBasis(club, isQuick)),
    ...titled('Faults', faultLines(faults, machine)),
  ]
}

import pc from 'picocolors'
import {
  clubBasis,
  clubHoleTable,
  clubLocationTable,
  clubPartTable,
  clubTeeTable,
  clubWords,
} from '#golf/round/club-words.ts'
import type { WordTable } from '#golf/round/word-table.ts'
import type { ClubReport } from './club-command.ts'
import type { Machine } from './machine.ts'
import { faultLines } from './print-faults.ts'
import { wordTableLines } from './table.ts'
import { titled } from './titled.ts'

/** Rounds of many members, for a committee: what stands out, then the figures. */
export function clubPage(report: ClubReport, machine: Machine): string[] {
  const colours = pc.createColors(machine.hasColour)
  const { course, club, indexes, isQuick, faults } = report
  const lines = (table: WordTable): string[] => (table.rows.length === 0 ? [] : wordTableLines(table))
  return [
    colours.bold(`${course}: ${club.rounds} rounds of ${club.members} members`),
    ...clubWords(club, indexes),
    ...titled('Where strokes are lost, a round of eighteen holes', lines(clubPartTable(club))),
    ...titled('The holes, the hardest first', lines(clubHoleTable(club, indexes))),
    ...titled('By markers', lines(clubTeeTable(club))),
    ...titled('By hole location', lines(clubLocationTable(club))),
    ...titled('What this rests on', clubBasis(club, isQuick)),
    ...titled('Faults', faultLines(faults, machine)),
  ]
}

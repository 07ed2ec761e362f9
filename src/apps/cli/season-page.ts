import pc from 'picocolors'
import { seasonChangeWords } from '#golf/round/season-change-words.ts'
import { changeTable, choosingTable, struckTable, totalTable } from '#golf/round/season-tables.ts'
import { ALL_AS_PLANNED, seasonBasis, seasonWords } from '#golf/round/season-words.ts'
import type { Machine } from './machine.ts'
import { faultLines } from './print-faults.ts'
import type { SeasonReport } from './season-command.ts'
import { wordTableLines } from './table.ts'
import { titled } from './titled.ts'

/** Rounds taken together, for a person: the sentences, then what they rest on. */
export function seasonPage(answer: SeasonReport, machine: Machine): string[] {
  const colours = pc.createColors(machine.hasColour)
  const { course, player, season, change, faults } = answer
  const count = `${season.rounds} ${season.rounds === 1 ? 'round' : 'rounds'}, ${season.holes} ${season.holes === 1 ? 'hole' : 'holes'}`
  const choosing = choosingTable(season)
  return [
    colours.bold(`${course}, ${player}: ${count}`),
    ...seasonWords(season),
    ...(change === null ? [] : seasonChangeWords(change)),
    ...titled('From plan to score, strokes a round', wordTableLines(totalTable(season)).slice(1)),
    ...titled(
      'Ways of choosing, strokes a round',
      choosing.rows.length === 0 ? [ALL_AS_PLANNED] : wordTableLines(choosing),
    ),
    ...titled('Struck against the profile, strokes a round', wordTableLines(struckTable(season))),
    ...(change === null
      ? []
      : titled('Against the season before, strokes a round', wordTableLines(changeTable(change)))),
    ...titled('What this rests on', seasonBasis(answer)),
    ...titled('Faults', faultLines(faults, machine)),
  ]
}

import pc from 'picocolors'
import type { RoundRecap } from '#golf/round/recap-round.ts'
import { holeTable, partTable } from '#golf/round/recap-tables.ts'
import {
  basisWords,
  bestLines,
  cardLines,
  costlyLines,
  scoreWords,
  unsplitLines,
} from '#golf/round/recap-words.ts'
import { costText } from '#golf/strategy/cost-text.ts'
import type { Machine } from './machine.ts'
import { faultLines } from './print-faults.ts'
import type { RecapAnswer } from './recap-document.ts'
import { tableLines, wordTableLines } from './table.ts'
import { titled } from './titled.ts'
import type { ReaderUnits } from './units-of-the-reader.ts'

/** A round split, for a person: from plan to score, by part of the game and by hole, and what stands out. */
export function recapPage(answer: RecapAnswer, units: ReaderUnits, machine: Machine): string[] {
  const colours = pc.createColors(machine.hasColour)
  const { course, player, round, recap, faults } = answer
  const when = round.date === null ? '' : `, ${round.date}`
  return [
    colours.bold(`${course}, ${player}${when}: ${scoreWords(recap)}`),
    'Strokes more (+) or fewer (−) than the plan expects of this player.',
    ...basisWords(answer),
    ...(recap.holes.length === 0
      ? []
      : [
          ...titled('On the card', cardLines(answer)),
          ...titled('From plan to score', planToScore(recap)),
          ...titled('By part of the game', wordTableLines(partTable(recap))),
          ...titled('By hole', wordTableLines(holeTable(recap))),
          ...titled('Choices that cost most', costlyLines(recap, units)),
          ...titled('Best strokes', bestLines(recap, units)),
          ...titled('What cannot be told apart', unsplitLines(recap)),
        ]),
    ...titled('Faults', faultLines(faults, machine)),
  ]
}

function planToScore(recap: RoundRecap): string[] {
  return tableLines(
    [{ heading: '' }, { heading: 'strokes', isFigure: true }],
    [
      ['expected, with the plan', recap.value.toFixed(2)],
      ['choices', costText(recap.decision)],
      ['how it was struck', costText(recap.execution)],
      ['luck', costText(recap.luck)],
      ['score', String(recap.score)],
    ],
  ).slice(1)
}

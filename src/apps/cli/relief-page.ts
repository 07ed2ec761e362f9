import pc from 'picocolors'
import type { Relief, ReliefPoint, ReliefRow } from '#golf/strategy/relief.ts'
import {
  clauseWords,
  editionWords,
  optionWords,
  reliefSentence,
  situationWords,
} from '#golf/strategy/relief-words.ts'
import type { Machine } from './machine.ts'
import { tableLines } from './table.ts'
import { lengthText, type ReaderUnits, sideText } from './units-of-the-reader.ts'

/** The options of a ball as a page of plain words: the choice, a row an option, what gives nothing, what must hold. */
export function reliefPage(relief: Relief, units: ReaderUnits, machine: Machine): string[] {
  const colours = pc.createColors(machine.hasColour)
  const { hole, situation, rules } = relief
  const tee = hole.tee === '' ? '' : ` from the ${hole.tee} tees`
  return [
    colours.bold(
      `Hole ${hole.ref}, par ${hole.par}, ${lengthText(hole.length_m, units)}${tee} · ${relief.course}`,
    ),
    `${relief.player}, ${situationWords(situation)}${placeOf(relief, units)}`,
    '',
    reliefSentence(relief),
    '',
    ...tableLines(
      [
        { heading: '' },
        { heading: 'option' },
        { heading: 'under' },
        { heading: 'penalty', isFigure: true },
        { heading: 'spot' },
        { heading: 'lie' },
        { heading: 'to the pin', isFigure: true },
        { heading: 'score', isFigure: true },
        { heading: 'costs', isFigure: true },
      ],
      relief.options.map((row) => rowCells(row, units)),
    ),
    ...listed(
      'Allowed, but it gives nothing here',
      relief.empty.map(
        ({ kind, clause, reason }) => `${optionWords(kind)} (${clauseWords(clause)}): ${reason}`,
      ),
    ),
    ...listed('Mind', [`${editionWords(rules)}. ${rules.ruling}`, ...relief.notes]),
  ]
}

function rowCells(row: ReliefRow, units: ReaderUnits): string[] {
  return [
    row.letter,
    optionWords(row.kind),
    clauseWords(row.clause),
    row.penalty === 0 ? '–' : `+${row.penalty}`,
    placeText(row.spot, units),
    (row.spot.lie ?? row.spot.ground).replace('-', ' '),
    lengthText(row.spot.to_pin_m, units),
    row.strokes === null ? '?' : row.strokes.toFixed(2),
    row.cost === null ? '?' : row.cost === 0 ? '–' : `+${row.cost.toFixed(2)}`,
  ]
}

function placeOf({ situation }: Relief, units: ReaderUnits): string {
  const { crossing, ball } = situation
  if (crossing !== null) return `, crossed ${placeText(crossing, units)}`
  return ball === null ? '' : `, ${placeText(ball, units)}`
}

function placeText({ x_m, y_m }: ReliefPoint, units: ReaderUnits): string {
  return `${lengthText(y_m, units)} on, ${sideText(x_m, units)}`
}

function listed(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)]
}

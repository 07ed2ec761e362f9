import pc from 'picocolors'
import { type GamePart, type Split, totalOf } from '#golf/round/recap.ts'
import { matchWords } from '#golf/rules/match-state.ts'
import type { Machine } from './machine.ts'
import { costText } from './plan-words.ts'
import { faultLines } from './print-faults.ts'
import type { RecapAnswer } from './recap-document.ts'
import { bestText, costlyText, unsplitLines } from './recap-words.ts'
import { MOST_TOLD_STROKES } from './settings.ts'
import { tableLines } from './table.ts'
import { titled } from './titled.ts'
import type { ReaderUnits } from './units-of-the-reader.ts'

/** A round split, for a person: from plan to score, by part of the game and by hole, and what stands out. */
export function recapPage(answer: RecapAnswer, units: ReaderUnits, machine: Machine): string[] {
  const colours = pc.createColors(machine.hasColour)
  const { course, player, round, recap, faults } = answer
  const count = `${recap.holes.length} ${recap.holes.length === 1 ? 'hole' : 'holes'}`
  const when = round.date === null ? '' : `, ${round.date}`
  return [
    colours.bold(`${course}, ${player}${when}: ${recap.score} strokes on ${count}`),
    'Strokes more (+) or fewer (−) than the plan expects of this player.',
    ...(answer.hasDay ? [] : ['No day file was given: this is against the plan for a calm, normal day.']),
    ...(recap.holes.length === 0
      ? []
      : [
          ...titled('On the card', cardLines(answer)),
          ...titled('From plan to score', planToScore(answer)),
          ...titled('By part of the game', partTable(answer)),
          ...titled('By hole', holeTable(answer)),
          ...titled('Choices that cost most', costlyLines(answer, units)),
          ...titled(
            'Best strokes',
            recap.best.slice(0, MOST_TOLD_STROKES).map((one) => bestText(one, units)),
          ),
          ...titled('What cannot be told apart', unsplitLines(recap)),
        ]),
    ...titled('Faults', faultLines(faults, machine)),
  ]
}

/** Net, points and what counts for the handicap; or why none of it is reckoned. */
export function cardLines({ card: answer, match }: RecapAnswer): string[] {
  const matched = match === null ? [] : [`As a match: ${matchWords(match)}, ${strokesWords(match.received)}.`]
  if ('missing' in answer) return [answer.missing, ...matched]
  const { playingHandicap, gross, net, points, adjustedGross, differentialTenths } = answer.card
  return [
    `Playing handicap ${playingHandicap}: ${gross === null ? 'not every ball was holed out' : `${gross} gross, ${net} net`}, ${points} points.`,
    `${adjustedGross} with no hole above net double bogey, a score differential of ${(differentialTenths / 10).toFixed(1)} before any adjustment for the day (Rules of Handicapping 2024). The club's own reckoning stands.`,
    ...matched,
  ]
}

function strokesWords(received: number): string {
  if (received === 0) return 'level'
  const count = Math.abs(received)
  return `${count} ${count === 1 ? 'stroke' : 'strokes'} ${received > 0 ? 'received' : 'given'}`
}

function planToScore({ recap }: RecapAnswer): string[] {
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

const SPLIT_COLUMNS = ['choices', 'struck', 'luck', 'all'].map((heading) => ({ heading, isFigure: true }))

function splitCells(split: Split): string[] {
  return [split.decision, split.execution, split.luck, totalOf(split)].map(costText)
}

/** Parts of the game in words. */
export const PARTS: Readonly<Record<GamePart, string>> = {
  tee: 'off the tee',
  approach: 'approach',
  around: 'around the green',
  putting: 'putting',
}

function partTable({ recap }: RecapAnswer): string[] {
  const { penalties } = recap
  return tableLines(
    [{ heading: '' }, { heading: 'strokes', isFigure: true }, ...SPLIT_COLUMNS],
    [
      ...recap.parts
        .filter(({ count }) => count > 0)
        .map((part) => [PARTS[part.part], String(part.count), ...splitCells(part)]),
      ...(penalties.count === 0
        ? []
        : [['of these, with a penalty', String(penalties.count), ...splitCells(penalties)]]),
    ],
  )
}

function holeTable({ recap }: RecapAnswer): string[] {
  return tableLines(
    [
      { heading: 'hole' },
      { heading: 'par', isFigure: true },
      { heading: 'score', isFigure: true },
      { heading: 'expected', isFigure: true },
      ...SPLIT_COLUMNS,
    ],
    recap.holes.map((hole) => [
      hole.ref,
      String(hole.par),
      String(hole.score),
      hole.value.toFixed(2),
      ...splitCells(hole),
    ]),
  )
}

/** The dearest choices, a line each, or that there are none. */
export function costlyLines({ recap }: RecapAnswer, units: ReaderUnits): string[] {
  if (recap.costly.length === 0)
    return ['None: every choice that can be judged was the plan’s, or too close to it to call.']
  const told = recap.costly.slice(0, MOST_TOLD_STROKES)
  const rest = recap.costly.length - told.length
  return [
    ...told.map((one) => costlyText(one, units)),
    ...(rest > 0 ? [`and ${rest} more that cost less`] : []),
  ]
}

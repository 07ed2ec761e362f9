import pc from 'picocolors'
import { clubWords } from '#golf/player/club-words.ts'
import { partialSwings } from '#golf/player/partial-wedges.ts'
import type { Lie } from '#golf/player/player.ts'
import type { BagRow } from '#golf/strategy/bag-use.ts'
import { SHORT_GAME_METRES, SMALLEST_PRINTED_COST } from '#golf/strategy/settings.ts'
import type { BagAnswer } from './bag-document.ts'
import type { Machine } from './machine.ts'
import { tableLines } from './table.ts'
import { titled } from './titled.ts'
import { lengthNumber, lengthText, type ReaderUnits } from './units-of-the-reader.ts'

/** A bag over the holes of a course, for a person: each club's place and use, what is never the answer, lies, partial swings. */
export function bagPage(answer: BagAnswer, units: ReaderUnits, machine: Machine): string[] {
  const colours = pc.createColors(machine.hasColour)
  const { course, player, holes, rows, unplanned } = answer
  const count = `${holes.length} ${holes.length === 1 ? 'hole' : 'holes'}`
  return [
    colours.bold(`${course}, ${player.name}: ${rows.length} clubs over ${count}`),
    '',
    ...bagTable(answer, units),
    '~ is a guess. Strokes are of the full game, each time these holes are played once; near: where the club costs less than 0.03 more than the plan.',
    ...titled(
      holes.length < HOLES_THAT_SAY_NEVER ? 'Not asked for on these holes' : 'Never the answer',
      holes.length === 0 ? [] : neverLines(rows, units),
    ),
    ...titled('From where', lieLines(rows)),
    ...titled('Partial swings', swingLines(answer, units)),
    ...titled(
      'Not worked out',
      unplanned.map(({ hole, code, message }) => `Hole ${hole}: ${code} ${message}`),
    ),
  ]
}

function bagTable({ player, rows }: BagAnswer, units: ReaderUnits): string[] {
  const guess = (name: string): string => (player.guesses.has(`clubs.${name}.carry_m`) ? '~' : '')
  return tableLines(
    [
      { heading: 'club' },
      { heading: `carry ${units === 'yards' ? 'yd' : 'm'}`, isFigure: true },
      { heading: 'to the next', isFigure: true },
      { heading: 'strokes', isFigure: true },
      { heading: 'off the tee', isFigure: true },
      { heading: 'near', isFigure: true },
      { heading: 'without it', isFigure: true },
      { heading: '' },
    ],
    rows.map(({ club, next, gapMetres, verdict, strokes, tee, near, worth }) => [
      clubWords(club.name),
      `${guess(club.name)}${lengthNumber(club.carryMetres, units)}`,
      next === null ? '' : lengthNumber(gapMetres, units),
      strokeText(strokes),
      strokeText(tee),
      strokeText(near),
      worth < SMALLEST_PRINTED_COST ? '–' : `≤ +${worth.toFixed(2)}`,
      next === null || verdict === 'even'
        ? ''
        : verdict === 'overlap'
          ? `does the job of the ${clubWords(next.name)}`
          : `nothing between it and the ${clubWords(next.name)}`,
    ]),
  )
}

function strokeText(strokes: number): string {
  return strokes < 0.05 ? '–' : strokes.toFixed(1)
}

/** Fewer holes than half a round say nothing of never. Our assumption. */
const HOLES_THAT_SAY_NEVER = 9

function neverLines(rows: readonly BagRow[], units: ReaderUnits): string[] {
  const never = rows.filter(({ isNeverAnswer }) => isNeverAnswer)
  if (never.length === 0) return ['no club: each is asked for somewhere on these holes']
  return [
    ...never.map(
      ({ club, worth }) =>
        `the ${clubWords(club.name)}: without it these holes cost ${worth < SMALLEST_PRINTED_COST ? 'nothing' : `at most ${worth.toFixed(2)}`} more`,
    ),
    'Keep what you trust: carrying such a club costs nothing, and on another course or day it may be the one. Its place is free if something is missing.',
    `Shots from within ${lengthText(SHORT_GAME_METRES, units)} of the pin are not counted: around the green a wedge has work of its own.`,
  ]
}

const LIE_WORDS: readonly (readonly [Lie, string])[] = [
  ['fairway', 'fairway'],
  ['rough', 'rough'],
  ['heavy', 'heavy grass'],
  ['bunker', 'sand'],
  ['trees', 'among trees'],
]

/** The clubs used from each lie; said shortly where it is all of them. */
function lieLines(rows: readonly BagRow[]): string[] {
  return LIE_WORDS.map(([lie, words]) => {
    const used = rows.filter(({ lies }) => lies.includes(lie)).map(({ club }) => clubWords(club.name))
    const which =
      used.length === rows.length ? 'every club' : used.length === 0 ? 'no whole swing' : used.join(', ')
    return `${words}: ${which}`
  })
}

function swingLines({ player }: BagAnswer, units: ReaderUnits): string[] {
  return partialSwings(player).map(
    ({ club, shape, stock }) => `${clubWords(club)}, ${shape}: ${lengthText(stock.carryMetres, units)}`,
  )
}

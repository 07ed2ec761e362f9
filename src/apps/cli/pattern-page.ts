import pc from 'picocolors'
import { bagGaps } from '#golf/player/bag-gaps.ts'
import { clubWords } from '#golf/player/club-words.ts'
import { changeLines, type LearnedFigure, learnedRows, usedLines } from '#golf/player/learned-words.ts'
import type { Player } from '#golf/player/player.ts'
import { nearGreenTable } from '#golf/round/near-green-table.ts'
import { readRoundsWords } from '#golf/round/read-rounds-words.ts'
import type { Machine } from './machine.ts'
import type { PatternAnswer } from './pattern-command.ts'
import { daysOf } from './pattern-document.ts'
import { lieLines } from './pattern-lies.ts'
import { changedPlanLines } from './pattern-plans.ts'
import { faultLines } from './print-faults.ts'
import { tableLines, wordTableLines } from './table.ts'
import { titled } from './titled.ts'
import { lengthNumber, type ReaderUnits } from './units-of-the-reader.ts'

/** What shots changed in a player, for a person: what was read, club by club, what has really changed, the gaps of the bag. */
export function patternPage(
  answer: PatternAnswer,
  units: ReaderUnits,
  isQuiet: boolean,
  machine: Machine,
): string[] {
  const colours = pc.createColors(machine.hasColour)
  const { before, learned, faults, out } = answer
  const written = out === null ? [] : [`The player file with these numbers is ${out}.`]
  if (isQuiet) return [...clubTable(answer, units), ...written]
  return [
    colours.bold(`${before.name}, ${usedText(answer)}`),
    ...readLines(answer),
    '',
    ...clubTable(answer, units),
    '~ was a guess. The carry is in the range beside it nine times in ten; left and right are the spread on that side of the aim.',
    ...titled('Really changed', changeLines(answer, units)),
    ...titled('From other lies', lieLines(learned.lies)),
    ...(answer.nearGreen === null
      ? []
      : titled('Putting and short game', wordTableLines(nearGreenTable(answer.nearGreen)))),
    ...(answer.plans === null ? [] : titled('Plans that change', changedPlanLines(answer.plans, units))),
    ...titled('The bag', gapLines(learned.player, units)),
    ...titled('What was found in the files', faultLines(faults, machine)),
    ...(written.length > 0 ? ['', ...written] : []),
  ]
}

function usedText({ bag, learned }: PatternAnswer): string {
  const used = bag.shots.length - learned.unused.length
  const [from, to] = daysOf(bag.shots)
  const when = from === undefined ? '' : from === to ? ` of ${from}` : ` from ${from} to ${to}`
  return `learned from ${used} shot${used === 1 ? '' : 's'}${when}`
}

function readLines(answer: PatternAnswer): string[] {
  const { reading, learned } = answer
  const parts = [
    [reading.unread, 'not read'],
    [reading.repeated, 'written twice and counted once'],
    [reading.setAside, 'set aside as no full shots'],
    [learned.unused.length, 'with clubs that are not in the bag'],
  ] as const
  const told = parts.filter(([count]) => count > 0).map(([count, what]) => `${count} ${what}`)
  return [
    ...(told.length === 0 ? [] : [`Of ${reading.rows} rows ${told.join(', ')}.`]),
    ...(answer.rounds === null ? [] : readRoundsWords(answer.rounds)),
    ...usedLines(answer),
  ]
}

function clubTable(answer: PatternAnswer, units: ReaderUnits): string[] {
  const unit = units === 'yards' ? 'yd' : 'm'
  return tableLines(
    [
      { heading: 'club' },
      { heading: 'shots', isFigure: true },
      { heading: `carry ${unit}` },
      { heading: `total ${unit}` },
      { heading: 'left °' },
      { heading: 'right °' },
      { heading: 'mishits %' },
    ],
    learnedRows(answer, units).map(({ club, shots, carry, total, left, right, mishits }) => [
      club,
      shots === 0 ? '–' : String(shots),
      `${change(carry)}${carry.between === null ? '' : ` (${carry.between[0]} to ${carry.between[1]})`}`,
      ...[total, left, right, mishits].map(change),
    ]),
  )
}

/** `~156 → 149`; one number when it stays. */
function change({ wasGuess, before, after }: LearnedFigure): string {
  return `${wasGuess ? '~' : ''}${before === after ? after : `${before} → ${after}`}`
}

function gapLines({ clubs, guesses }: Player, units: ReaderUnits): string[] {
  const unit = units === 'yards' ? 'yd' : 'm'
  const guess = (name: string): string => (guesses.has(`clubs.${name}.carry_m`) ? '~' : '')
  const rows = bagGaps(clubs).map(({ club, next, gapMetres, verdict }) => [
    clubWords(club.name),
    `${guess(club.name)}${lengthNumber(club.carryMetres, units)}`,
    lengthNumber(club.totalMetres, units),
    next === null ? '' : lengthNumber(gapMetres, units),
    next === null || verdict === 'even'
      ? ''
      : `${gapWords(verdict, clubWords(next.name))}${guess(club.name) || guess(next.name) ? ', by a guess' : ''}`,
  ])
  return tableLines(
    [
      { heading: 'club' },
      { heading: `carry ${unit}`, isFigure: true },
      { heading: `total ${unit}`, isFigure: true },
      { heading: 'to the next', isFigure: true },
      { heading: '' },
    ],
    rows,
  )
}

function gapWords(verdict: 'overlap' | 'hole', next: string): string {
  return verdict === 'overlap' ? `does the job of the ${next}` : `nothing between it and the ${next}`
}

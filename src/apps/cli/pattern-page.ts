import pc from 'picocolors'
import { bagGaps } from '#golf/player/bag-gaps.ts'
import { clubWords } from '#golf/player/club-words.ts'
import type { LearnedClub } from '#golf/player/learn-player.ts'
import type { Club, Player } from '#golf/player/player.ts'
import type { Machine } from './machine.ts'
import type { PatternAnswer } from './pattern-command.ts'
import { daysOf } from './pattern-document.ts'
import { faultLines } from './print-faults.ts'
import { LIKELY_CHANGE } from './settings.ts'
import { tableLines } from './table.ts'
import { lengthNumber, lengthText, type ReaderUnits } from './units-of-the-reader.ts'

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
    ...section('Really changed', changeLines(answer, units)),
    ...section('The bag', gapLines(learned.player, units)),
    ...section('What was found in the files', faultLines(faults, machine)),
    ...(written.length > 0 ? ['', ...written] : []),
  ]
}

function usedText({ bag, learned }: PatternAnswer): string {
  const used = bag.shots.length - learned.unused.length
  const [from, to] = daysOf(bag.shots)
  const when = from === undefined ? '' : from === to ? ` of ${from}` : ` from ${from} to ${to}`
  return `learned from ${used} shot${used === 1 ? '' : 's'}${when}`
}

function readLines({ reading, bag, learned }: PatternAnswer): string[] {
  const parts = [
    [reading.unread, 'not read'],
    [reading.repeated, 'written twice and counted once'],
    [reading.setAside, 'set aside as no full shots'],
    [learned.unused.length, 'with clubs that are not in the bag'],
  ] as const
  const told = parts.filter(([count]) => count > 0).map(([count, what]) => `${count} ${what}`)
  const strays = learned.clubs.reduce((sum, club) => sum + Math.round(club.strays), 0)
  return [
    ...(told.length === 0 ? [] : [`Of ${reading.rows} rows ${told.join(', ')}.`]),
    ...(strays === 0
      ? []
      : [
          `${strays} ${strays === 1 ? 'shot is' : 'shots are'} so far from the rest that ${strays === 1 ? 'it counts' : 'they count'} for next to nothing.`,
        ]),
    ...(bag.added.length === 0
      ? []
      : [`New in the bag by these shots: ${bag.added.map(clubWords).join(', ')}.`]),
  ]
}

function clubTable({ before, learned }: PatternAnswer, units: ReaderUnits): string[] {
  const unit = units === 'yards' ? 'yd' : 'm'
  const rows = learned.clubs.flatMap((one, index) => {
    const [old, now] = [before.clubs[index], learned.player.clubs[index]]
    return old === undefined || now === undefined ? [] : [clubRow(one, old, now, before, units)]
  })
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
    rows,
  )
}

function clubRow(one: LearnedClub, old: Club, now: Club, player: Player, units: ReaderUnits): string[] {
  const guess = (...fields: readonly string[]): string =>
    fields.some((field) => player.guesses.has(`clubs.${old.name}.${field}`)) ? '~' : ''
  const length = (metres: number): string => lengthNumber(metres, units)
  const spread = (degrees: number): string => degrees.toFixed(1)
  const [low, high] = one.numbers.carry.ninety
  const between = one.shots === 0 ? '' : ` (${length(low)} to ${length(high)})`
  return [
    clubWords(old.name),
    one.shots === 0 ? '–' : String(one.shots),
    `${change(guess('carry_m'), length(old.carryMetres), length(now.carryMetres))}${between}`,
    change(guess('total_m'), length(old.totalMetres), length(now.totalMetres)),
    change(
      guess('direction_sd_deg', 'left_share'),
      spread(old.directionSdDegrees * old.leftShare),
      spread(now.directionSdDegrees * now.leftShare),
    ),
    change(
      guess('direction_sd_deg', 'right_share'),
      spread(old.directionSdDegrees * old.rightShare),
      spread(now.directionSdDegrees * now.rightShare),
    ),
    change(
      guess('mishit_share'),
      String(Math.round(100 * old.mishitShare)),
      String(Math.round(100 * now.mishitShare)),
    ),
  ]
}

/** `~156 → 149`; one number when it stays. */
function change(guess: string, before: string, after: string): string {
  return before === after ? `${guess}${after}` : `${guess}${before} → ${after}`
}

const NUMBERS = [
  ['carry', 'carry'],
  ['run', 'run'],
  ['directionSd', 'spread of direction'],
  ['side', 'side of the misses'],
  ['carrySd', 'spread of carry'],
  ['mishit', 'mishits'],
] as const

/** Numbers that were known before and that the shots speak against, the surest first. */
function changeLines({ learned }: PatternAnswer, units: ReaderUnits): string[] {
  const found = learned.clubs.flatMap(({ name, numbers }) =>
    NUMBERS.map(([number, words]) => ({ name, words, number, ...numbers[number] })),
  )
  const asked = found.filter(({ chanceOfChange }) => chanceOfChange !== null)
  if (asked.length === 0) return ['nothing to compare: the numbers before were guesses']
  const likely = asked
    .filter(({ chanceOfChange }) => (chanceOfChange ?? 0) >= LIKELY_CHANGE)
    .sort((a, b) => (b.chanceOfChange ?? 0) - (a.chanceOfChange ?? 0))
  if (likely.length === 0) return [`too few shots to tell, or no change, in ${asked.length} numbers`]
  return likely.map(({ name, words, number, before, after, chanceOfChange }) => {
    const chance = Math.min(99, Math.round(100 * (chanceOfChange ?? 0)))
    return `${clubWords(name)}, ${words}: ${changeWords(number, before, after, units)}; ${chance} chances in 100`
  })
}

function changeWords(
  number: (typeof NUMBERS)[number][0],
  before: number,
  after: number,
  units: ReaderUnits,
): string {
  if (number === 'carry' || number === 'run') {
    const by = lengthText(Math.abs(after - before), units)
    return `${by} ${after > before ? 'longer' : 'shorter'} than was known`
  }
  if (number === 'side') return `more to the ${after > before ? 'left' : 'right'} than was known`
  if (number === 'mishit') return after > before ? 'more than was known' : 'fewer than was known'
  return after > before ? 'wider than was known' : 'tighter than was known'
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

function section(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)]
}

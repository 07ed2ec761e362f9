import { HANDICAP_ALLOWANCES } from '#golf/rules/handicap-allowances.ts'
import type { HoleLimit } from '#golf/rules/hole-limit.ts'

/** Who plays which ball: each their own, partners of whom the better ball counts, or partners with one ball. */
export const PLAYS = ['singles', 'four-ball', 'foursomes', 'greensomes', 'chapman', 'scramble'] as const
export type Play = (typeof PLAYS)[number]

/** What a round is played for. Sources: Rules of Golf 2023, 3.3, 21.1, 21.2, 21.3 and 3.2. */
export const COUNTINGS = ['strokes', 'points', 'maximum', 'par', 'match'] as const
export type Counting = (typeof COUNTINGS)[number]

/** How a competition is played and counted. */
export interface Competition {
  readonly play: Play
  readonly by: Counting
  /** The most that counts on a hole, in maximum score only. */
  readonly limit: HoleLimit
  /** The Committee's own, per cent, in place of the published one; only where each has a ball of their own. */
  readonly allowance: number | null
  /** Nobody receives strokes. */
  readonly isGross: boolean
}

/** How many play on a side, at least and at most, and whether each has a ball of their own. */
export const SIDES: Readonly<
  Record<Play, { readonly least: number; readonly most: number; readonly hasOwnBalls: boolean }>
> = {
  singles: { least: 1, most: 1, hasOwnBalls: true },
  'four-ball': { least: 2, most: 2, hasOwnBalls: true },
  foursomes: { least: 2, most: 2, hasOwnBalls: false },
  greensomes: { least: 2, most: 2, hasOwnBalls: false },
  chapman: { least: 2, most: 2, hasOwnBalls: false },
  scramble: { least: 2, most: 4, hasOwnBalls: false },
}

const OWN_BALL: Readonly<
  Record<'singles' | 'four-ball', Readonly<Record<Counting, keyof typeof HANDICAP_ALLOWANCES | null>>>
> = {
  singles: {
    strokes: 'Individual stroke play',
    points: 'Individual Stableford',
    maximum: 'Individual maximum score',
    par: 'Individual par/bogey',
    match: 'Individual match play',
  },
  'four-ball': {
    strokes: 'Four-ball stroke play',
    points: 'Four-ball Stableford',
    maximum: null,
    par: 'Four-ball par/bogey',
    match: 'Four-ball match play',
  },
}
const ONE_BALL = {
  foursomes: ['Foursomes'],
  greensomes: ['Greensomes'],
  chapman: ['Pinehurst/Chapman'],
  scramble: ['Scramble 2', 'Scramble 3', 'Scramble 4'],
} as const

/**
 * What a player keeps of the course handicap, per cent; of partners with one ball what each gives to it, lowest handicap first.
 * `null` where none is published. Source: Rules of Handicapping 2024, Appendix C.
 */
export function allowanceOf(play: Play, by: Counting, partners: number): number | readonly number[] | null {
  const name =
    play === 'singles' || play === 'four-ball'
      ? OWN_BALL[play][by]
      : ONE_BALL[play][partners - SIDES[play].least]
  return name == null ? null : HANDICAP_ALLOWANCES[name]
}

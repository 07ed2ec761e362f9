import { logOdds } from '#numbers/statistics/log-odds.ts'
import { type ClubDoubts, clubDoubts } from '../club-doubts.ts'
import type { Club, Player } from '../player.ts'
import { type Doubt, LEAST_KNOWN_SHARE, MISHIT_SPREAD_CORRELATION } from '../settings.ts'
import { CHANGE_SIZE } from './learn-settings.ts'
import { isKnown, type Learned } from './learned-numbers.ts'
import { lieDoubts } from './lie-doubts.ts'

/** The numbers of a club that are learned by sampling, each on a scale on which its doubt is normal. */
export const SAMPLED = [
  'carry',
  'directionSd',
  'carrySd',
  'side',
  'mishit',
  'mishitCarry',
  'mishitCarrySd',
] as const
export type Sampled = (typeof SAMPLED)[number]

/** Place of each number in the flat arrays of a club. */
export const AT: Readonly<Record<Sampled, number>> = {
  carry: 0,
  directionSd: 1,
  carrySd: 2,
  side: 3,
  mishit: 4,
  mishitCarry: 5,
  mishitCarrySd: 6,
}

/** What all clubs of a player have in common: each a standard normal before any shot. */
const FACTORS = ['skill', 'length', 'mishit', 'side', 'depth', 'breadth'] as const
export const FACTOR_COUNT: number = FACTORS.length

/** How the shared part of each number hangs on the factors; the squares of a row add up to 1. As `drawPlayer` has it. */
export const LOADS: readonly (readonly number[])[] = [
  [0, 1, 0, 0, 0, 0],
  [1, 0, 0, 0, 0, 0],
  [1, 0, 0, 0, 0, 0],
  [0, 0, 0, 1, 0, 0],
  [MISHIT_SPREAD_CORRELATION, 0, Math.sqrt(1 - MISHIT_SPREAD_CORRELATION ** 2), 0, 0, 0],
  [0, 0, 0, 0, 1, 0],
  [0, 0, 0, 0, 0, 1],
]

/** Before any shot: number `p` of club `c` is `centre + shared · (LOADS[p] · factors) + own · normal`, at `c · SAMPLED.length + p`. */
export interface PatternPrior {
  readonly clubs: number
  readonly centre: Float64Array
  readonly shared: Float64Array
  readonly own: Float64Array
  /** The own part's standard deviation where the number has really changed since it was known; 0 where it was a guess. */
  readonly changedOwn: Float64Array
  /** Doubt about the factors of each learned lie, as `LieChain` has them. */
  readonly lies: Float64Array
  /** Stock carry of each club as it was thought to be, metres. */
  readonly carry: readonly number[]
  /** Stock run of each club, metres, and its doubt as a share of it; plainly normal. */
  readonly run: readonly { readonly metres: number; readonly doubt: Doubt; readonly changedOwn: number }[]
}

/**
 * What is assumed of a player before any shot: the very doubts that the draws of a plan are made from. And each number
 * that was known may have moved since, by as much as real changes do (`CHANGE_SIZE`).
 */
export function patternPrior(player: Player): PatternPrior {
  const changed = (own: number, number: Learned, club: Club): number =>
    isKnown(number, club, player.guesses) ? Math.hypot(own, CHANGE_SIZE[number]) : 0
  const size = player.clubs.length * SAMPLED.length
  const centre = new Float64Array(size)
  const shared = new Float64Array(size)
  const own = new Float64Array(size)
  const changedOwn = new Float64Array(size)
  const doubts = clubDoubts(player)
  player.clubs.forEach((club, index) => {
    const doubt = doubts[index] as ClubDoubts
    SAMPLED.forEach((number, place) => {
      const at = index * SAMPLED.length + place
      const one = doubt[number]
      shared[at] = one.shared
      own[at] = one.own
      changedOwn[at] = changed(one.own, number, club)
      centre[at] = onScale(number, club) - (HAS_MEAN_ONE[number] ? (one.shared ** 2 + one.own ** 2) / 2 : 0)
    })
  })
  const run = player.clubs.map((club, index) => {
    const doubt = (doubts[index] as ClubDoubts).run
    return {
      metres: Math.max(LEAST_RUN_METRES, club.totalMetres - club.carryMetres),
      doubt,
      changedOwn: changed(doubt.own, 'run', club),
    }
  })
  const carry = player.clubs.map(({ carryMetres }) => carryMetres)
  return { clubs: player.clubs.length, centre, shared, own, changedOwn, lies: lieDoubts(player), carry, run }
}

/** The stated number is the mean of what it may be. */
const HAS_MEAN_ONE: Readonly<Record<Sampled, boolean>> = {
  carry: true,
  directionSd: true,
  carrySd: true,
  side: false,
  mishit: false,
  mishitCarry: true,
  mishitCarrySd: true,
}

/** A club that does not run has a doubt about that too, metres (our assumption). */
const LEAST_RUN_METRES = 0.3

/** A number as the file has it, on the scale on which its doubt is normal. */
function onScale(number: Sampled, club: Club): number {
  if (number === 'carry') return Math.log(club.carryMetres)
  if (number === 'directionSd') return Math.log(club.directionSdDegrees)
  if (number === 'carrySd') return Math.log(club.carrySdShare)
  // The two shares' common size belongs to the spread: only their proportion is learned.
  if (number === 'side') return 0
  if (number === 'mishit') return logOdds(club.mishitShare)
  if (number === 'mishitCarry') return Math.log(club.mishitCarryShare)
  return Math.log(Math.max(LEAST_KNOWN_SHARE, club.mishitCarrySdShare))
}

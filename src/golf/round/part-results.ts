import type { Player } from '#golf/player/player.ts'
import { puttingDistance } from '#golf/player/putting-distance.ts'
import { puttingValues } from '#golf/player/putting-values.ts'
import { normalQuantile } from '#numbers/statistics/normal.ts'
import type { HoleRecap, StrokeSplit } from './recap.ts'
import type { RoundRecap } from './recap-round.ts'
import {
  FALSE_PART_SHARE,
  MODEL_DOUBT_STROKES,
  NAMED_STROKES,
  USUAL_PART_SD,
  USUAL_PART_STROKES,
} from './settings.ts'

/** A part of the game whose strokes are compared with the player's own profile. */
export const STRUCK_PARTS = [
  'tee',
  'approach',
  'recovery',
  'around',
  'sand',
  'holing-putts',
  'three-putts',
] as const
export type StruckPart = (typeof STRUCK_PARTS)[number]

/** How a part of the game was struck in all rounds: strokes more than the profile expects. */
export interface PartResult {
  readonly part: StruckPart
  /** Strokes of the part; holes for putts. */
  readonly count: number
  /** In all rounds, and what a stroke of it came to with its standard deviation, which few strokes leave near the usual one. */
  readonly strokes: number
  readonly mean: number
  readonly sd: number
  /**
   * Low and high end of the sum, so wide that a right profile leaves all parts inside in 19 seasons of 20: by what the profile
   * says strokes vary at most, where it says so, since what is wrong with a player makes strokes vary more.
   */
  readonly low: number
  readonly high: number
}

/** What every part of the game came to, against the profile. */
export function partResults(rounds: readonly RoundRecap[], player: Pick<Player, 'putting'>): PartResult[] {
  const found = new Map<StruckPart, Over[]>(STRUCK_PARTS.map((part) => [part, []]))
  const add = (part: StruckPart, strokes: number, variance: number | null): void => {
    found.get(part)?.push({ strokes, variance })
  }
  const holes = rounds.flatMap((round) => round.holes)
  for (const { strokes } of holes)
    for (const stroke of strokes)
      if (stroke.part !== 'putting' && stroke.count === 1)
        add(struckPart(stroke), stroke.execution, stroke.executionVariance)
  for (const hole of holes) {
    const putted = puttsOf(hole, player)
    if (putted === null) continue
    add('holing-putts', putted.holing, putted.holingVariance)
    add('three-putts', putted.three, putted.threeVariance)
  }
  const doubts = doubtsOf(STRUCK_PARTS.map((part) => found.get(part)?.length ?? 0))
  return STRUCK_PARTS.map((part, index) => resultOf(part, found.get(part) ?? [], doubts[index] as number))
}

function struckPart({ part, from }: StrokeSplit): StruckPart {
  if (from.lie === 'bunker') return 'sand'
  if (part === 'around') return 'around'
  return from.lie === 'trees' || from.lie === 'scrub' ? 'recovery' : part === 'tee' ? 'tee' : 'approach'
}

/**
 * Putts of a hole, 2 − (holed at once) + (those after the second), each part against its chance from there. Their sum is what
 * the putts of the hole came to. `null`: not putted out in putts alone.
 */
function puttsOf(
  { strokes }: HoleRecap,
  player: Pick<Player, 'putting'>,
): {
  readonly holing: number
  readonly holingVariance: number
  readonly three: number
  readonly threeVariance: number
} | null {
  const first = strokes.findIndex(({ part }) => part === 'putting')
  const putts = strokes.slice(first)
  const start = putts[0]
  if (
    first < 0 ||
    start === undefined ||
    putts.some(({ part, penalty }) => part !== 'putting' || penalty > 0)
  )
    return null
  const count = putts.reduce((sum, { used }) => sum + used, 0)
  const [one, , three] = puttingValues(player).shares(puttingDistance(player, start.before))
  // A slope is worth so much length. 2 − one + later = the value of the place.
  const later = start.before - 2 + one
  // Who takes three has one putt more than two, who takes four has two: squares of 1 and 4.
  const square = three + 3 * Math.max(0, later - three)
  return {
    holing: one - (count === 1 ? 1 : 0),
    holingVariance: one * (1 - one),
    three: Math.max(0, count - 2) - later,
    threeVariance: Math.max(0, square - later ** 2),
  }
}

/** What a stroke or hole came to more than expected, and how much that varies by the profile; `null` = not known. */
interface Over {
  readonly strokes: number
  readonly variance: number | null
}

function resultOf(part: StruckPart, all: readonly Over[], doubt: number): PartResult {
  const count = all.length
  const strokes = all.reduce((sum, one) => sum + one.strokes, 0)
  const told = all.filter(({ variance }) => variance !== null)
  const others = all.filter(({ variance }) => variance === null)
  // What the profile says is no less than what strokes vary by: where they varied less, that counts.
  const known = Math.min(
    told.reduce((sum, { variance }) => sum + (variance ?? 0), 0),
    told.length * varianceOf(told),
  )
  const spread = Math.sqrt(known + others.length * varianceOf(others))
  const half = normalQuantile(1 - doubt) * spread + MODEL_DOUBT_STROKES * count
  return {
    part,
    count,
    strokes,
    mean: count === 0 ? 0 : strokes / count,
    sd: Math.sqrt(varianceOf(all)),
    low: strokes - half,
    high: strokes + half,
  }
}

/** How much strokes of a part varied, which few of them leave near the usual. */
function varianceOf(all: readonly Over[]): number {
  const mean = all.reduce((sum, { strokes }) => sum + strokes, 0) / Math.max(1, all.length)
  const squares = all.reduce((sum, { strokes }) => sum + (strokes - mean) ** 2, 0)
  return (
    (USUAL_PART_STROKES * USUAL_PART_SD ** 2 + squares) / (USUAL_PART_STROKES + Math.max(0, all.length - 1))
  )
}

/**
 * The chance of a false alarm of each part, one-sided, from its numbers of strokes: together as rare as is wanted, whatever the
 * shares (Bonferroni with weights: Genovese, Roeder & Wasserman, Biometrika 93 (2006); from memory). Few strokes get more of
 * it, by one over their root: what hundreds of strokes cost is told in any case. Parts that cannot be named need none.
 */
function doubtsOf(counts: readonly number[]): number[] {
  const weights = counts.map((count) => (count < NAMED_STROKES ? 0 : 1 / Math.sqrt(count)))
  const all = weights.reduce((sum, weight) => sum + weight, 0)
  return weights.map((weight) => FALSE_PART_SHARE * (weight === 0 ? 1 / counts.length : weight / all))
}

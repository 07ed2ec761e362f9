import type { Player } from '#golf/player/player.ts'
import { normalQuantile } from '#numbers/statistics/normal.ts'
import { type PartResult, partResults, STRUCK_PARTS, type StruckPart } from './part-results.ts'
import { totalOf } from './recap.ts'
import type { RoundRecap } from './recap-round.ts'
import { FALSE_CHANGE_SHARE, LEAST_COMPARED_HOLES, NAMED_STROKES } from './settings.ts'

/** What is compared: all strokes, what choices cost, and how each part of the game was struck. */
const COMPARED = ['all', 'choices', ...STRUCK_PARTS] as const
export type Compared = 'all' | 'choices' | StruckPart

/** One thing in two seasons, strokes a round more than expected. */
export interface Change {
  readonly what: Compared
  readonly before: number
  readonly now: number
  /** Now less before; negative is better. */
  readonly strokes: number
  /** Ends of where the true change lies: so wide that of players who did not change one in twenty is told of any change. */
  readonly low: number
  readonly high: number
  /** `chance`: none that could not be chance; `few`: there is too little of it in one of the seasons to tell anything. */
  readonly verdict: 'better' | 'worse' | 'chance' | 'few'
}

/** A season against the one before, both held against one profile. */
export interface SeasonChange {
  readonly roundsBefore: number
  readonly rounds: number
  readonly changes: readonly Change[]
}

/**
 * What changed from one season to the next. Both are split against the same profile, so that what is wrong in it falls out of
 * the difference; per stroke of a part and per hole, so that seasons of different length compare, and told for rounds of now.
 */
export function seasonChange(
  before: readonly RoundRecap[],
  now: readonly RoundRecap[],
  player: Pick<Player, 'putting'>,
): SeasonChange {
  const rounds = Math.max(1, now.length)
  const [partsBefore, partsNow] = [before, now].map((season) => partResults(season, player))
  const ofHoles = (of: (hole: RoundRecap['holes'][number]) => number): readonly [Sample, Sample] => {
    const [was, is] = [before, now].map((season) => sampleOf(season.flatMap(({ holes }) => holes.map(of))))
    return [was as Sample, is as Sample]
  }
  return {
    roundsBefore: before.length,
    rounds: now.length,
    changes: [
      changeOf('all', ofHoles(totalOf), LEAST_COMPARED_HOLES, rounds),
      changeOf(
        'choices',
        ofHoles(({ decision }) => decision),
        LEAST_COMPARED_HOLES,
        rounds,
      ),
      ...STRUCK_PARTS.map((part, index) =>
        changeOf(
          part,
          [partsBefore?.[index] as PartResult, partsNow?.[index] as PartResult],
          NAMED_STROKES,
          rounds,
        ),
      ),
    ],
  }
}

/** Strokes or holes of one season: how many, what each came to in the mean, and their standard deviation. */
type Sample = Pick<PartResult, 'count' | 'mean' | 'sd'>

function sampleOf(values: readonly number[]): Sample {
  const count = values.length
  const mean = count === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / count
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0)
  return { count, mean, sd: Math.sqrt(squares / Math.max(1, count - 1)) }
}

function changeOf(
  what: Compared,
  [before, now]: readonly [Sample, Sample],
  least: number,
  rounds: number,
): Change {
  const aRound = now.count / rounds
  const strokes = aRound * (now.mean - before.mean)
  const isFew = Math.min(before.count, now.count) < least
  const error = isFew
    ? Number.POSITIVE_INFINITY
    : aRound * Math.hypot(before.sd / Math.sqrt(before.count), now.sd / Math.sqrt(now.count))
  const [low, high] = [strokes - SURE_SDS * error, strokes + SURE_SDS * error]
  const verdict = isFew ? 'few' : high < 0 ? 'better' : low > 0 ? 'worse' : 'chance'
  return { what, before: aRound * before.mean, now: aRound * now.mean, strokes, low, high, verdict }
}

/** Two-sided for each thing, together as rare as is wanted. */
const SURE_SDS: number = normalQuantile(1 - FALSE_CHANGE_SHARE / (2 * COMPARED.length))

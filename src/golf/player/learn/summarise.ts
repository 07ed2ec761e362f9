import { shareOfLogOdds } from '#numbers/statistics/log-odds.ts'
import type { Club } from '../player.ts'
import { LEARNED, type Learned } from './learned-numbers.ts'
import { AT, SAMPLED } from './pattern-prior.ts'
import type { PosteriorDraws } from './sample-posterior.ts'

/** What is now known of one number, in its own unit. */
export interface NumberPosterior {
  readonly after: number
  /** Ends of the middle 50 % and 90 % of what it may be. */
  readonly half: readonly [number, number]
  readonly ninety: readonly [number, number]
  /** Standard deviation of what it may be. */
  readonly sd: number
  /** Every draw, in its own unit, in the order drawn. */
  readonly draws: Float64Array
}

/** Mean, spread and intervals of every number of one club. */
export function summarise(
  draws: PosteriorDraws,
  index: number,
  club: Club,
): Readonly<Record<Learned, NumberPosterior>> {
  return Object.fromEntries(
    LEARNED.map((number) => [
      number,
      number === 'run' ? runPosterior(draws, index) : sampledPosterior(draws, index, club, number),
    ]),
  ) as Record<Learned, NumberPosterior>
}

function sampledPosterior(
  { numbers }: PosteriorDraws,
  index: number,
  club: Club,
  number: Exclude<Learned, 'run'>,
): NumberPosterior {
  const at = index * SAMPLED.length + AT[number]
  const scaled = Float64Array.from(numbers, (row) => row[at] as number)
  const inUnit = (value: number): number =>
    number === 'mishit'
      ? shareOfLogOdds(value)
      : number === 'side'
        ? leftOfLine(club, value)
        : Math.exp(value)
  const own = scaled.map(inUnit)
  const { mean, sd } = moments(own)
  return {
    // As `drawPlayer` takes it: the mean of a carry or a spread, the middle of a share's log odds.
    after: number === 'mishit' || number === 'side' ? inUnit(moments(scaled).mean) : mean,
    sd,
    ...intervals(own),
    draws: own,
  }
}

function runPosterior({ runs, runMoments }: PosteriorDraws, index: number): NumberPosterior {
  const own = Float64Array.from(runs, (row) => row[index] as number)
  const { mean, sd } = runMoments[index] as { mean: number; sd: number }
  return { after: mean, sd, ...intervals(own), draws: own }
}

/** Share of good strikes to the left of the line, when the left share is exp(side) times what the club has. */
function leftOfLine({ leftShare, rightShare }: Club, side: number): number {
  return 1 / (1 + (rightShare / leftShare) * Math.exp(-2 * side))
}

/** Ends of the middle 50 % and 90 % of draws, which may be in any order. */
export function intervals(values: Float64Array): Pick<NumberPosterior, 'half' | 'ninety'> {
  const sorted = values.slice().sort()
  const at = (share: number): number => {
    const place = share * (sorted.length + 1) - 1
    const low = Math.min(sorted.length - 2, Math.max(0, Math.floor(place)))
    const one = sorted[low] as number
    return one + (place - low) * ((sorted[low + 1] as number) - one)
  }
  return { half: [at(0.25), at(0.75)], ninety: [at(0.05), at(0.95)] }
}

function moments(values: Float64Array): { readonly mean: number; readonly sd: number } {
  let mean = 0
  for (const value of values) mean += value / values.length
  let variance = 0
  for (const value of values) variance += (value - mean) ** 2 / (values.length - 1)
  return { mean, sd: Math.sqrt(variance) }
}

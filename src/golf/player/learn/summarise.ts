import { shareOfLogOdds } from '#numbers/statistics/log-odds.ts'
import type { Club } from '../player.ts'
import { LEAST_INFORMED_SHARE } from './learn-settings.ts'
import { AT, type PatternPrior, SAMPLED } from './pattern-prior.ts'
import type { PosteriorDraws } from './sample-posterior.ts'

/** Every number that is learned, in the order it is told. */
export const LEARNED = [
  'carry',
  'run',
  'directionSd',
  'side',
  'carrySd',
  'mishit',
  'mishitCarry',
  'mishitCarrySd',
] as const
export type Learned = (typeof LEARNED)[number]

/** What is now known of one number, in its own unit. */
export interface NumberPosterior {
  readonly after: number
  /** Ends of the middle 50 % and 90 % of what it may be. */
  readonly half: readonly [number, number]
  readonly ninety: readonly [number, number]
  /**
   * What the shots alone say on the scale of the doubt: how far from the number as it was, and the variance of that;
   * `null` when they say next to nothing.
   */
  readonly alone: { readonly shift: number; readonly variance: number } | null
  /** Variance of the number before the shots, on the same scale. */
  readonly varianceBefore: number
  /** Every draw, in its own unit, in the order drawn. */
  readonly draws: Float64Array
}

/** Mean, intervals and the evidence of the shots alone of every number of one club. */
export function summarise(
  draws: PosteriorDraws,
  prior: PatternPrior,
  index: number,
  club: Club,
): Readonly<Record<Learned, NumberPosterior>> {
  return Object.fromEntries(
    LEARNED.map((number) => [
      number,
      number === 'run'
        ? runPosterior(draws, prior, index)
        : sampledPosterior(draws, prior, index, club, number),
    ]),
  ) as Record<Learned, NumberPosterior>
}

function sampledPosterior(
  { numbers }: PosteriorDraws,
  prior: PatternPrior,
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
  const { mean, variance } = moments(scaled)
  const varianceBefore = (prior.shared[at] as number) ** 2 + (prior.own[at] as number) ** 2
  return {
    // As `drawPlayer` takes it: the mean of a carry or a spread, the middle of a share's log odds.
    after: number === 'mishit' || number === 'side' ? inUnit(mean) : moments(own).mean,
    ...intervals(own),
    alone: evidence(mean - (prior.centre[at] as number), variance, varianceBefore),
    varianceBefore,
    draws: own,
  }
}

function runPosterior(
  { runs, runMoments }: PosteriorDraws,
  prior: PatternPrior,
  index: number,
): NumberPosterior {
  const { metres, doubt } = prior.run[index] as PatternPrior['run'][number]
  const own = Float64Array.from(runs, (row) => row[index] as number)
  const { mean, sd } = runMoments[index] as { mean: number; sd: number }
  const varianceBefore = doubt.shared ** 2 + doubt.own ** 2
  return {
    after: mean,
    ...intervals(own),
    alone: evidence((mean - metres) / metres, (sd / metres) ** 2, varianceBefore),
    varianceBefore,
    draws: own,
  }
}

/** Share of good strikes to the left of the line, when the left share is exp(side) times what the club has. */
function leftOfLine({ leftShare, rightShare }: Club, side: number): number {
  return 1 / (1 + (rightShare / leftShare) * Math.exp(-2 * side))
}

/** Takes the normal prior out of a normal posterior: what is left is what the shots say. */
function evidence(moved: number, after: number, before: number): NumberPosterior['alone'] {
  const informed = 1 - after / before
  if (informed < LEAST_INFORMED_SHARE) return null
  return { shift: moved / informed, variance: (before * (1 - informed)) / informed }
}

function intervals(values: Float64Array): Pick<NumberPosterior, 'half' | 'ninety'> {
  const sorted = values.slice().sort()
  const at = (share: number): number => {
    const place = share * (sorted.length + 1) - 1
    const low = Math.min(sorted.length - 2, Math.max(0, Math.floor(place)))
    const one = sorted[low] as number
    return one + (place - low) * ((sorted[low + 1] as number) - one)
  }
  return { half: [at(0.25), at(0.75)], ninety: [at(0.05), at(0.95)] }
}

function moments(values: Float64Array): { readonly mean: number; readonly variance: number } {
  let mean = 0
  for (const value of values) mean += value / values.length
  let variance = 0
  for (const value of values) variance += (value - mean) ** 2 / (values.length - 1)
  return { mean, variance }
}

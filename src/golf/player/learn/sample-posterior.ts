import { KEPT_SWEEPS, SETTLING_SWEEPS } from './learn-settings.ts'
import { type ChainInput, PatternChain } from './pattern-chain.ts'
import type { StrikeSums } from './strike-sums.ts'

/** Draws of everything that is not known, one after the other. */
export interface PosteriorDraws {
  /** A row for each draw: the numbers of all clubs as in {@link PatternPrior}. */
  readonly numbers: readonly Float64Array[]
  /** A row for each draw: stock runs, metres. */
  readonly runs: readonly Float64Array[]
  /** Chance that each number and each run has really changed, the mean over draws. */
  readonly changes: Float64Array
  readonly runChanges: Float64Array
  /** Mean and spread of each run, averaged over their closed forms: exact where nothing else is unknown. */
  readonly runMoments: readonly { readonly mean: number; readonly sd: number }[]
  /** A row for each draw: the player's own factors of lies, logarithms over what was assumed, as `LieChain` has them. */
  readonly lies: readonly Float64Array[]
  readonly swings: Float64Array
  /** Mean number of shots of each club that were taken for strays. */
  readonly strays: readonly number[]
}

/**
 * Draws from the posterior of a player's pattern by Gibbs sampling: shots are shared out between good strikes, mishits
 * and strays, then every number is drawn given those sums (slice sampling), the factors that clubs share both with the
 * clubs' own parts held and with the numbers held (Yu & Meng, Journal of Computational and Graphical Statistics 20
 * (2011) 531–570), whether a known number has really changed from its club's own part (George & McCulloch, Journal of the
 * American Statistical Association 88 (1993) 881–889), runs and season in closed form, then the lies' factors. The same seed gives the same draws.
 */
export function samplePosterior(input: ChainInput): PosteriorDraws {
  const { prior, observations } = input
  const visited = observations.reduce(
    (sum, { shots }) => shots.ways.reduce((all, ways) => all + (ways?.carry.length ?? 1), sum),
    0,
  )
  const kept = Math.round(
    Math.min(KEPT_SWEEPS.most, Math.max(KEPT_SWEEPS.least, KEPT_SWEEPS.visitedShots / Math.max(1, visited))),
  )
  const chain = new PatternChain(input)
  for (let sweep = 0; sweep < SETTLING_SWEEPS; sweep++) chain.sweep()
  const numbers: Float64Array[] = []
  const runs: Float64Array[] = []
  const changes = new Float64Array(prior.centre.length)
  const runChanges = new Float64Array(prior.clubs)
  const lies: Float64Array[] = []
  const swings = new Float64Array(kept)
  const moments = Array.from({ length: prior.clubs }, () => ({ mean: 0, square: 0, variance: 0 }))
  const strays = new Array<number>(prior.clubs).fill(0)
  for (let draw = 0; draw < kept; draw++) {
    chain.sweep()
    numbers.push(chain.numbers.slice())
    runs.push(chain.runs.slice())
    addInto(changes, chain.changes, kept)
    addInto(runChanges, chain.runChanges, kept)
    lies.push(chain.lies.factors.slice())
    swings[draw] = chain.swing
    chain.runFamily.members.forEach(({ mean, sd }, club) => {
      const sum = moments[club] as (typeof moments)[number]
      sum.mean += mean / kept
      sum.square += mean ** 2 / kept
      sum.variance += sd ** 2 / kept
    })
    for (let club = 0; club < prior.clubs; club++)
      strays[club] = (strays[club] as number) + (chain.sums[club] as StrikeSums).strays / kept
  }
  return {
    numbers,
    runs,
    changes,
    runChanges,
    runMoments: moments.map(({ mean, square, variance }) => ({
      mean,
      sd: Math.sqrt(variance + Math.max(0, square - mean ** 2)),
    })),
    lies,
    swings,
    strays,
  }
}

/** Adds to means over so many. */
function addInto(means: Float64Array, values: Float64Array, count: number): void {
  for (let at = 0; at < means.length; at++) means[at] = (means[at] as number) + (values[at] as number) / count
}

import { CHANCE_OF_CHANGE } from './learn-settings.ts'
import { AT, type PatternPrior, SAMPLED } from './pattern-prior.ts'
import type { PosteriorDraws } from './sample-posterior.ts'
import type { Learned } from './summarise.ts'

/**
 * Chance that a number of club `index` has really changed since it was typed or learned. The draws are made with every
 * number free to have changed (`patternPrior(player, true)`); how much likelier the shots are without a change of this
 * one is then the mean, over the draws, of the prior's density without the change over its density with it (the
 * Savage–Dickey ratio in the general form of Verdinelli & Wasserman, Journal of the American Statistical Association 90
 * (1995) 614–618). Bayes' rule does the rest.
 */
export function chanceOfChange(
  draws: PosteriorDraws,
  free: PatternPrior,
  fixed: PatternPrior,
  index: number,
  number: Learned,
): number {
  const at = number === 'run' ? index : index * SAMPLED.length + AT[number]
  const rows = number === 'run' ? draws.ownRuns : draws.own
  const ownOf = (prior: PatternPrior): number =>
    number === 'run' ? (prior.run[index] as PatternPrior['run'][number]).doubt.own : (prior.own[at] as number)
  const wider = ownOf(free) / ownOf(fixed)
  let unchanged = 0
  for (const row of rows)
    unchanged += (wider * Math.exp(-0.5 * (row[at] as number) ** 2 * (wider ** 2 - 1))) / rows.length
  return CHANCE_OF_CHANGE / (CHANCE_OF_CHANGE + (1 - CHANCE_OF_CHANGE) * unchanged)
}

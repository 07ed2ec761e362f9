import { CHANCE_OF_CHANGE, CHANGE_SIZE } from './learn-settings.ts'
import type { Learned } from './summarise.ts'

/**
 * Chance that a number has really changed, given how far two independent looks at it lie apart and the variance of that
 * difference without a change. Two normal hypotheses, the difference with and without the variance of a real change,
 * weighed by Bayes' rule (Kass & Raftery, Journal of the American Statistical Association 90 (1995) 773–795).
 */
export function chanceOfChange(number: Learned, difference: number, variance: number): number {
  const changed = variance + CHANGE_SIZE[number] ** 2
  const logOddsOfNone =
    0.5 * Math.log(changed / variance) - 0.5 * difference ** 2 * (1 / variance - 1 / changed)
  const none = ((1 - CHANCE_OF_CHANGE) / CHANCE_OF_CHANGE) * Math.exp(logOddsOfNone)
  return 1 / (1 + none)
}

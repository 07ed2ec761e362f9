import { CHANCE_OF_CHANGE } from './learn-settings.ts'

/**
 * Chance that a number has really changed when its club's own part of it lies `part` from what was known: parts are
 * normal with spread `own` without a change, `changedOwn` with one (Bayes' rule).
 */
export function chanceOfChange(part: number, own: number, changedOwn: number): number {
  const density = (sd: number): number => Math.exp(-0.5 * (part / sd) ** 2) / sd
  const changed = CHANCE_OF_CHANGE * density(changedOwn)
  return changed / (changed + (1 - CHANCE_OF_CHANGE) * density(own))
}

import { PUTTING_PRIOR_SD, TEST_BALL_TELLS } from '../near-green-settings.ts'
import type { Putting } from '../player.ts'
import { withReading } from '../putting-values.ts'
import { PUTTING_GRID } from './test-day-settings.ts'

/** A putting profile with its chance; chances add up to 1. */
export interface WeighedPutting {
  readonly putting: Putting
  readonly chance: number
}

/**
 * The posterior of both putting spreads on a grid about what was assumed of the player: log-normal, the two apart, surer the
 * more putts it was learned from before. `logLikelihood` is asked with the whole errors, reading of the green included.
 */
export function weighPutting(
  putting: Putting,
  logLikelihood: (whole: Putting) => number,
): readonly WeighedPutting[] {
  const { nodes, sds } = PUTTING_GRID
  const priorSd = puttingPriorSd(putting)
  const steps = Array.from({ length: nodes }, (_, index) => sds * ((2 * index) / (nodes - 1) - 1))
  const grid = steps.flatMap((direction) =>
    steps.map((distance) => {
      const weighed = {
        directionSdDegrees: putting.directionSdDegrees * Math.exp(priorSd * direction),
        distanceSdShare: putting.distanceSdShare * Math.exp(priorSd * distance),
      }
      const logPrior = -(direction ** 2 + distance ** 2) / 2
      return { putting: weighed, logChance: logPrior + logLikelihood(withReading(weighed)) }
    }),
  )
  const most = Math.max(...grid.map(({ logChance }) => logChance))
  const total = grid.reduce((sum, { logChance }) => sum + Math.exp(logChance - most), 0)
  return grid.map(({ putting: one, logChance }) => ({
    putting: one,
    chance: Math.exp(logChance - most) / total,
  }))
}

/** How unsure the logarithm of a putting spread is before a test: less so the more putts it was learned from. */
export function puttingPriorSd({ shots = 0 }: Putting): number {
  return 1 / Math.sqrt(PUTTING_PRIOR_SD ** -2 + TEST_BALL_TELLS.puttSpread * shots)
}

/** A few profiles that stand for a posterior, each for the same chance: taken along the grid at equal steps of chance. */
export function profilesOf(fitted: readonly WeighedPutting[], count: number): readonly Putting[] {
  const profiles: Putting[] = []
  let sum = 0
  for (const { putting, chance } of fitted) {
    sum += chance
    while (profiles.length < count && sum > (profiles.length + 0.5) / count) profiles.push(putting)
  }
  return profiles
}

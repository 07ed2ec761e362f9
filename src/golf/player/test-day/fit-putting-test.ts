import { normalPdf } from '#numbers/statistics/normal.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import {
  PUTT_PAST_METRES,
  READING_DIRECTION_SD_DEGREES,
  READING_DISTANCE_SD_SHARE,
} from '../near-green-settings.ts'
import type { Player, Putting } from '../player.ts'
import { puttOutcomes } from '../putt-outcomes.ts'
import { puttingValues } from '../putting-values.ts'
import type { StationResult } from '../test-day-results.ts'
import { LEAVE_DIRECTIONS, PUTTING_GRID, PUTTING_PRIOR_SD } from './test-day-settings.ts'

/** A putting profile with its chance; chances add up to 1. */
export interface WeighedPutting {
  readonly putting: Putting
  readonly chance: number
}

/**
 * The posterior of both putting spreads on a grid about what was assumed of the player: log-normal, the two apart. A holed
 * or missed putt counts with its chance by the model of `putt-outcomes.ts`; the stop of a missed one with the density of
 * its distance from the hole, two independent normal errors, along and across.
 */
export function fitPuttingTest(
  player: Pick<Player, 'putting'>,
  results: readonly StationResult[],
): readonly WeighedPutting[] {
  const putts = results.filter(({ station, balls }) => station.kind === 'putt' && balls > 0)
  const aims = putts.map(({ station }) => intendedPast(player, station.metres))
  const { nodes, sds } = PUTTING_GRID
  const steps = Array.from({ length: nodes }, (_, index) => sds * ((2 * index) / (nodes - 1) - 1))
  const grid = steps.flatMap((direction) =>
    steps.map((distance) => {
      const putting = {
        directionSdDegrees: player.putting.directionSdDegrees * Math.exp(PUTTING_PRIOR_SD * direction),
        distanceSdShare: player.putting.distanceSdShare * Math.exp(PUTTING_PRIOR_SD * distance),
      }
      const whole = withReading(putting)
      let logChance = -(direction ** 2 + distance ** 2) / 2
      for (const [index, result] of putts.entries())
        logChance += logLikelihood(whole, result, aims[index] as number)
      return { putting, logChance }
    }),
  )
  const most = Math.max(...grid.map(({ logChance }) => logChance))
  const total = grid.reduce((sum, { logChance }) => sum + Math.exp(logChance - most), 0)
  return grid.map(({ putting, logChance }) => ({ putting, chance: Math.exp(logChance - most) / total }))
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

/** The stroke's own errors and those of reading the green, which a player has on the test green as on any other. */
function withReading({ directionSdDegrees, distanceSdShare }: Putting): Putting {
  return {
    directionSdDegrees: Math.hypot(directionSdDegrees, READING_DIRECTION_SD_DEGREES),
    distanceSdShare: Math.hypot(distanceSdShare, READING_DISTANCE_SD_SHARE),
  }
}

/** How far past the hole a player like this one means a putt to stop: with the fewest putts expected, metres. */
function intendedPast(player: Pick<Player, 'putting'>, metres: number): number {
  const { expected } = puttingValues(player)
  const cost = (past: number): number => {
    const { restMetres, weight } = puttOutcomes(withReading(player.putting), metres, past)
    return weight.reduce((sum, chance, index) => sum + chance * expected(restMetres[index] as number), 0)
  }
  return PUTT_PAST_METRES.reduce((best, past) => (cost(past) < cost(best) ? past : best))
}

function logLikelihood(
  putting: Putting,
  { station, holed, balls, leaves }: StationResult,
  past: number,
): number {
  const chance = Math.min(1 - 1e-9, Math.max(1e-9, puttOutcomes(putting, station.metres, past).holed))
  const measured = leaves.reduce(
    (sum, { metres }) => sum + Math.log(Math.max(1e-12, leaveDensity(putting, station.metres, past, metres))),
    0,
  )
  // A measured miss is told by where it stopped: that it was missed is in that already, but for what the hole took.
  const unmeasured = balls - holed - leaves.length
  return holed * Math.log(chance) + unmeasured * Math.log(1 - chance) + measured
}

/** Density of a ball's distance from the hole, 1/m, by a sum over directions. */
function leaveDensity(putting: Putting, metres: number, past: number, leave: number): number {
  const along = putting.distanceSdShare * (metres + past)
  const across = degreesToRadians(putting.directionSdDegrees) * (metres + past)
  let sum = 0
  for (let step = 0; step < LEAVE_DIRECTIONS; step++) {
    const angle = (2 * Math.PI * (step + 0.5)) / LEAVE_DIRECTIONS
    const beyond = leave * Math.cos(angle)
    const aside = leave * Math.sin(angle)
    sum += (normalPdf((beyond - past) / along) / along) * (normalPdf(aside / across) / across)
  }
  return (sum * leave * 2 * Math.PI) / LEAVE_DIRECTIONS
}

import { normalPdf } from '#numbers/statistics/normal.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import type { Player, Putting } from '../player.ts'
import { puttOutcomes } from '../putt-outcomes.ts'
import { cheapestPace } from '../struck-putts.ts'
import type { StationResult } from '../test-day-results.ts'
import { LEAVE_DIRECTIONS } from './test-day-settings.ts'
import { type WeighedPutting, weighPutting } from './weigh-putting.ts'

/**
 * The posterior of both putting spreads after a test. A holed or missed putt counts with its chance by the model of
 * `putt-outcomes.ts`; the stop of a missed one with the density of its distance from the hole, two independent normal
 * errors, along and across.
 */
export function fitPuttingTest(
  player: Pick<Player, 'putting'>,
  results: readonly StationResult[],
): readonly WeighedPutting[] {
  const putts = results.filter(({ station, balls }) => station.kind === 'putt' && balls > 0)
  const aims = putts.map(({ station }) => cheapestPace(player.putting, station.metres))
  return weighPutting(player.putting, (whole) =>
    putts.reduce((sum, result, index) => sum + logLikelihood(whole, result, aims[index] as number), 0),
  )
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

import { degreesToRadians } from '#numbers/units/units.ts'
import {
  FLAT_LANDING_DEGREES,
  FLAT_LOFT_DEGREES,
  LOW_LANDING_SHARE,
  LOW_SPIN_SHARE,
  REFERENCE_DENSITY,
  STEEP_LANDING_DEGREES,
  STEEP_LOFT_DEGREES,
  TABLE_STEP_SECONDS,
} from './flight-settings.ts'
import { type Air, type Launch, simulateFlight } from './simulate-flight.ts'

const STILL: Air = { density: REFERENCE_DENSITY, windRight: 0, windAlong: 0 }
const SLOWEST = 5
const FASTEST = 110
const NEAR_METRES = 0.01
const MOST_STEPS = 60
/** Launch angles tried, degrees, and halvings between them. */
const LOWEST_LAUNCH = 5
const HIGHEST_LAUNCH = 60
const ANGLE_HALVINGS = 11

const known = new Map<string, Launch>()

/**
 * The launch of a club of this loft (degrees) that carries so many metres at reference conditions and comes down as
 * steeply as is common practice for the loft, whoever swings it: angle and speed are what does that, spin goes by the
 * loft. A slow swing launches higher for it. Absolute carries of any public model are off by a tenth; so only changes
 * are taken from it. A low shot lands flatter and spins less. Launches found once are kept.
 */
export function nominalLaunch(loftDegrees: number, carryMetres: number, isLow = false): Launch {
  const key = `${loftDegrees} ${carryMetres} ${isLow}`
  const found = known.get(key) ?? findLaunch(loftDegrees, carryMetres, isLow)
  known.set(key, found)
  return found
}

/** Landing grows steeper with the launch, so the angle is found by halving. */
function findLaunch(loftDegrees: number, carryMetres: number, isLow: boolean): Launch {
  const share = (loftDegrees - FLAT_LOFT_DEGREES) / (STEEP_LOFT_DEGREES - FLAT_LOFT_DEGREES)
  const usual =
    FLAT_LANDING_DEGREES + Math.min(1, Math.max(0, share)) * (STEEP_LANDING_DEGREES - FLAT_LANDING_DEGREES)
  const wanted = degreesToRadians(isLow ? LOW_LANDING_SHARE * usual : usual)
  const spinRpm = (1200 + 150 * loftDegrees) * (isLow ? LOW_SPIN_SHARE : 1)
  let low = LOWEST_LAUNCH
  let high = HIGHEST_LAUNCH
  for (let halving = 0; halving < ANGLE_HALVINGS; halving++) {
    const middle = (low + high) / 2
    const launch = withCarry(middle, spinRpm, carryMetres)
    if (simulateFlight(launch, STILL, 0, TABLE_STEP_SECONDS).angle < wanted) low = middle
    else high = middle
  }
  return withCarry((low + high) / 2, spinRpm, carryMetres)
}

/** The speed for a carry, by the false position with every third step a halving: carry grows with speed. */
function withCarry(launchDegrees: number, spinRpm: number, carryMetres: number): Launch {
  const shape = { angle: degreesToRadians(launchDegrees), spinRpm, axisTilt: 0 }
  const missOf = (speed: number): number =>
    simulateFlight({ ...shape, speed }, STILL, 0, TABLE_STEP_SECONDS).carry - carryMetres
  let slow = SLOWEST
  let fast = FASTEST
  let slowMiss = missOf(slow)
  let fastMiss = missOf(fast)
  let speed = slow
  for (let step = 0; step < MOST_STEPS; step++) {
    const guess = slow + ((fast - slow) * slowMiss) / (slowMiss - fastMiss)
    speed = step % 3 === 2 || !(guess > slow && guess < fast) ? (slow + fast) / 2 : guess
    const miss = missOf(speed)
    if (Math.abs(miss) < NEAR_METRES) break
    if (miss < 0) {
      slow = speed
      slowMiss = miss
    } else {
      fast = speed
      fastMiss = miss
    }
  }
  return { ...shape, speed }
}

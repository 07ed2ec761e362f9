import { degreesToRadians } from '#numbers/units/units.ts'
import { REFERENCE_DENSITY, TABLE_STEP_SECONDS } from './flight-settings.ts'
import { type Air, type Launch, simulateFlight } from './simulate-flight.ts'

const STILL: Air = { density: REFERENCE_DENSITY, windRight: 0, windAlong: 0 }
const SLOWEST = 8
const FASTEST = 95
const NEAR_METRES = 0.01
const MOST_STEPS = 60

const known = new Map<string, Launch>()

/**
 * The launch of a club of this loft (degrees) that carries so many metres at reference conditions: launch angle and
 * spin by the shape that is common practice for the loft, speed whatever carries the player's own distance. Absolute
 * carries of any public model are off by a tenth; so only changes are taken from it. Launches found once are kept.
 */
export function nominalLaunch(loftDegrees: number, carryMetres: number): Launch {
  const key = `${loftDegrees} ${carryMetres}`
  const found = known.get(key) ?? findLaunch(loftDegrees, carryMetres)
  known.set(key, found)
  return found
}

/** By halving, with the false position's guess where it falls inside: carry grows with speed. */
function findLaunch(loftDegrees: number, carryMetres: number): Launch {
  const shape = {
    angle: degreesToRadians(8 + 0.38 * loftDegrees),
    spinRpm: 1200 + 150 * loftDegrees,
    axisTilt: 0,
  }
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

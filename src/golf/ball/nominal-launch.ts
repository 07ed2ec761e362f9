import { degreesToRadians } from '#numbers/units/units.ts'
import { REFERENCE_DENSITY } from './flight-settings.ts'
import { type Air, type Launch, simulateFlight } from './simulate-flight.ts'

const STILL: Air = { density: REFERENCE_DENSITY, windRight: 0, windAlong: 0 }
const SLOWEST = 8
const FASTEST = 95
const HALVINGS = 40

/**
 * The launch of a club of this loft (degrees) that carries so many metres at reference conditions: launch angle and
 * spin by the shape that is common practice for the loft, speed whatever carries the player's own distance. Absolute
 * carries of any public model are off by a tenth; so only changes are taken from it.
 */
export function nominalLaunch(loftDegrees: number, carryMetres: number): Launch {
  const shape = {
    angle: degreesToRadians(8 + 0.38 * loftDegrees),
    spinRpm: 1200 + 150 * loftDegrees,
    axisTilt: 0,
  }
  let slow = SLOWEST
  let fast = FASTEST
  for (let halving = 0; halving < HALVINGS; halving++) {
    const speed = (slow + fast) / 2
    if (simulateFlight({ ...shape, speed }, STILL, 0).carry < carryMetres) slow = speed
    else fast = speed
  }
  return { ...shape, speed: (slow + fast) / 2 }
}

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { degreesToRadians } from '#numbers/units/units.ts'
import { airDensity } from './air.ts'
import { windShareOverGrass } from './conditions.ts'
import { FLAT_LOFT_DEGREES, STEEP_LOFT_DEGREES } from './flight-settings.ts'
import { nominalLaunch } from './nominal-launch.ts'
import { runOfLanding } from './run-of-landing.ts'
import { type Air, type Launch, simulateFlight } from './simulate-flight.ts'

/**
 * Launches that clubs give: a loft and a carry that goes with it. Thin air helps these. It does not help every launch
 * that can be written down: a slow, flat, spinning one lives by its lift.
 */
const club = fc.record({
  loftDegrees: fc.integer({ min: 9, max: 58 }),
  reach: fc.double({ min: 0.4, max: 1, noNaN: true }),
})
const carryOf = ({ loftDegrees, reach }: { loftDegrees: number; reach: number }): number =>
  // About what the fastest swings carry with the loft: 290 m with a driver, 100 m with a lob wedge.
  Math.round(reach * (290 - (190 * (loftDegrees - 9)) / 49))
const launchOf = (one: { loftDegrees: number; reach: number }): Launch =>
  nominalLaunch(one.loftDegrees, carryOf(one))

const weather = fc.record({
  celsius: fc.double({ min: -5, max: 35, noNaN: true }),
  pascal: fc.double({ min: 75_000, max: 104_000, noNaN: true }),
  humidity: fc.double({ min: 0, max: 0.9, noNaN: true }),
})
const more = fc.double({ min: 0.02, max: 1, noNaN: true })
/** Metres: what the integration and its last step may err by. */
const HAIR = 0.005

const still = (density: number): Air => ({ density, windRight: 0, windAlong: 0 })

describe('orders of the flight', () => {
  it('carries no less the warmer, the more humid the air and the lower its pressure', () => {
    fc.assert(
      fc.property(club, weather, more, (one, { celsius, pascal, humidity }, share) => {
        const launch = launchOf(one)
        const density = airDensity(celsius, pascal, humidity)
        const { carry } = simulateFlight(launch, still(density), 0)
        for (const thinner of [
          airDensity(celsius + 10 * share, pascal, humidity),
          airDensity(celsius, pascal - 5000 * share, humidity),
          airDensity(celsius, pascal, humidity + 0.1 * share),
        ]) {
          expect(thinner).toBeLessThan(density)
          expect(simulateFlight(launch, still(thinner), 0).carry).toBeGreaterThan(carry - HAIR)
        }
      }),
      { numRuns: 60 },
    )
  })

  it('comes down more steeply the more loft carries the ball as far', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 80, max: 160 }),
        fc.integer({ min: 9, max: 52 }),
        fc.integer({ min: 1, max: 6 }),
        (carry, loft, lofter) => {
          const angle = (degrees: number): number =>
            simulateFlight(nominalLaunch(degrees, carry), still(1.225), 0).angle
          // Lofts beyond the ends of the landing table come down alike.
          const isInTable = loft + lofter > FLAT_LOFT_DEGREES && loft < STEEP_LOFT_DEGREES
          expect(angle(loft + lofter)).toBeGreaterThan(angle(loft) + (isInTable ? 0 : -0.005))
        },
      ),
      { numRuns: 60 },
    )
  })

  it('is the mirror image for a left-hander: tilt and side wind change sides, and so does the ball', () => {
    fc.assert(
      fc.property(
        club,
        fc.double({ min: -30, max: 30, noNaN: true }),
        fc.double({ min: -15, max: 15, noNaN: true }),
        fc.double({ min: -15, max: 15, noNaN: true }),
        (one, tiltDegrees, windRight, windAlong) => {
          const launch = { ...launchOf(one), axisTilt: degreesToRadians(tiltDegrees) }
          const air = { density: 1.2, windRight, windAlong, windShare: windShareOverGrass }
          const right = simulateFlight(launch, air, 0)
          const left = simulateFlight(
            { ...launch, axisTilt: -launch.axisTilt },
            { ...air, windRight: -windRight },
            0,
          )
          expect(left.right).toBeCloseTo(-right.right, 9)
          expect(left.heading).toBeCloseTo(-right.heading, 9)
          expect(left.carry).toBeCloseTo(right.carry, 9)
          expect(runOfLanding(left, 0)).toBeCloseTo(runOfLanding(right, 0), 9)
        },
      ),
    )
  })
})

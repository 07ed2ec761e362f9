import { describe, expect, it } from 'vitest'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import { windShareOverGrass } from './conditions.ts'
import { LONGEST_FLIGHT_SECONDS, MOST_BOUNCES, TABLE_STEP_SECONDS } from './flight-settings.ts'
import { runOfLanding } from './run-of-landing.ts'
import { type Air, type Launch, simulateFlight } from './simulate-flight.ts'
import { simulateRun } from './simulate-run.ts'

const SHOTS = 100_000
/** Parts, so that a hanging flight is seen in one of them and no part runs long. */
const PARTS = 10

describe('any flight and run', () => {
  // Bounds: a ball at 95 m/s in thin air, falling 60 m with a storm behind it, goes 600 m; nothing goes further. A storm
  // in the face brings a soft high ball back over the player's head. Without air 95 m/s upwards by 70 degrees would
  // reach 406 m.
  it.each(Array.from({ length: PARTS }, (_, part) => part))(
    'ends in a finite place inside the bounds, part %i',
    (part) => {
      const next = seededGenerator(4100 + part)
      const between = (low: number, high: number): number => low + (high - low) * next()
      for (let shot = 0; shot < SHOTS / PARTS; shot++) {
        const wind = between(0, 25)
        const toward = between(0, 2 * Math.PI)
        const launch: Launch = {
          speed: between(5, 95),
          angle: degreesToRadians(between(-5, 70)),
          spinRpm: between(0, 15_000),
          axisTilt: degreesToRadians(between(-45, 45)),
        }
        const air: Air = {
          density: between(0.7, 1.4),
          windRight: wind * Math.sin(toward),
          windAlong: wind * Math.cos(toward),
          windShare: windShareOverGrass,
        }
        const rise = between(-60, 60)
        const grade = Math.tan(degreesToRadians(between(-20, 20)))
        const landing = simulateFlight(launch, air, rise, TABLE_STEP_SECONDS)
        const run = runOfLanding(landing, grade)
        const isInside =
          landing.carry > -350 &&
          landing.carry < 650 &&
          Math.abs(landing.right) < 500 &&
          landing.apex >= 0 &&
          landing.apex < 406 &&
          landing.seconds >= 0 &&
          landing.seconds < LONGEST_FLIGHT_SECONDS &&
          landing.angle > -1e-9 &&
          landing.angle <= Math.PI / 2 &&
          landing.speed >= 0 &&
          landing.speed < 100 &&
          landing.spinRpm >= 0 &&
          landing.spinRpm <= launch.spinRpm &&
          Number.isFinite(landing.heading) &&
          Math.abs(run) < 80
        // Compared by hand: an assertion for each of so many numbers would take longer than the flights.
        if (!isInside) expect.fail(JSON.stringify({ part, shot, launch, air, rise, grade, landing, run }))
      }
    },
  )

  it('comes to rest by itself, never by the guard on bounces', () => {
    const next = seededGenerator(4200)
    const between = (low: number, high: number): number => low + (high - low) * next()
    let most = 0
    for (let landing = 0; landing < SHOTS; landing++) {
      const touchdown = {
        speed: between(0.3, 25),
        angle: between(0.15, Math.PI / 2),
        spinRpm: between(0, 15_000),
      }
      most = Math.max(most, simulateRun(touchdown, degreesToRadians(between(-20, 20))).bounces)
    }
    expect(most).toBeLessThan(MOST_BOUNCES / 4)
  })

  it('comes down at its highest point when it never gets as high as the ground it is hit to', () => {
    const launch: Launch = { speed: 20, angle: degreesToRadians(30), spinRpm: 0, axisTilt: 0 }
    // Closed form in a vacuum: the highest point lies at half the carry, v\u00b2 sin 2\u03b1 / 2g.
    const landing = simulateFlight(launch, { density: 0, windRight: 0, windAlong: 0 }, 60, TABLE_STEP_SECONDS)
    expect(landing.carry).toBeCloseTo((20 ** 2 * Math.sin(degreesToRadians(60))) / (2 * 9.80665), 6)
    expect(landing.angle).toBeCloseTo(0, 9)
  })
})

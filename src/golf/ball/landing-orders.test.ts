import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { degreesToRadians } from '#numbers/units/units.ts'
import { windShareOverGrass } from './conditions.ts'
import { REFERENCE_DENSITY } from './flight-settings.ts'
import { flights } from './flights.ts'
import { runOfLanding } from './run-of-landing.ts'
import { greenRunsToday, runToday } from './run-today.ts'
import { PENNER_TURF, simulateRun } from './simulate-run.ts'
import { type GroundToday, NORMAL_GROUND, runShare, turfOf } from './turf.ts'

// The orders of `model.md` 2 "Landing". Landings are those that clubs give: steeper and with more spin the more loft.
const landing = fc
  .record({
    steepness: fc.double({ min: 0, max: 1, noNaN: true }),
    speed: fc.double({ min: 16, max: 25, noNaN: true }),
    spin: fc.double({ min: 0.7, max: 1.3, noNaN: true }),
  })
  .map(({ steepness, speed, spin }) => ({
    angle: degreesToRadians(38 + 13 * steepness),
    speed,
    spinRpm: spin * (2100 + 6000 * steepness),
  }))
const firmness = fc.double({ min: 0.3, max: 1.5, noNaN: true })
const turf = (
  surface: Parameters<typeof turfOf>[0],
  today: Partial<GroundToday> = {},
): typeof PENNER_TURF => {
  const made = turfOf(surface, { ...NORMAL_GROUND, ...today })
  if (made === null) throw new Error(`a ball stops in ${surface}`)
  return made
}
/** Metres: an impact that only just rolls, or only just slips, jumps by so much from one turf to the next. */
const HAIR = 0.15

/** Long grass also holds a ball that would come back, so only what runs on is compared from grass to grass. */
const forward = (one: Parameters<typeof runOfLanding>[0], ground: typeof PENNER_TURF): number =>
  Math.max(0, runOfLanding(one, 0, ground))

const CALM = {
  windX: 0,
  windY: 0,
  windShare: windShareOverGrass,
  density: REFERENCE_DENSITY,
  risePerMetre: 0,
  riseHeading: 0,
}
const WEDGE = { loft: 56, carry: 72, run: 1 }
const onGreen = (firm: number, club: { loft: number; carry: number; run: number }, spinShare = 1): number =>
  greenRunsToday(
    club.run,
    flights(CALM).changeFor(club.loft, club.carry, 0),
    { ...NORMAL_GROUND, firmness: firm },
    spinShare,
    false,
  ).level

describe('orders of the landing', () => {
  it('runs further the firmer, on every surface', () => {
    fc.assert(
      fc.property(landing, firmness, (one, soft) => {
        for (const surface of ['fairway', 'first-cut', 'rough', 'green', 'fringe'] as const)
          expect(forward(one, turf(surface, { firmness: soft + 0.3 }))).toBeGreaterThan(
            forward(one, turf(surface, { firmness: soft })) - HAIR,
          )
      }),
      { numRuns: 100 },
    )
  })

  it('multiplies a drive\u2019s run by the firmness, within a twentieth', () => {
    const drive = { speed: 25, angle: degreesToRadians(38), spinRpm: 2100 }
    const normal = runOfLanding(drive, 0)
    for (const firm of [0.2, 0.4, 0.6, 0.8, 1, 1.2, 1.5, 1.7, 2.2, 2.5])
      expect(runOfLanding(drive, 0, turf('fairway', { firmness: firm })) / (firm * normal)).toBeCloseTo(1, 1)
    expect(turf('fairway')).toEqual(PENNER_TURF)
  })

  it('runs further on fairway than on first cut, rough and heavy, and further in short rough than in long', () => {
    fc.assert(
      fc.property(landing, firmness, (one, firm) => {
        const runs = [
          forward(one, turf('fairway', { firmness: firm })),
          forward(one, turf('first-cut', { firmness: firm })),
          forward(one, turf('rough', { firmness: firm, rough: 'short' })),
          forward(one, turf('rough', { firmness: firm })),
          forward(one, turf('rough', { firmness: firm, rough: 'long' })),
          forward(one, turf('heavy', { firmness: firm })),
        ]
        for (const [index, run] of runs.slice(1).entries())
          expect(run).toBeLessThan((runs[index] as number) + HAIR)
      }),
      { numRuns: 100 },
    )
    const shares = (['short', 'normal', 'long'] as const).map((rough) => runShare('rough', rough))
    expect([runShare('first-cut'), ...shares, runShare('heavy'), runShare('bunker')]).toEqual(
      [runShare('first-cut'), ...shares, runShare('heavy'), 0].toSorted((a, b) => b - a),
    )
    expect(turfOf('bunker', NORMAL_GROUND)).toBeNull()
  })

  it('runs less on turf that rises, the flatter the landing and the less it spins the further, on any turf', () => {
    fc.assert(
      fc.property(landing, firmness, (one, firm) => {
        for (const surface of ['fairway', 'green'] as const) {
          const ground = turf(surface, { firmness: firm })
          const level = runOfLanding(one, 0, ground)
          expect(runOfLanding(one, 0.05, ground)).toBeLessThan(level + HAIR)
          expect(runOfLanding(one, -0.05, ground)).toBeGreaterThan(level - HAIR)
          expect(runOfLanding({ ...one, angle: one.angle + 0.1 }, 0, ground)).toBeLessThan(level + HAIR)
          expect(runOfLanding({ ...one, spinRpm: one.spinRpm + 1500 }, 0, ground)).toBeLessThan(level + HAIR)
        }
      }),
      { numRuns: 100 },
    )
  })

  it('rolls further on a faster green', () => {
    const one = { speed: 22, angle: degreesToRadians(45), spinRpm: 3000 }
    const [slow, fast] = [7, 12].map(
      (feet) => simulateRun(one, 0, turf('green', { greenSpeedFeet: feet })).roll,
    )
    // The ramp test: a roll goes as the speed of the green.
    expect((fast as number) / (slow as number)).toBeCloseTo(12 / 7, 9)
  })

  it('stops or brings back a spinning wedge on a soft green, and lets it run on a firm one', () => {
    for (const carry of [60, 72, 88]) {
      expect(onGreen(0.4, { ...WEDGE, carry })).toBeLessThan(0.5)
      expect(onGreen(1.7, { ...WEDGE, carry })).toBeGreaterThan(1)
    }
    // More loft and spin come back: a lob wedge on the same soft green.
    expect(onGreen(0.4, { loft: 60, carry: 60, run: 0.5 })).toBeLessThan(0)
    // Without its spin (a flier) it runs on.
    expect(onGreen(1, WEDGE, 0.5)).toBeGreaterThan(onGreen(1, WEDGE) + 1)
    expect(runToday(5, flights(CALM).changeFor(34, 133, 0), 0.6)).toBeGreaterThan(5)
  })

  it('runs less on a green than on the fairway of the same day, for every club', () => {
    for (const [loft, carry, run] of [
      [10.5, 200, 19],
      [24, 160, 11],
      [34, 130, 5.5],
      [46, 98, 2.7],
    ] as const)
      for (const firm of [0.4, 1, 1.7]) {
        const change = flights(CALM).changeFor(loft, carry, 0)
        expect(onGreen(firm, { loft, carry, run })).toBeLessThan(runToday(run, change) * firm + HAIR)
      }
  })
})

import { readFileSync } from 'node:fs'
import Papa from 'papaparse'
import { describe, expect, it } from 'vitest'
import { TABLE_STEP_SECONDS } from './flight-settings.ts'
import { type Air, type Launch, simulateFlight } from './simulate-flight.ts'

const degrees = (value: number): number => (value * Math.PI) / 180
const STILL: Air = { density: 1.225, windRight: 0, windAlong: 0 }

/** Conditions as the reference file writes them. */
function setting(condition: string): { air: Air; rise: number; tilt: number } {
  const number = (pattern: RegExp): number => Number(pattern.exec(condition)?.[1] ?? 0)
  return {
    air: {
      density: 1.225 * (number(/air density x ([\d.]+)/) || 1),
      windAlong: number(/wind ([+-][\d.]+) m\/s along/),
      windRight: number(/wind ([\d.]+) m\/s from the left/),
    },
    rise: number(/landing ([+-]\d+) m above/),
    tilt: degrees(number(/tilted (\d+) deg right/)),
  }
}

const rows = Papa.parse<Record<string, string>>(
  readFileSync('test/fixtures/reference/trajectory_bearman_harvey_derived.csv', 'utf8'),
  { header: true, skipEmptyLines: true },
).data

describe('simulateFlight', () => {
  // Derived by others' throw-away code from the published grid of Bearman & Harvey 1976 (reference table 3.4): the
  // figures are rounded to 0.1 m, 0.1 degree and 1 rpm.
  it.each(rows.map((row) => [`${row.case}, ${row.condition}`, row] as const))(
    'flies as derived elsewhere: %s',
    (_, row) => {
      const { air, rise, tilt } = setting(row.condition ?? '')
      const launch: Launch = {
        speed: Number(row.speed_m_per_s),
        angle: degrees(Number(row.launch_deg)),
        spinRpm: Number(row.spin_rpm),
        axisTilt: tilt,
      }
      const landing = simulateFlight(launch, air, rise)
      expect(Math.abs(landing.carry - Number(row.carry_m))).toBeLessThan(0.15)
      expect(Math.abs(landing.right - Number(row.side_m_right))).toBeLessThan(0.15)
      expect(Math.abs(landing.apex - Number(row.apex_m))).toBeLessThan(0.15)
      expect(Math.abs(landing.seconds - Number(row.time_s))).toBeLessThan(0.011)
      expect(Math.abs((landing.angle * 180) / Math.PI - Number(row.land_angle_deg))).toBeLessThan(0.15)
      expect(Math.abs(landing.speed - Number(row.land_speed_m_per_s))).toBeLessThan(0.11)
      expect(Math.abs(landing.spinRpm - Number(row.land_spin_rpm))).toBeLessThan(2)
    },
  )

  it('hardly changes when the step is halved', () => {
    const launch: Launch = { speed: 65, angle: degrees(12), spinRpm: 3000, axisTilt: degrees(8) }
    const air = { ...STILL, windAlong: -6, windRight: 3 }
    const coarse = simulateFlight(launch, air, 0)
    const fine = simulateFlight(launch, air, 0, 0.0025)
    expect(Math.abs(coarse.carry - fine.carry)).toBeLessThan(0.02)
    expect(Math.abs(coarse.right - fine.right)).toBeLessThan(0.02)
  })

  it('gives the same shares of carry with the step of the tables', () => {
    const launch: Launch = { speed: 50, angle: degrees(19), spinRpm: 5700, axisTilt: 0 }
    const air = { ...STILL, windAlong: -7, windRight: 4 }
    const share = (step: number): number =>
      simulateFlight(launch, air, 0, step).carry / simulateFlight(launch, STILL, 0, step).carry
    expect(Math.abs(share(TABLE_STEP_SECONDS) - share(0.0025))).toBeLessThan(0.0005)
  })

  // Closed form: without air a ball carries v² sin 2α / g.
  it('flies a parabola in a vacuum', () => {
    const landing = simulateFlight(
      { speed: 40, angle: degrees(30), spinRpm: 3000, axisTilt: 0 },
      { ...STILL, density: 0 },
      0,
    )
    expect(landing.carry).toBeCloseTo((40 ** 2 * Math.sin(degrees(60))) / 9.80665, 1)
    expect(landing.angle).toBeCloseTo(degrees(30), 2)
  })

  it('mirrors: wind and tilt from the other side give the mirrored landing', () => {
    const launch: Launch = { speed: 55, angle: degrees(15), spinRpm: 4500, axisTilt: degrees(6) }
    const air = { ...STILL, windRight: 4 }
    const right = simulateFlight(launch, air, 0)
    const left = simulateFlight({ ...launch, axisTilt: -launch.axisTilt }, { ...air, windRight: -4 }, 0)
    expect(left.right).toBeCloseTo(-right.right, 9)
    expect(left.carry).toBeCloseTo(right.carry, 9)
  })
})

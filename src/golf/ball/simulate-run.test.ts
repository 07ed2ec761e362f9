import { readFileSync } from 'node:fs'
import Papa from 'papaparse'
import { describe, expect, it } from 'vitest'
import { craterTilt, restitution, simulateRun } from './simulate-run.ts'

const degrees = (value: number): number => (value * Math.PI) / 180

const rows = Papa.parse<Record<string, string>>(
  readFileSync('test/fixtures/reference/run_penner_derived.csv', 'utf8'),
  {
    header: true,
    skipEmptyLines: true,
  },
).data.filter((row) => row.angle_convention === 'phi from the vertical')

describe('simulateRun', () => {
  // Derived by others' throw-away code from Penner's equations (reference section 4), rounded to 0.1 m.
  it.each(
    rows.map(
      (row) =>
        [
          `${row.land_speed_m_per_s} m/s, ${row.land_angle_below_horizontal_deg}°, ${row.backspin_rpm} rpm`,
          row,
        ] as const,
    ),
  )('runs as derived elsewhere: %s', (_, row) => {
    const run = simulateRun({
      speed: Number(row.land_speed_m_per_s),
      angle: degrees(Number(row.land_angle_below_horizontal_deg)),
      spinRpm: Number(row.backspin_rpm),
    })
    expect(Math.abs(run.bounce - Number(row.bounce_m))).toBeLessThan(0.1)
    expect(Math.abs(run.roll - Number(row.roll_m))).toBeLessThan(0.1)
    expect(run.bounces).toBe(Number(row.bounces))
  })

  // Penner 2002: e = 0.510 − 0.0375 v + 0.000903 v²; the reference lists e(1) 0.473, e(5) 0.345, e(10) 0.225, e(15) 0.151, e(20) 0.121.
  it('keeps the published share of normal speed', () => {
    for (const [speed, share] of [
      [1, 0.473],
      [5, 0.345],
      [10, 0.225],
      [15, 0.151],
      [20, 0.121],
      [25, 0.12],
    ] as const)
      expect(restitution(speed)).toBeCloseTo(share, 2)
  })

  it('digs no slope when the ball drops straight down, and 15.4° at the reference impact', () => {
    expect(craterTilt(20, 0)).toBe(0)
    expect(craterTilt(18.6, degrees(44.4))).toBeCloseTo(degrees(15.4), 12)
  })

  it('runs less the steeper it lands and the more it spins', () => {
    const run = (angle: number, spinRpm: number): number => {
      const { bounce, roll } = simulateRun({ speed: 25, angle: degrees(angle), spinRpm })
      return bounce + roll
    }
    expect(run(35, 2500)).toBeGreaterThan(run(42, 2500))
    expect(run(42, 2500)).toBeGreaterThan(run(50, 2500))
    expect(run(45, 2500)).toBeGreaterThan(run(45, 5000))
    expect(run(45, 5000)).toBeGreaterThan(run(45, 9000))
  })

  // Order: downslope > level > upslope for the same flight, the ground tilted under it.
  it('runs less on ground that rises and more on ground that falls', () => {
    for (const [speed, angle, spinRpm] of [
      [26, 38, 2400],
      [23, 47, 5200],
      [21, 50, 8000],
    ] as const) {
      const runs = [-6, -3, 0, 3, 6].map((slope) => {
        const { bounce, roll } = simulateRun(
          { speed, angle: degrees(angle + slope), spinRpm },
          degrees(slope),
        )
        return bounce + roll
      })
      for (const [index, run] of runs.entries())
        if (index > 0) expect(run).toBeLessThan(runs[index - 1] as number)
    }
  })
})

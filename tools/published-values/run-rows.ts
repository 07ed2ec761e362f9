import { craterTilt, restitution, simulateRun } from '../../src/golf/ball/simulate-run.ts'
import type { PublishedRow } from './published-row.ts'
import { referenceRows } from './reference-rows.ts'

const PENNER = 'Penner, The run of a golf ball, Canadian Journal of Physics 80 (2002)'

const RESTITUTION = [
  [1, 0.473],
  [5, 0.345],
  [10, 0.225],
  [15, 0.151],
  [20, 0.121],
  [25, 0.12],
] as const

/** Bounce and roll by landing speed, angle and spin; restitution by speed; the tilt of the reference crater. */
export function runRows(): PublishedRow[] {
  const runs = referenceRows('run_penner_derived.csv').map((row): PublishedRow => {
    const isFromGround = row.angle_convention !== 'phi from the vertical'
    const run = simulateRun({
      speed: Number(row.land_speed_m_per_s),
      angle: radians(Number(row.land_angle_below_horizontal_deg)),
      spinRpm: Number(row.backspin_rpm),
    })
    const landing = `${row.land_speed_m_per_s} m/s, ${row.land_angle_below_horizontal_deg}°, ${row.backspin_rpm} rev/min`
    return {
      what: `run after ${landing}; slant read from the ${isFromGround ? 'ground' : 'vertical'}`,
      unit: 'm',
      published: Number(row.run_m),
      source: `computed elsewhere from ${PENNER}`,
      status: row.status ?? '',
      ours: run.bounce + run.roll,
      decimals: 1,
      bound: 0.1,
      ...(isFromGround && { reason: FROM_GROUND }),
    }
  })
  const shares = RESTITUTION.map(([speed, published]) => ({
    what: `share of normal speed kept at ${speed} m/s`,
    unit: '',
    published,
    source: PENNER,
    status: 'VERIFIED (b)',
    ours: restitution(speed),
    decimals: 3,
    bound: 0.001,
  }))
  const tilt = {
    what: 'tilt of the crater at 18.6 m/s and 44.4° from the vertical',
    unit: '°',
    published: 15.4,
    source: PENNER,
    status: 'VERIFIED (b)',
    ours: (craterTilt(18.6, radians(44.4)) * 180) / Math.PI,
    decimals: 1,
    bound: 0.1,
  }
  return [...runs, ...shares, tilt]
}

const FROM_GROUND =
  'The other reading of the paper. We measure its slant from the vertical, so that a ball that drops straight down digs no slope and drives run as far as they do.'

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180
}

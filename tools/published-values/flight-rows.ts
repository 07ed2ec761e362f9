import { type Landing, simulateFlight } from '../../src/golf/ball/simulate-flight.ts'
import type { PublishedRow } from './published-row.ts'
import { referenceRows } from './reference-rows.ts'

const SOURCE =
  'computed elsewhere from the grid of Bearman & Harvey, Aeronautical Quarterly 27 (1976), and the spin decay of Smits & Smith (1994)'

/** Carry of every derived trajectory, and its drift where wind or axis push it sideways; apex and landing in still air. */
export function flightRows(): PublishedRow[] {
  return referenceRows('trajectory_bearman_harvey_derived.csv').flatMap((row) => {
    const landing = flown(row)
    const about = `${row.speed_m_per_s} m/s, ${row.launch_deg}°, ${row.spin_rpm} rev/min; ${inWords(row.condition ?? '')}`
    const entry = (name: string, unit: string, column: string, ours: number): PublishedRow => ({
      what: `${name}: ${about}`,
      unit,
      published: Number(row[column]),
      source: SOURCE,
      status: row.status ?? '',
      ours,
      decimals: 1,
      bound: 0.1,
    })
    const rows = [entry('carry', 'm', 'carry_m', landing.carry)]
    if (Math.abs(Number(row.side_m_right)) > 0) rows.push(entry('drift', 'm', 'side_m_right', landing.right))
    if (row.condition?.startsWith('still'))
      rows.push(
        entry('apex', 'm', 'apex_m', landing.apex),
        entry('landing angle', '°', 'land_angle_deg', (landing.angle * 180) / Math.PI),
      )
    return rows
  })
}

function flown(row: Readonly<Record<string, string>>): Landing {
  const condition = row.condition ?? ''
  const number = (pattern: RegExp): number => Number(pattern.exec(condition)?.[1] ?? 0)
  return simulateFlight(
    {
      speed: Number(row.speed_m_per_s),
      angle: radians(Number(row.launch_deg)),
      spinRpm: Number(row.spin_rpm),
      axisTilt: radians(number(/tilted (\d+) deg right/)),
    },
    {
      density: 1.225 * (number(/air density x ([\d.]+)/) || 1),
      windAlong: number(/wind ([+-][\d.]+) m\/s along/),
      windRight: number(/wind ([\d.]+) m\/s from the left/),
    },
    number(/landing ([+-]\d+) m above/),
  )
}

function inWords(condition: string): string {
  return condition
    .replace(/wind -(\d+) m\/s along.*/, '$1 m/s against')
    .replace(/wind \+(\d+) m\/s along.*/, '$1 m/s behind')
    .replace('still air 1.225, level', 'still air')
    .replace(/landing -(\d+) m above launch/, 'landing $1 m lower')
    .replace(/landing \+(\d+) m above launch/, 'landing $1 m higher')
    .replace('air density x', 'air density times')
    .replace(/(\d+) deg right/, '$1° to the right')
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180
}

import type { ShotRecord } from '#golf/player/shot-record.ts'
import { METRES_PER_YARD } from '#numbers/units/units.ts'

/**
 * Shots as a table with our own columns, lengths in the unit asked for, to a thousandth of it: read back by
 * `readShotTables` they are the same shots. What is not known is left empty.
 */
export function encodeShots(shots: readonly ShotRecord[], units: 'yards' | 'metres'): string {
  const [sign, metres] = units === 'yards' ? ['yd', METRES_PER_YARD] : ['m', 1]
  const length = (value: number | null): string =>
    value === null ? '' : String(Math.round((1000 * value) / metres) / 1000 + 0)
  const rows = shots.map(({ date, club, lie, carryMetres, totalMetres, offlineMetres, strike }) =>
    [
      date ?? '',
      club,
      lie ?? '',
      length(carryMetres),
      length(totalMetres),
      length(offlineMetres),
      '',
      strike ?? '',
    ].join(','),
  )
  return `${[`date,club,lie,carry_${sign},total_${sign},offline_${sign},planned,strike`, ...rows].join('\n')}\n`
}

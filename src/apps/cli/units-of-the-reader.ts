import { Failure } from '#faults/failure.ts'
import { METRES_PER_SECOND_PER_MPH, METRES_PER_YARD } from '#numbers/units/units.ts'

/** The unit of length a person reads. JSON is always SI. */
export type ReaderUnits = 'yards' | 'metres'

/** The value of `--units`; yards when it is not given. Throws MAR-USAGE-002. */
export function parseUnits(text: string | undefined): ReaderUnits {
  if (text === undefined || text === 'yards') return 'yards'
  if (text === 'metres') return 'metres'
  throw new Failure('MAR-USAGE-002', `"${text}" is no unit here. Write yards or metres.`, '--units')
}

/** Metres → a whole number in the reader's unit, without the unit. The one place where lengths are rounded. */
export function lengthNumber(metres: number, units: ReaderUnits, step = 1): string {
  const inUnits = units === 'yards' ? metres / METRES_PER_YARD : metres
  const rounded = Math.round(inUnits / step) * step
  return String(rounded === 0 ? 0 : rounded)
}

/** Metres → `196 yd` or `179 m`. */
export function lengthText(metres: number, units: ReaderUnits, step = 1): string {
  return `${lengthNumber(metres, units, step)} ${units === 'yards' ? 'yd' : 'm'}`
}

/** A sideways distance → `12 right`, `3 left`, `on the line`. */
export function sideText(metres: number, units: ReaderUnits): string {
  const number = lengthNumber(Math.abs(metres), units)
  if (number === '0') return 'on the line'
  return `${number} ${metres > 0 ? 'right' : 'left'}`
}

/** A speed of wind → `9 mph` or `4 m/s`. */
export function windText(metresPerSecond: number, units: ReaderUnits): string {
  if (units === 'yards') return `${Math.round(metresPerSecond / METRES_PER_SECOND_PER_MPH)} mph`
  return `${Math.round(metresPerSecond)} m/s`
}

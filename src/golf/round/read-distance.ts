import { feetToMetres, yardsToMetres } from '#numbers/units/units.ts'

/** The unit of a written distance that has none of its own. */
export type LogUnit = 'yards' | 'metres'

const UNITS: Readonly<Record<string, (value: number) => number>> = {
  m: (value) => value,
  yd: yardsToMetres,
  y: yardsToMetres,
  // A pace is a yard, as on a pin sheet.
  p: yardsToMetres,
  ft: feetToMetres,
  "'": feetToMetres,
}

/** A distance as written: `180`, `18ft`, `4.5m`. Metres; `null` when it is none. */
export function readDistance(text: string, unit: LogUnit): number | null {
  const found = /^(\d+(?:[.,]\d+)?)\s*([a-z']*)$/.exec(text.trim().toLowerCase())
  if (!found) return null
  const toMetres = UNITS[found[2] === '' ? (unit === 'yards' ? 'yd' : 'm') : (found[2] as string)]
  return toMetres ? toMetres(Number((found[1] as string).replace(',', '.'))) : null
}

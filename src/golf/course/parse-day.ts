import { Failure } from '#faults/failure.ts'
import { type Day, type DayPin, REFERENCE_DAY } from './day.ts'
import { type FieldFault, type FieldReader, fieldReader } from './days/field-reader.ts'
import { DAY_RANGES } from './settings.ts'

/**
 * The conditions in a `day/1` file; what it leaves out is as on the reference day. `where` names the file. Throws a
 * Failure for the first fault, which names the field, what was found and what is expected, and says how many more
 * there are. Unknown fields are refused, because a misspelt condition would otherwise be planned without.
 */
export function parseDay(text: string, where: string): Day {
  const faults: FieldFault[] = []
  const file = fieldReader(jsonObject(text, where), '', faults)
  if (file.word('schema', ['day/1']) === null)
    throw new Failure('MAR-DAY-002', 'A day file must say "schema": "day/1".', `${where}: schema`)
  file.allowOnly(
    'schema',
    'date',
    'wind',
    'temperature_c',
    'altitude_m',
    'pressure_hpa',
    'firmness',
    'greenSpeed_ft',
    'rough',
    'pins',
    'tees',
  )
  const day: Day = {
    date: file.text('date', /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/, '2026-05-02'),
    wind: readWind(file.object('wind')) ?? REFERENCE_DAY.wind,
    temperatureCelsius:
      file.number('temperature_c', DAY_RANGES.temperatureCelsius) ?? REFERENCE_DAY.temperatureCelsius,
    altitudeMetres: file.number('altitude_m', DAY_RANGES.altitudeMetres) ?? REFERENCE_DAY.altitudeMetres,
    pressureHectopascal: file.number('pressure_hpa', DAY_RANGES.pressureHectopascal),
    firmness: file.number('firmness', DAY_RANGES.firmness) ?? REFERENCE_DAY.firmness,
    greenSpeedFeet: file.number('greenSpeed_ft', DAY_RANGES.greenSpeedFeet) ?? REFERENCE_DAY.greenSpeedFeet,
    rough: file.word('rough', ['short', 'normal', 'long']) ?? REFERENCE_DAY.rough,
    pins: readByHole(file.object('pins'), readPin),
    tees: readByHole(file.object('tees'), readTee),
  }
  throwFirst(faults, where)
  return day
}

function jsonObject(text: string, where: string): object {
  let json: unknown
  try {
    json = JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error)
    throw new Failure('MAR-DAY-001', `The day file is not JSON: ${reason}.`, where)
  }
  if (typeof json === 'object' && json !== null && !Array.isArray(json)) return json
  throw new Failure('MAR-DAY-001', 'The day file is not one object in braces.', where)
}

/** A misspelt field explains a missing one, so unknown fields are told first. */
function throwFirst(faults: readonly FieldFault[], where: string): void {
  const first = faults.find((fault) => fault.code === 'MAR-DAY-003') ?? faults[0]
  if (!first) return
  const more = faults.length > 1 ? ` (${faults.length - 1} more in the file.)` : ''
  throw new Failure(first.code, first.message + more, `${where}: ${first.field}`)
}

function readWind(wind: FieldReader | null): Day['wind'] | null {
  if (!wind) return null
  wind.allowOnly('speed_mps', 'from_deg')
  wind.require('speed_mps', 'from_deg')
  return {
    speedMetresPerSecond: wind.number('speed_mps', DAY_RANGES.windMetresPerSecond) ?? 0,
    fromDegrees: wind.number('from_deg', DAY_RANGES.windFromDegrees) ?? 0,
  }
}

function readPin(pin: FieldReader): DayPin {
  pin.allowOnly('x_paces', 'y_paces', 'from')
  pin.require('y_paces', 'from')
  const from = pin.word('from', ['left', 'right', 'middle']) ?? 'left'
  if (from !== 'middle') pin.require('x_paces')
  return {
    xPaces: pin.number('x_paces', DAY_RANGES.pinPaces) ?? 0,
    yPaces: pin.number('y_paces', DAY_RANGES.pinPaces) ?? 0,
    from,
  }
}

function readTee(tee: FieldReader): Day['tees'][string] {
  tee.allowOnly('moved_m')
  tee.require('moved_m')
  return { movedMetres: tee.number('moved_m', DAY_RANGES.teeMovedMetres) ?? 0 }
}

function readByHole<Entry>(
  holes: FieldReader | null,
  read: (reader: FieldReader) => Entry,
): Readonly<Record<string, Entry>> {
  const entries: [string, Entry][] = []
  for (const ref of holes?.names ?? []) {
    const reader = holes?.object(ref)
    if (reader) entries.push([ref, read(reader)])
  }
  return Object.fromEntries(entries)
}

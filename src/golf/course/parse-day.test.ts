import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { Failure } from '#faults/failure.ts'
import { REFERENCE_DAY } from './day.ts'
import { encodeDay } from './encode-day.ts'
import { parseDay } from './parse-day.ts'

const FULL = {
  schema: 'day/1',
  date: '2026-05-02',
  wind: { speed_mps: 4, from_deg: 250 },
  temperature_c: 12,
  altitude_m: 40,
  pressure_hpa: null,
  firmness: 1.7,
  greenSpeed_ft: 9.5,
  rough: 'long',
  pins: { 7: { x_paces: 6, y_paces: 14, from: 'left' } },
  tees: { 7: { moved_m: -8 } },
}

function failureOf(text: string): Failure {
  try {
    parseDay(text, 'may.day.json')
  } catch (error) {
    if (error instanceof Failure) return error
    throw error
  }
  throw new Error('no failure')
}

function refused(change: object): string {
  const failure = failureOf(JSON.stringify({ ...FULL, ...change }))
  return `${failure.code} ${failure.where} | ${failure.message}`
}

describe('parseDay', () => {
  it('reads every field', () => {
    expect(parseDay(JSON.stringify(FULL), 'x')).toEqual({
      date: '2026-05-02',
      wind: { speedMetresPerSecond: 4, fromDegrees: 250 },
      temperatureCelsius: 12,
      altitudeMetres: 40,
      pressureHectopascal: null,
      firmness: 1.7,
      greenSpeedFeet: 9.5,
      rough: 'long',
      pins: { 7: { xPaces: 6, yPaces: 14, from: 'left' } },
      tees: { 7: { movedMetres: -8 } },
    })
  })

  it('takes the reference day for what is left out', () => {
    expect(parseDay('{"schema": "day/1"}', 'x')).toEqual(REFERENCE_DAY)
    expect(parseDay('\uFEFF{"schema": "day/1", "wind": null}', 'x')).toEqual(REFERENCE_DAY)
  })

  it('takes a pin in the middle without paces from a side, and no other', () => {
    const pins = (pin: object) => JSON.stringify({ ...FULL, pins: { 7: pin } })
    expect(parseDay(pins({ y_paces: 14, from: 'middle' }), 'x').pins).toEqual({
      7: { xPaces: 0, yPaces: 14, from: 'middle' },
    })
    expect(failureOf(pins({ y_paces: 14, from: 'left' })).message).toMatch(/pins.7.x_paces is missing/)
  })

  it('reads back what is written', () => {
    const middle = { xPaces: 0, yPaces: 14, from: 'middle' as const }
    for (const day of [REFERENCE_DAY, parseDay(JSON.stringify(FULL), 'x')])
      for (const pins of [day.pins, { 12: middle }])
        expect(parseDay(encodeDay({ ...day, pins }), 'x')).toEqual({ ...day, pins })
  })

  it('names the field, what was found and what it can be', () => {
    expect(refused({ temperature_c: 72 })).toBe(
      'MAR-DAY-005 may.day.json: temperature_c | temperature_c is 72; it can be -30 to 55 °C.',
    )
    expect(refused({ wind: { speed_mps: '4', from_deg: 250 } })).toBe(
      'MAR-DAY-004 may.day.json: wind.speed_mps | wind.speed_mps is the text "4", not a number.',
    )
    expect(refused({ wind: { speed_mps: 4 } })).toMatch(/MAR-DAY-004 .*wind.from_deg is missing/)
    expect(refused({ wind: [4, 250] })).toMatch(/MAR-DAY-004 .*wind is a list, not an object/)
    expect(refused({ wind: { speed_mps: 41, from_deg: 0 } })).toMatch(/MAR-DAY-005/)
    expect(refused({ firmness: 0.1 })).toMatch(/MAR-DAY-005/)
    expect(refused({ greenSpeed_ft: 17 })).toMatch(/MAR-DAY-005/)
    expect(refused({ rough: 'deep' })).toMatch(/MAR-DAY-004 .*"deep"; it can be short, normal, long/)
    expect(refused({ date: '2. May' })).toMatch(/MAR-DAY-004 .*write it like "2026-05-02"/)
    expect(refused({ pins: { 7: { x_paces: 6, y_paces: 14, from: 'front' } } })).toMatch(/pins.7.from/)
    expect(refused({ tees: { 7: { moved_m: 900 } } })).toMatch(/MAR-DAY-005 .*tees.7.moved_m/)
    expect(refused({ schema: 'day/2' })).toMatch(/MAR-DAY-002/)
  })

  it('refuses names it does not know and says what was probably meant', () => {
    expect(refused({ temperature: 12 })).toMatch(/MAR-DAY-003 .*Did you mean temperature_c\?/)
    expect(refused({ green_speed_ft: 9 })).toMatch(/Did you mean greenSpeed_ft\?/)
    expect(refused({ sunshine: 3 })).toMatch(/Known here: schema, date, wind/)
    // The misspelt field is told first, the other faults are counted.
    expect(refused({ firmness: 9, wind: { speed: 4, from_deg: 9 } })).toMatch(
      /MAR-DAY-003 .*Did you mean speed_mps\? \(2 more in the file.\)/,
    )
  })

  it('says when the text is no JSON object', () => {
    expect(failureOf('{"schema": ').code).toBe('MAR-DAY-001')
    expect(failureOf('[]').code).toBe('MAR-DAY-001')
    expect(failureOf('null').code).toBe('MAR-DAY-001')
    expect(failureOf('{}').code).toBe('MAR-DAY-002')
  })

  it('never fails otherwise, whatever JSON it is given', () => {
    fc.assert(
      fc.property(
        fc.json(),
        fc.dictionary(fc.constantFrom(...Object.keys(FULL)), fc.jsonValue()),
        (text, some) => {
          for (const given of [text, JSON.stringify({ ...some, schema: 'day/1' })])
            try {
              const day = parseDay(given, 'x')
              expect(day.wind.speedMetresPerSecond).toBeGreaterThanOrEqual(0)
            } catch (error) {
              expect(error).toBeInstanceOf(Failure)
            }
        },
      ),
    )
  })
})

import { describe, expect, it } from 'vitest'
import { Failure } from '#faults/failure.ts'
import { parseCount, parseLength, parseLie, parsePin, parsePoint } from './parse-values.ts'

const refused = (parse: () => unknown): string => {
  try {
    parse()
  } catch (error) {
    if (error instanceof Failure) return error.code
    throw error
  }
  return 'accepted'
}

describe('values of options', () => {
  // 1 yd = 0.9144 m: international yard and pound agreement of 1959.
  it('reads metres, and yards with their suffix', () => {
    expect(parseLength('190', '--x')).toBe(190)
    expect(parseLength(' -3.5m ', '--x')).toBe(-3.5)
    expect(parseLength('200yd', '--x')).toBeCloseTo(182.88, 12)
    expect(parsePoint('4yd,214yd', '--from')).toEqual([4 * 0.9144, 214 * 0.9144])
    expect(parsePoint('-2.5,40', '--from')).toEqual([-2.5, 40])
    expect(parsePin('back')).toBe('back')
    expect(parsePin('1,320')).toEqual([1, 320])
    expect(parseLie('first-cut')).toBe('first-cut')
    expect(parseCount('24', '--draws', 1, 100)).toBe(24)
  })

  it('refuses everything else under one code', () => {
    for (const text of ['', 'far', '1e5', '12ft', '1.2.3', 'NaN', 'Infinity', '0x10'])
      expect(
        refused(() => parseLength(text, '--x')),
        text,
      ).toBe('MAR-USAGE-002')
    for (const text of ['4', '4,', '4,5,6', 'a,b'])
      expect(
        refused(() => parsePoint(text, '--from')),
        text,
      ).toBe('MAR-USAGE-002')
    expect(refused(() => parsePin('centre'))).toBe('MAR-USAGE-002')
    expect(refused(() => parseLie('water'))).toBe('MAR-USAGE-002')
    for (const text of ['', '0', '-1', '2.5', '101', 'many'])
      expect(
        refused(() => parseCount(text, '--draws', 1, 100)),
        text,
      ).toBe('MAR-USAGE-002')
  })
})

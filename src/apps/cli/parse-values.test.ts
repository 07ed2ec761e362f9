import { describe, expect, it } from 'vitest'
import { Failure } from '#faults/failure.ts'
import { parseCount, parseLength, parseLie, parsePin, parsePoint, parseStance } from './parse-values.ts'

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
    expect(parseLie('first-cut')).toEqual({ lie: 'first-cut' })
    expect(parseLie('rough:down')).toEqual({ lie: 'rough', sit: 'down' })
    expect(parseLie('bare')).toEqual({ lie: 'fairway', sit: 'bare' })
    expect(parseStance('uphill:5, above:3')).toEqual({ uphillDegrees: 5, aboveDegrees: 3 })
    expect(parseStance('downhill:2.5,below:4')).toEqual({ uphillDegrees: -2.5, aboveDegrees: -4 })
    expect(parseStance('below:20')).toEqual({ uphillDegrees: 0, aboveDegrees: -20 })
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
    for (const text of ['water', 'rough:plugged', 'bunker:good', 'rough:', ':good', 'toString'])
      expect(
        refused(() => parseLie(text)),
        text,
      ).toBe('MAR-USAGE-002')
    for (const text of [
      '',
      'uphill',
      'uphill:',
      'uphill:0',
      'uphill:21',
      'uphill:-5',
      'uphill:5,downhill:5',
      'above:3,below:2',
      'above:3,above:4',
      'sideways:5',
      'uphill:5,',
      '5',
    ])
      expect(
        refused(() => parseStance(text)),
        text,
      ).toBe('MAR-USAGE-002')
    for (const text of ['', '0', '-1', '2.5', '101', 'many'])
      expect(
        refused(() => parseCount(text, '--draws', 1, 100)),
        text,
      ).toBe('MAR-USAGE-002')
  })
})

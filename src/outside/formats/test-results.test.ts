import { describe, expect, it } from 'vitest'
import { readTestResults } from './test-results.ts'

const HEADER = 'station,holed,leaves_ft'

describe('a typed test day', () => {
  it('is read station by station, feet, decimal commas and balls off the green included', () => {
    const { results, faults } = readTestResults(
      'station;holed;balls;leaves_m\nputt-1m;9;;\nPUTT-14M;1;5;1,5 0.4 2 3\nsand-12m;1;3;x6 2,5\n',
      'today.csv',
    )
    expect(faults).toEqual([])
    expect(results.stations.map(({ station, holed, balls }) => [station.name, holed, balls])).toEqual([
      ['putt-1m', 9, 10],
      ['putt-14m', 1, 5],
      ['sand-12m', 1, 3],
    ])
    expect(results.stations[1]?.leaves.map(({ metres }) => metres)).toEqual([1.5, 0.4, 2, 3])
    expect(results.stations[2]?.leaves).toEqual([
      { metres: 6, isOffGreen: true },
      { metres: 2.5, isOffGreen: false },
    ])
    const feet = readTestResults(`${HEADER}\nputt-8m,5,10\n`, 'today.csv').results.stations[0]
    // The foot is 0.3048 m exactly (international yard and pound agreement, 1959).
    expect(feet?.leaves[0]?.metres).toBeCloseTo(3.048, 12)
  })

  it('keeps the good rows and says of every bad one what is wrong with it, and where', () => {
    const { results, faults } = readTestResults(
      [
        HEADER,
        'putt-2m,7,',
        'putt-3m,7,',
        'putt-2m,8,',
        'putt-4m,twelve,',
        'putt-8m,5,2 3',
        'chip-rough-15m,1,3 4 5',
        'sand-12m,0,3 4 5 6 7 far',
        'pitch-fairway-30m,0,3 4 5 6 7 900',
        'putt-1m,11,',
      ].join('\n'),
      'today.csv',
    )
    expect(results.stations.map(({ station }) => station.name)).toEqual(['putt-2m'])
    expect(faults.map(({ code, place }) => [code, place])).toEqual([
      ['MAR-TEST-002', 'row 2'],
      ['MAR-TEST-003', 'row 3'],
      ['MAR-TEST-003', 'row 4'],
      ['MAR-TEST-003', 'row 5'],
      ['MAR-TEST-003', 'row 6'],
      ['MAR-TEST-004', 'row 7'],
      ['MAR-TEST-004', 'row 8'],
      ['MAR-TEST-003', 'row 9'],
    ])
    for (const fault of faults) expect(fault.severity).toBe('error')
  })

  it.each(['', 'station,holed', `${HEADER}\n`, 'putt-1m,9,'])(
    'is refused when it does not begin as it should: %j',
    (text) => {
      expect(() => readTestResults(text, 'today.csv')).toThrow(/first line must be|no rows/)
    },
  )
})

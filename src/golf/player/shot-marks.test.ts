import { describe, expect, it } from 'vitest'
import { playerOfLevel } from './level.ts'
import { lieEffect } from './lie-effects.ts'
import { shotMarks } from './shot-marks.ts'
import type { ShotRecord } from './shot-record.ts'

const player = playerOfLevel('15')

function shot(
  carryMetres: number | null,
  offlineMetres: number | null,
  more: Partial<ShotRecord> = {},
): ShotRecord {
  return {
    date: null,
    club: '7-iron',
    lie: null,
    carryMetres,
    totalMetres: 130,
    offlineMetres,
    strike: null,
    ...more,
  }
}

describe('marks of shots', () => {
  it('are where the balls came down, those of other clubs left out', () => {
    const marks = shotMarks(player, '7-iron', [
      shot(120, -8),
      shot(60, 3, { strike: 'mishit' }),
      shot(150, 0, { club: '5-iron' }),
    ])
    expect(marks).toEqual({
      places: [
        { x: -8, y: 120, isMishit: false },
        { x: 3, y: 60, isMishit: true },
      ],
      withoutSide: [],
      withoutCarry: 0,
    })
  })

  it('put back what the lie took, on a straight line from the ball', () => {
    const share = lieEffect('heavy', '9-iron', player).carry
    expect(share).toBeLessThan(1)
    const [place] = shotMarks(player, '9-iron', [shot(80, 10, { club: '9-iron', lie: 'heavy' })]).places
    expect(place?.y).toBeCloseTo(80 / share, 9)
    expect((place?.x ?? 0) / (place?.y ?? 1)).toBeCloseTo(10 / 80, 9)
  })

  it('count apart what has no side and what has no carry', () => {
    expect(shotMarks(player, '7-iron', [shot(118, null), shot(null, 4)])).toEqual({
      places: [],
      withoutSide: [118],
      withoutCarry: 1,
    })
  })
})

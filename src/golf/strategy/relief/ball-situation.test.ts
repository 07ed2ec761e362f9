import { describe, expect, it } from 'vitest'
import { box } from '../invented-hole.fixture.ts'
import type { BallInTrouble } from './ball-situation.ts'
import { ask, withAreas } from './lawful.fixture.ts'

describe('what cannot be', () => {
  const hole = withAreas(
    ['penalty-red', box(10, 40, 120, 180)],
    ['bunker', box(-30, -20, 200, 210)],
    ['out', box(60, 300, -100, 500)],
  )
  it.each<[string, Partial<BallInTrouble>, string]>([
    ['a ball off the survey', { ball: [500, 100] }, 'MAR-PLAN-004'],
    ['a stroke from water', { from: [20, 150], isFromTee: false, ball: [20, 160] }, 'MAR-RELIEF-001'],
    ['a stroke from out of bounds', { from: [80, 150], isFromTee: false, ball: [0, 200] }, 'MAR-RELIEF-001'],
    ['no place at all', {}, 'MAR-RELIEF-002'],
    ['an out ball in bounds (18.2a)', { said: 'out', ball: [0, 200] }, 'MAR-RELIEF-003'],
    ['an unplayable ball in water (19.1)', { said: 'unplayable', ball: [20, 160] }, 'MAR-RELIEF-004'],
    ['an unplayable ball out of bounds (19.1)', { said: 'unplayable', ball: [80, 160] }, 'MAR-RELIEF-004'],
    [
      'a way that crosses no edge',
      {
        ball: [20, 160],
        path: [
          [20, 150],
          [20, 160],
        ],
      },
      'MAR-RELIEF-005',
    ],
    ['a ball lost in a bunker', { said: 'lost', ball: [-25, 205] }, 'MAR-RELIEF-006'],
    ['a crossing by no edge', { crossed: [0, 220] }, 'MAR-RELIEF-007'],
    ['a crossing of a ball on grass', { crossed: [10, 150], ball: [0, 200] }, 'MAR-RELIEF-008'],
  ])('%s is refused', (_title, trouble, code) => {
    expect(() => ask(hole, trouble)).toThrow(expect.objectContaining({ code }))
  })

  it('a crossing that was seen is taken from the nearest edge', () => {
    const answer = ask(hole, { crossed: [8, 150] })
    expect(answer.reference?.[0]).toBeCloseTo(10, 6)
    expect(answer.reference?.[1]).toBeCloseTo(150, 6)
    expect(answer.offered).toContain('lateral 17.1d(3) +1')
  })
})

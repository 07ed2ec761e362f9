import { describe, expect, it } from 'vitest'
import { checkPlan } from './check-plan.ts'

const plan = {
  schema: 'plan/1',
  course: 'Links',
  hole: { ref: '7', par: 4, length_m: 332.8, tee: 'white' },
  player: 'Anna',
  value: { strokes: 5.31, low: 5.2, high: 5.4 },
  verdict: 'close',
  options: [{ club: '5-wood', strokes: 5.31, cost: 0 }],
  sentence: 'Take the 5-wood.',
  later: 'a member of a later version',
}

describe('checkPlan', () => {
  it('names a plan by course, hole and player', () => {
    expect(checkPlan(JSON.stringify(plan), 'plans/x')).toEqual({ name: 'Links, hole 7, Anna', faults: [] })
  })

  it.each([
    [{ ...plan, schema: 'plan/2' }, 'plans/x, schema'],
    [{ ...plan, options: [] }, 'plans/x, options'],
    [{ ...plan, hole: { ...plan.hole, par: '4' } }, 'plans/x, hole.par'],
    [{ ...plan, value: { strokes: null } }, 'plans/x, value.strokes'],
    [[], 'plans/x'],
    [null, 'plans/x'],
  ])('refuses what is none: %#', (document, where) => {
    expect(() => checkPlan(JSON.stringify(document), 'plans/x')).toThrow(
      expect.objectContaining({ code: 'MAR-SERVER-015', where }),
    )
  })
})

import { describe, expect, it } from 'vitest'
import type { Hole } from '#golf/course/hole.ts'
import { weighPlainly } from '#numbers/kernels/weigh-plainly.ts'
import { holeGround, holeModel } from '../hole-model.ts'
import { holeProblem } from '../hole-problem.ts'
import { area, box, CALM_DAY, inventedHole, inventedPlayer } from '../invented-hole.fixture.ts'
import { KEPT_ACTIONS } from '../settings.ts'

// The fast kernel against its readable twin, which follows every strike of every action from every cell by itself.

const player = inventedPlayer([
  { name: 'driver', carry_m: 190, total_m: 208, left_share: 1.2, right_share: 0.8, curve_share: -0.04 },
  { name: '6-iron', carry_m: 138, total_m: 145 },
  { name: 'pitching-wedge', carry_m: 92, total_m: 95 },
])

const hole: Hole = inventedHole(290, [
  area('fairway', box(-15, 15, 39, 270)),
  area('penalty-red', box(15, 33, 99, 171)),
  area('penalty-yellow', box(-27, 9, 205, 217)),
  area('bunker', box(-21, -9, 253, 271)),
  area('trees', box(-41, -21, 61, 149)),
  area('scrub', box(-41, -21, 149, 191)),
  area('heavy', box(18, 33, 229, 291)),
  area('out', box(-300, -41, -60, 500), 'out left'),
  area('out', box(43, 300, -60, 500), 'out right'),
])

describe.each([
  // Fine cells are laid out with every landing, or looked up one by one.
  { cell: 3, laid: 'laid out' },
  { cell: 7, laid: 'looked up' },
])('actions weighed together on cells of $cell m', ({ cell }) => {
  const day = { ...CALM_DAY, wind: { speedMetresPerSecond: 4, fromDegrees: 300 } }
  const quadrature = cell === 3 ? { good: 6, mishit: 2 } : { good: 24, mishit: 8 }
  const model = holeModel(holeGround(hole, cell), player, day)
  const fast = holeProblem(model, { quadrature })
  const plain = holeProblem(model, { quadrature, kernel: weighPlainly })

  it('are kept in the same order and at the same values as strike by strike', () => {
    const values = fast.startValues()
    // Values of some plan: first guesses tie where relief and going back cost the same.
    for (let sweep = 0; sweep < 3; sweep++) {
      fast.improve(values)
      for (let settle = 0; settle < 5; settle++) fast.settle(values)
    }
    const [ours, theirs] = [values.slice(), values.slice()]
    fast.improve(ours)
    plain.improve(theirs)
    let differing = 0
    for (const state of model.states.order) {
      expect(Math.abs((ours[state] as number) - (theirs[state] as number))).toBeLessThan(1e-9)
      if (fast.kept[state * KEPT_ACTIONS] !== plain.kept[state * KEPT_ACTIONS]) differing += 1
    }
    // Single precision tells apart all but near ties.
    expect(differing).toBeLessThan(model.states.order.length / 50)
  })
})

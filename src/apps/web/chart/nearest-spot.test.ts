import { expect, it } from 'vitest'
import type { ReliefRow } from '#golf/strategy/relief.ts'
import { nearestSpot } from './nearest-spot.ts'

const row = (letter: string, x: number, y: number, lie: 'rough' | null = 'rough'): ReliefRow =>
  ({ letter, spot: { x_m: x, y_m: y, lie } }) as unknown as ReliefRow

it('takes the option nearest to a tap, and none that is out of reach or has no lie to plan from', () => {
  const options = [row('A', 0, 100), row('B', 3, 100), row('C', 2, 100, null)]
  expect(nearestSpot(options, [2, 100], 5)?.letter).toBe('B')
  expect(nearestSpot(options, [0.5, 99], 5)?.letter).toBe('A')
  expect(nearestSpot(options, [2, 120], 5)).toBeNull()
})

import { describe, expect, it } from 'vitest'
import { completePlayer } from '#golf/player/complete-player.ts'
import { bagPatterns, clubPattern } from './bag-patterns.ts'

const player = completePlayer({
  name: 'Ansa',
  hand: 'right',
  handicapIndex: 15,
  sex: 'unstated',
  bag: 'as-listed',
  clubs: [{ name: '7-iron', carry_m: 130, total_m: 139, shots: 0, lies: {} }],
  shortGame: {},
  putting: {},
})

/** Mean distance of the good strikes, metres. */
function meanLength({ x, y, goodCount }: { x: Float64Array; y: Float64Array; goodCount: number }): number {
  let sum = 0
  for (let k = 0; k < goodCount; k++) sum += Math.hypot(x[k]!, y[k]!) / goodCount
  return sum
}

describe('clubPattern', () => {
  it('has the club’s carry and its total in the middle, and weights that add up to 1', () => {
    const [carry, total] = [false, true].map((isTotal) => clubPattern(player, '7-iron', 'tee', isTotal)!)
    expect(meanLength(carry!)).toBeCloseTo(130, 0)
    expect(meanLength(total!) - meanLength(carry!)).toBeCloseTo(9, 9)
    expect(carry!.weight.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 12)
    expect(carry).toEqual(bagPatterns(player)[0])
  })

  it('is shorter from the rough, and none for a club that is not in the bag', () => {
    expect(meanLength(clubPattern(player, '7-iron', 'rough', false)!)).toBeLessThan(129)
    expect(clubPattern(player, 'driver', 'tee', false)).toBeNull()
  })
})

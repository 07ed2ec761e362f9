import { describe, expect, it } from 'vitest'
import { placeOf, spotOf, turned } from './asked-line.ts'

describe('the line a shot is asked for', () => {
  it('turns spots into places and back', () => {
    // Along a line 30° to the right: x = y·tan 30°; its right is 30° below the x axis.
    const [x, y] = placeOf({ along: 200, right: 0 }, { from: [0, 0], heading: 30 })
    expect(x).toBeCloseTo(100, 9)
    expect(y).toBeCloseTo(100 * Math.sqrt(3), 9)
    expect(placeOf({ along: 0, right: 10 }, { from: [4, 7], heading: 90 })[1]).toBeCloseTo(7 - 10, 9)
    for (const heading of [-50, -3, 0, 12.5]) {
      const spot = spotOf(placeOf({ along: 151, right: -7 }, { from: [12, 80], heading }), {
        from: [12, 80],
        heading,
      })
      expect(spot.along).toBeCloseTo(151, 9)
      expect(spot.right).toBeCloseTo(-7, 9)
    }
  })

  it('is moved by a distance at a length, and stays in front of the player', () => {
    expect(200 * Math.sin((turned(0, 4, 200) * Math.PI) / 180)).toBeCloseTo(4, 9)
    expect(turned(turned(5, 4, 200), -4, 200)).toBeCloseTo(5, 9)
    expect(turned(59, 100, 200)).toBeCloseTo(60, 9)
  })
})

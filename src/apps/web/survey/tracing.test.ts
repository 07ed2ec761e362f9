import { describe, expect, it } from 'vitest'
import { pictureTransform, placePicture } from './place-picture.ts'
import { snap } from './snap.ts'

describe('placePicture', () => {
  it('turns the hole upwards from its tee and scales it by its length', () => {
    // The tee at the right, the green 300 px to the left: left in the picture is away from the tee.
    const place = placePicture({ tee: [400, 200], ahead: [100, 200], metres: 150 })!
    const at = (u: number, v: number): number[] =>
      place([u, v]).map((metres) => Math.round(metres * 1e6) / 1e6 + 0)
    expect(at(400, 200)).toEqual([0, 0])
    expect(at(100, 200)).toEqual([0, 150])
    // Above the line in the picture lies to the right of the player.
    expect(at(250, 100)).toEqual([50, 75])
  })

  it('takes the scale of two other places', () => {
    const place = placePicture({
      tee: [0, 100],
      ahead: [0, 0],
      apart: [
        [10, 10],
        [40, 50],
      ],
      metres: 100,
    })!
    expect(place([0, 0])[1]).toBeCloseTo(200, 9)
    expect(place([30, 100])[0]).toBeCloseTo(60, 9)
  })

  it('is none when two places are one', () => {
    expect(placePicture({ tee: [1, 1], ahead: [1, 1], metres: 100 })).toBeNull()
    expect(placePicture({ tee: [1, 1], ahead: [1, 9], metres: 0 })).toBeNull()
    expect(
      placePicture({
        tee: [1, 1],
        ahead: [1, 9],
        apart: [
          [2, 2],
          [2, 2],
        ],
        metres: 9,
      }),
    ).toBeNull()
  })

  it('is a matrix on the sheet', () => {
    const place = placePicture({ tee: [10, 110], ahead: [10, 10], metres: 100 })!
    expect(pictureTransform(place, ([x, y]) => [50 + 2 * x, 300 - 2 * y])).toBe('matrix(2,0,0,2,30,80)')
  })
})

describe('snap', () => {
  const square = [
    [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ],
  ] as const
  it('takes a corner before an edge, and neither from further away', () => {
    expect(snap([9, 9], [square], [], 3)).toEqual([10, 10])
    expect(snap([5, 1], [square], [], 3)).toEqual([5, 0])
    expect(snap([5, 5], [square], [], 3)).toEqual([5, 5])
    expect(snap([20, 20], [square], [[21, 20]], 3)).toEqual([21, 20])
  })
})

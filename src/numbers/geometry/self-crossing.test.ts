import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seededGenerator } from '../statistics/seeded-generator.ts'
import { planarFrame } from './frame.ts'
import type { Ring } from './point.ts'
import { selfCrossing } from './self-crossing.ts'

describe('selfCrossing', () => {
  const cases: [string, Ring, readonly [number, number] | null][] = [
    [
      'a square',
      [
        [0, 0],
        [4, 0],
        [4, 4],
        [0, 4],
      ],
      null,
    ],
    [
      'a bow tie',
      [
        [0, 0],
        [4, 4],
        [4, 0],
        [0, 4],
      ],
      [2, 2],
    ],
    [
      'a bow tie that crosses in a corner',
      [
        [0, 0],
        [2, 2],
        [4, 4],
        [4, 0],
        [2, 2],
        [0, 4],
      ],
      [2, 2],
    ],
    [
      'a corner of one edge in the middle of another, crossing',
      [
        [0, 0],
        [4, 4],
        [4, 0],
        [2, 2],
        [0, 4],
      ],
      [2, 2],
    ],
    [
      'two lobes that only touch in a corner',
      [
        [0, 0],
        [2, 2],
        [4, 0],
        [4, 4],
        [2, 2],
        [0, 4],
      ],
      null,
    ],
    [
      'a corner that only touches an edge',
      [
        [0, 0],
        [4, 0],
        [4, 4],
        [2, 0],
        [0, 4],
      ],
      null,
    ],
    [
      'a spike',
      [
        [0, 0],
        [4, 0],
        [4, 4],
        [4, 8],
        [4, 4],
        [0, 4],
      ],
      [4, 8],
    ],
    [
      'a stretch walked twice',
      [
        [0, 0],
        [6, 0],
        [6, 2],
        [4, 0],
        [2, 0],
        [0, 2],
      ],
      [2, 0],
    ],
    [
      'repeated corners',
      [
        [0, 0],
        [0, 0],
        [4, 0],
        [4, 4],
        [4, 4],
        [0, 4],
        [0, 0],
      ],
      null,
    ],
  ]
  it.each(cases)('knows %s', (_name, ring, expected) => {
    expect(selfCrossing(ring)).toEqual(expected)
    expect(selfCrossing(ring.toReversed()) === null).toBe(expected === null)
  })

  it('finds nothing in a ring drawn in order of angle, and something once two corners change places', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), fc.integer({ min: 5, max: 60 }), (seed, count) => {
        const random = seededGenerator(seed)
        const { fromFrame } = planarFrame([2000 * random(), 2000 * random()], 7 * random())
        // Convex, so that exchanging two corners must make edges cross.
        const ring = Array.from({ length: count }, (_, i) => {
          const angle = (2 * Math.PI * (i + 0.8 * random())) / count
          return fromFrame([90 * Math.sin(angle), 60 * Math.cos(angle)])
        })
        expect(selfCrossing(ring)).toBeNull()
        const [a, b, ...rest] = ring
        expect(selfCrossing([b!, a!, ...rest])).not.toBeNull()
      }),
    )
  })
})

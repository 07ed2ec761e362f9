import { describe, expect, it } from 'vitest'
import { box, mirrored } from '../invented-hole.fixture.ts'
import { ask, choice, expectLawful, withAreas } from './lawful.fixture.ts'

// Rules of Golf 2023 as digested in test/fixtures/reference/rules_2023.json; where the feet stand is our assumption.

describe('a ball on a path', () => {
  const hole = withAreas(['path', box(10, 13, 0, 300)])

  it('has free relief at the nearest point clear of ball and feet, not nearer the hole (16.1b)', () => {
    const answer = ask(hole, { ball: [10.5, 150] })
    expect(answer.offered).toEqual([
      'as-it-lies 9.1 +0',
      'free-relief 16.1b +0',
      'stroke-and-distance 19.2a +1',
      'back-on-the-line 19.2b +1',
      'lateral 19.2c +1',
    ])
    expectLawful(hole, answer)
    // A right-hander's feet stand left of the line: to the left only the ball must be off the path, 21 mm past x = 10.
    const free = choice(answer, 'free-relief')
    expect(free.reference[0]).toBeCloseTo(10 - 0.0213, 1)
    expect(free.reference[0]).toBeLessThan(10)
  })

  it('puts a left-hander on the other side, mirrored (16.1b)', () => {
    const right = choice(ask(hole, { ball: [12.4, 150] }, 'right'), 'free-relief').reference
    const left = choice(ask(hole, { ball: [12.4, 150] }, 'left'), 'free-relief').reference
    // For a right-hander the feet would still be on the path 1.1 m beyond its right edge; a left-hander is clear at once.
    expect(right[0]).toBeGreaterThan(13.9)
    expect(left[0]).toBeLessThan(13.2)
    const across = choice(ask(mirrored(hole), { ball: [-12.4, 150] }, 'left'), 'free-relief').reference
    expect(across[0]).toBeCloseTo(-right[0], 4)
    expect(across[1]).toBeCloseTo(right[1], 4)
  })
})

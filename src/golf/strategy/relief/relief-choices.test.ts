import { describe, expect, it } from 'vitest'
import { groundAt } from '#golf/course/ground-at.ts'
import { distance } from '#numbers/geometry/point.ts'
import { box, mirrored } from '../invented-hole.fixture.ts'
import { ask, CLUB, choice, expectLawful, PIN, size, withAreas } from './lawful.fixture.ts'

// Rules of Golf 2023 as digested in test/fixtures/reference/rules_2023.json; 14.6 and 17.1b from memory.

const POND = box(10, 40, 120, 180)

describe('a ball in a red penalty area', () => {
  const hole = withAreas(['penalty-red', POND])
  // From the tee to (20, 160): over x = 10 at y = 80, over y = 120 at x = 15. It came in over the front, at (15, 120).
  const answer = ask(hole, { ball: [20, 160] })

  it('crossed where its way meets the near edge', () => {
    expect(answer.reference?.[0]).toBeCloseTo(15, 6)
    expect(answer.reference?.[1]).toBeCloseTo(120, 6)
  })

  it('may be played, replayed, dropped on the line or dropped beside, and nothing else (17.1b, 17.1d)', () => {
    expect(answer.offered).toEqual([
      'as-it-lies 17.1b +0',
      'stroke-and-distance 17.1d(1) +1',
      'back-on-the-line 17.1d(2) +1',
      'lateral 17.1d(3) +1',
    ])
    expect(answer.empty).toEqual([])
    expectLawful(hole, answer)
  })

  it('is not valued in the water', () => {
    expect(choice(answer, 'as-it-lies').isValued).toBe(false)
  })

  it('has two club-lengths beside the crossing, the half that is not nearer and not in the water (17.1d(3))', () => {
    const [polygon, ...others] = choice(answer, 'lateral').areaAt([0, 0])
    expect(others).toEqual([])
    // Of the disc of two club-lengths the half away from the hole is all outside the water, whose edge is y = 120: the
    // circle about the hole leaves the crossing at right angles to the line, which falls towards the right by 15/180.
    // Right of the crossing it dips under the water's edge, so the area is half the disc less a thin lens.
    const half = (Math.PI * (2 * CLUB) ** 2) / 2
    expect(size([polygon ?? []])).toBeGreaterThan(half * 0.9)
    expect(size([polygon ?? []])).toBeLessThan(half)
    for (const [, y] of (polygon ?? []).flat()) expect(y).toBeLessThan(120 + 0.2)
  })

  it('has the line from the hole through the crossing, not through the ball (17.1d(2))', () => {
    const line = choice(answer, 'back-on-the-line')
    for (const [x, y] of line.spots) {
      // The hole is at (0, 300): x falls off by 15 in 180.
      expect(x / (300 - y)).toBeCloseTo(15 / 180, 9)
      expect(y).toBeLessThan(120 + 1e-9)
    }
    expect(line.spots.some((spot) => Math.abs(distance(spot, [15, 120]) - 1) < 1e-9)).toBe(true)
  })

  it('is mirrored for the mirrored hole', () => {
    const other = ask(mirrored(hole), { ball: [-20, 160] })
    expect(other.reference?.[0]).toBeCloseTo(-15, 6)
    expect(other.offered).toEqual(answer.offered)
    const lateral = choice(other, 'lateral').areaAt([0, 0])
    expect(size(lateral)).toBeCloseTo(size(choice(answer, 'lateral').areaAt([0, 0])), 4)
    for (const [x] of lateral.flat(2)) expect(x).toBeLessThan(0)
  })
})

describe('a ball in a yellow penalty area', () => {
  const hole = withAreas(['penalty-yellow', box(-60, 60, 150, 170)])

  it('has no lateral relief (17.1d)', () => {
    const answer = ask(hole, { ball: [0, 160] })
    expect(answer.offered).toEqual([
      'as-it-lies 17.1b +0',
      'stroke-and-distance 17.1d(1) +1',
      'back-on-the-line 17.1d(2) +1',
    ])
    expect(answer.reference?.[1]).toBeCloseTo(150, 6)
    expectLawful(hole, answer)
  })

  it('that came in from beyond crossed the far edge, and the line keeps out of the same water (17.1d(2))', () => {
    // Over the water and back by a bank: in over the far edge y = 170. The line back from there runs through the water.
    const answer = ask(hole, {
      ball: [0, 165],
      path: [
        [0, 0],
        [0, 180],
        [0, 165],
      ],
    })
    expect(answer.reference?.[1]).toBeCloseTo(170, 6)
    const line = choice(answer, 'back-on-the-line')
    for (const [, y] of line.spots) expect(y > 170 - 1e-9 || y <= 150).toBe(true)
    expect(line.spots.some(([, y]) => y < 150)).toBe(true)
    expectLawful(hole, answer)
  })

  it('of two pieces that touch is one: neither piece is dropped in (17.1d(2))', () => {
    const two = withAreas(
      ['penalty-yellow', box(-60, 60, 150, 160)],
      ['penalty-yellow', box(-60, 60, 160, 170)],
    )
    const answer = ask(two, {
      ball: [0, 165],
      path: [
        [0, 0],
        [0, 180],
        [0, 165],
      ],
    })
    expect(answer.reference?.[1]).toBeCloseTo(170, 6)
    for (const [, y] of choice(answer, 'back-on-the-line').spots)
      expect(y >= 170 - 1e-9 || y <= 150).toBe(true)
  })
})

describe('the same water in red beside a boundary', () => {
  it('gives no lateral relief where every allowed place is out of bounds (17.1d(3))', () => {
    // The ball came in over the right edge of the water, where the boundary runs: all that is not water is out.
    const hole = withAreas(['penalty-red', box(-300, 40, 100, 200)], ['out', box(40, 300, -100, 500)])
    const answer = ask(hole, {
      ball: [30, 150],
      path: [
        [0, 0],
        [60, 150],
        [30, 150],
      ],
    })
    expect(answer.reference?.[0]).toBeCloseTo(40, 6)
    expect(answer.offered).not.toContain('lateral 17.1d(3) +1')
    expect(answer.empty).toContain('lateral 17.1d(3) +1')
    expectLawful(hole, answer)
  })

  it('cuts the area at a boundary that is near', () => {
    const near = withAreas(['penalty-red', POND], ['out', box(15.5, 300, -100, 119)])
    const far = withAreas(['penalty-red', POND])
    const [cut, whole] = [near, far].map((hole) => {
      const answer = ask(hole, {
        ball: [20, 160],
        path: [
          [0, 90],
          [14.9, 119.5],
          [20, 160],
        ],
      })
      expectLawful(hole, answer)
      return size(choice(answer, 'lateral').areaAt([0, 0]))
    })
    expect(cut).toBeLessThan((whole ?? 0) * 0.9)
    expect(cut).toBeGreaterThan(0.5)
  })

  it('lets lateral relief be taken into a bunker or on fairway, which are other areas of the course (17.1d(3))', () => {
    const hole = withAreas(
      ['penalty-red', POND],
      ['fairway', box(-10, 14, 60, 120)],
      ['bunker', box(16, 20, 110, 119.5)],
    )
    const grounds = new Set(
      choice(ask(hole, { ball: [20, 160] }), 'lateral').spots.map((spot) => groundAt(hole, spot)),
    )
    expect([...grounds].sort()).toEqual(['bunker', 'fairway', 'rough'])
  })
})

describe('a ball in scrub', () => {
  const hole = withAreas(['scrub', box(20, 60, 100, 200)], ['fairway', box(-15, 19, 50, 280)])

  it('may be played, replayed, or dropped by the ball for one stroke (9.1, 19.2)', () => {
    const answer = ask(hole, { ball: [21, 150] })
    expect(answer.offered).toEqual([
      'as-it-lies 9.1 +0',
      'stroke-and-distance 19.2a +1',
      'back-on-the-line 19.2b +1',
      'lateral 19.2c +1',
    ])
    expect(answer.reference).toEqual([21, 150])
    expectLawful(hole, answer)
    // Two club-lengths are 2.28 m: from x = 21 they reach the fairway's edge at 19.
    expect(choice(answer, 'lateral').spots.some((spot) => groundAt(hole, spot) === 'fairway')).toBe(true)
    const deeper = ask(hole, { ball: [22, 150] })
    expect(choice(deeper, 'lateral').spots.some((spot) => groundAt(hole, spot) === 'fairway')).toBe(false)
  })

  it('said to be unplayable is not played as it lies (19.1)', () => {
    expect(ask(hole, { ball: [21, 150], said: 'unplayable' }).offered).toEqual([
      'stroke-and-distance 19.2a +1',
      'back-on-the-line 19.2b +1',
      'lateral 19.2c +1',
    ])
  })

  it('is replayed from rough within one club-length, on fairway when that is so near (14.6b)', () => {
    const answer = ask(hole, { from: [19.6, 80], isFromTee: false, ball: [30, 150] })
    const again = choice(answer, 'stroke-and-distance')
    // From (19.6, 80) the fairway's edge at 19 is 0.6 m off, inside the club-length of 1.14 m.
    expect(again.spots.some((spot) => groundAt(hole, spot) === 'fairway')).toBe(true)
    expectLawful(hole, answer)
    const tee = choice(ask(hole, { ball: [30, 150] }), 'stroke-and-distance')
    expect(tee.lie).toBe('tee')
    // The teeing area is two club-lengths deep (Definitions).
    expect(size(tee.areaAt([0, 0]))).toBeCloseTo(5 * 2 * CLUB, 9)
  })
})

describe('a ball in a bunker', () => {
  const hole = withAreas(['bunker', box(-5, 15, 240, 250)], ['fairway', box(-15, 15, 50, 280)])
  const answer = ask(hole, { ball: [5, 245] })

  it('keeps two drops in the bunker for one stroke and has one outside for two (19.3)', () => {
    expect(answer.offered).toEqual([
      'as-it-lies 9.1 +0',
      'stroke-and-distance 19.2a +1',
      'back-on-the-line 19.3a +1',
      'lateral 19.3a +1',
      'back-on-the-line-out-of-bunker 19.3b +2',
    ])
    expectLawful(hole, answer)
    for (const kind of ['back-on-the-line', 'lateral'])
      for (const spot of choice(answer, kind).spots) expect(groundAt(hole, spot)).toBe('bunker')
    for (const [, y] of choice(answer, 'back-on-the-line-out-of-bunker').spots)
      expect(y).toBeLessThanOrEqual(240)
  })

  it('has the outside drop on the line through the ball, from the bunker’s back edge on (19.3b)', () => {
    // The line from (0, 300) through (5, 245) meets y = 240 at x = 5 · 60/55.
    const [x, y] = choice(answer, 'back-on-the-line-out-of-bunker').spots[0] ?? PIN
    expect(y).toBeGreaterThan(240 - 0.3)
    expect(x / (300 - y)).toBeCloseTo(5 / 55, 9)
  })

  it('by the back lip has no room on the line in the bunker', () => {
    const lip = ask(hole, { ball: [5, 240.0001] })
    expect(lip.empty).toEqual(['back-on-the-line 19.3a +1'])
    expect(size(choice(lip, 'lateral').areaAt([0, 0]))).toBeLessThan(1)
  })
})

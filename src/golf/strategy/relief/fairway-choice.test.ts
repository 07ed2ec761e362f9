import { describe, expect, it } from 'vitest'
import { groundAt } from '#golf/course/ground-at.ts'
import type { Hole } from '#golf/course/hole.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { area, box, mirrored } from '../invented-hole.fixture.ts'
import { nearestFairway } from './fairway-choice.ts'
import { ask, CLUB, choice, expectLawful, size, withAreas } from './lawful.fixture.ts'

// Rules of Golf 2023 as digested in test/fixtures/reference/rules_2023.json; the shape of the area of E-5 from memory.

describe('a ball out of bounds', () => {
  const hole = withAreas(['out', box(50, 300, -100, 500)], ['fairway', box(-15, 20, 50, 280)])
  const local: Hole = { ...hole, localRules: ['E-5'] }
  // From the tee to (60, 240): over x = 50 at y = 200.
  const out = { ball: [60, 240] as Point }

  it('has stroke and distance and nothing else (18.2)', () => {
    const answer = ask(hole, out)
    expect(answer.offered).toEqual(['stroke-and-distance 18.2 +1'])
    expect(answer.empty).toEqual([])
    expect(answer.reference?.[0]).toBeCloseTo(50, 6)
    expect(answer.reference?.[1]).toBeCloseTo(200, 6)
  })

  it('has the drop by the fairway for two strokes under Local Rule E-5', () => {
    const answer = ask(local, out)
    expect(answer.offered).toEqual(['stroke-and-distance 18.2 +1', 'local-rule-E-5 Model Local Rule E-5 +2'])
    expectLawful(local, answer)
    const { spots, areaAt } = choice(answer, 'local-rule-E-5')
    // The crossing is √(50² + 100²) from the hole. Fairway no nearer: its edge x = 20 from y = 300 − √(12500 − 400) on.
    const fairway = nearestFairway(local, [50, 200])
    expect(fairway?.[0]).toBeCloseTo(20, 3)
    expect(fairway?.[1]).toBeCloseTo(300 - Math.sqrt(12500 - 400), 2)
    // Between the two lines, with two club-lengths outside the fairway's line: measured square to that line.
    const heading = Math.atan2(20, -Math.sqrt(12100))
    const aside = ([x, y]: Point): number => x * Math.cos(heading) - (y - 300) * Math.sin(heading)
    for (const corner of areaAt([0, 0]).flat(2)) {
      expect(aside(corner)).toBeLessThan(2 * CLUB + 0.01)
      expect(groundAt(local, corner)).not.toBe('bunker')
      expect(corner[0]).toBeLessThan(50 + 1e-5)
    }
    expect(spots.some((spot) => groundAt(local, spot) === 'fairway')).toBe(true)
  })

  it('drops by the fairway in the general area only, not in a bunker or in water (E-5)', () => {
    const trapped: Hole = {
      ...local,
      areas: [
        ...local.areas,
        area('bunker', box(20, 30, 150, 195), 'trap'),
        area('penalty-red', box(32, 40, 150, 195), 'pond'),
      ],
    }
    const answer = ask(trapped, out)
    expectLawful(trapped, answer)
    for (const spot of choice(answer, 'local-rule-E-5').spots)
      expect(['rough', 'fairway']).toContain(groundAt(trapped, spot))
  })

  it('is mirrored with the hole', () => {
    const right = choice(ask(local, out), 'local-rule-E-5').areaAt([0, 0])
    const left = choice(ask(mirrored(local), { ball: [-60, 240] }), 'local-rule-E-5').areaAt([0, 0])
    expect(size(left)).toBeCloseTo(size(right), 2)
  })

  it('on a dogleg measures to the hole and not along the line', () => {
    const bent: Hole = {
      ...local,
      line: [
        [0, 0],
        [0, 200],
        [-100, 280],
      ],
      pin: [-100, 280],
    }
    const answer = ask(bent, out)
    expectLawful(bent, answer)
    const away = distance([-100, 280], [50, 200])
    const fairway = nearestFairway(bent, [50, 200])
    expect(fairway && distance(fairway, [-100, 280])).toBeGreaterThan(away - 1e-3)
  })

  it('gives no drop by the fairway where no fairway is as far from the hole (E-5)', () => {
    const short: Hole = { ...local, areas: local.areas.filter(({ ground }) => ground !== 'fairway') }
    expect(ask(short, out).empty).toEqual(['local-rule-E-5 Model Local Rule E-5 +2'])
  })
})

describe('a lost ball', () => {
  const hole = {
    ...withAreas(['fairway', box(-15, 20, 50, 280)], ['heavy', box(20, 50, 0, 300)]),
    localRules: ['E-5'],
  }

  it('has stroke and distance, and by E-5 the drop by the fairway when its place can be told (18.2)', () => {
    const place = ask(hole, { said: 'lost', ball: [30, 180] })
    expect(place.offered).toEqual(['stroke-and-distance 18.2 +1', 'local-rule-E-5 Model Local Rule E-5 +2'])
    expectLawful(hole, place)
    const nowhere = ask(hole, { said: 'lost' })
    expect(nowhere.offered).toEqual(['stroke-and-distance 18.2 +1'])
    expect(nowhere.empty).toEqual(['local-rule-E-5 Model Local Rule E-5 +2'])
    expect(ask({ ...hole, localRules: [] }, { said: 'lost', ball: [30, 180] }).empty).toEqual([])
  })
})

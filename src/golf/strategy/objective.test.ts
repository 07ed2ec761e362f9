import { describe, expect, it } from 'vitest'
import {
  atMostObjective,
  holeChances,
  matchObjective,
  ONE_HOLE,
  pointMass,
  pointsObjective,
  targetObjective,
  worthOf,
} from './objective.ts'

const counted = { played: 0, notes: [] }

describe('pointsObjective', () => {
  // Rules of Golf 2023, 21.1b, the table of points against par: 2 or more over 0, 1 over 1, par 2, … 4 under 6.
  it.each([
    [4, 0, [6, 5, 4, 3, 2, 1, 0, 0]],
    // With two strokes received, five on a par 3 is a net three.
    [3, 2, [7, 6, 5, 4, 3, 2, 1, 0]],
    [5, -1, [6, 5, 4, 3, 2, 1, 0]],
  ])('follows the table of Stableford on a par %d with %d strokes received', (par, received, points) => {
    const objective = pointsObjective(par, received, counted)
    expect(points.map((_, strokes) => worthOf(objective, strokes))).toEqual(points)
    expect(worthOf(objective, 40)).toBe(0)
  })
})

describe('atMostObjective', () => {
  it('counts a score up to the number and none above', () => {
    const objective = atMostObjective(4, counted)
    expect([3, 4, 5, 9].map((strokes) => worthOf(objective, strokes))).toEqual([1, 1, 0, 0])
    expect(objective.name).toBe('at-most:4')
  })
})

describe('targetObjective', () => {
  it('is worth the chance that the later holes take no more than what is left', () => {
    // Three left are never enough, four are half of the time, from five on surely.
    const objective = targetObjective(9, [0, 0, 0, 0, 0.5, 1], '9 or better on holes 17 to 18', counted)
    expect([3, 4, 5, 6, 9, 10, 14].map((strokes) => worthOf(objective, strokes))).toEqual([
      1, 1, 0.5, 0, 0, 0, 0,
    ])
  })
})

describe('matchObjective', () => {
  it('wins below a known score, halves on it and loses above, net of strokes', () => {
    const worths = (received: number): number[] => {
      const objective = matchObjective(pointMass(4), received, counted)
      return [3, 4, 5, 6, 30].map((strokes) => worthOf(objective, strokes))
    }
    expect(worths(0)).toEqual([1, 0.5, 0, 0, 0])
    expect(worths(1)).toEqual([1, 1, 0.5, 0, 0])
    expect(worths(-1)).toEqual([0.5, 0, 0, 0, 0])
  })

  it('weighs an opponent by chances and a hole by its stakes', () => {
    const opponent = [0, 0, 0, 0.2, 0.5, 0.3]
    const objective = matchObjective(opponent, 0, counted)
    // Four strokes win against five and halve with four.
    expect(worthOf(objective, 4)).toBeCloseTo(0.3 + 0.5 / 2, 12)
    const dormie = matchObjective(opponent, 0, counted, { ...ONE_HOLE, halve: 1 })
    expect(worthOf(dormie, 4)).toBeCloseTo(0.8, 12)
  })
})

describe('holeChances', () => {
  it('adds up to 1 and mirrors between the two sides', () => {
    const [mine, theirs] = [
      [0, 0, 0.1, 0.4, 0.5],
      [0, 0, 0, 0.3, 0.6, 0.1],
    ]
    const { win, halve, lose } = holeChances(mine as number[], theirs as number[], 1)
    expect(win + halve + lose).toBeCloseTo(1, 12)
    expect(holeChances(theirs as number[], mine as number[], -1)).toMatchObject({
      win: expect.closeTo(lose, 12),
      lose: expect.closeTo(win, 12),
    })
  })
})

import { describe, expect, it } from 'vitest'
import { groundAt } from '#golf/course/ground-at.ts'
import type { Hole } from '#golf/course/hole.ts'
import { mirrorPlayer } from '#golf/player/mirror-player.ts'
import { CALM_DAY, mirrored } from './invented-hole.fixture.ts'
import type { Relief, ReliefRow } from './relief.ts'
import { type ReliefQuestion, reliefOfBall } from './relief-of-ball.ts'
import { editionWords, reliefSentence } from './relief-words.ts'
import { smallHole, threeClubs } from './small-hole.fixture.ts'

// Rules of Golf 2023, 17 to 19, on the small hole: a red pond right of the fairway from 100 to 160 m, trees and sand left.
// Cells of 5 m and not 6: their edges then miss the middles of the fine cells, which a mirrored hole would round the other way.
const HOLE = smallHole(180.7, 40.3)
const PLAYER = threeClubs()

function relief(more: Partial<ReliefQuestion>, hole: Hole = HOLE): Relief {
  return reliefOfBall({
    courseName: 'test',
    hole,
    player: PLAYER,
    day: CALM_DAY,
    cellMetres: 5,
    quadrature: { good: 16, mishit: 8 },
    ...more,
  })
}

const row = (answer: Relief, kind: ReliefRow['kind']): ReliefRow => {
  const found = answer.options.find((one) => one.kind === kind)
  if (!found) throw new Error(`${kind} is not offered`)
  return found
}

describe('reliefOfBall', () => {
  const answer = relief({ ball: [18, 120] })

  it('prices every option with its penalty and sorts them, what has no value last', () => {
    expect(answer.schema).toBe('relief/1')
    expect(answer.options.map(({ letter }) => letter)).toEqual(['A', 'B', 'C', 'D'])
    const costs = answer.options.map(({ cost }) => cost ?? Number.POSITIVE_INFINITY)
    expect(costs[0]).toBe(0)
    expect(costs).toEqual([...costs].sort((a, b) => a - b))
    expect(answer.options.at(-1)).toMatchObject({ kind: 'as-it-lies', strokes: null, cost: null })
    for (const { strokes, from_spot, penalty } of answer.options.slice(0, -1)) {
      expect(penalty).toBe(1)
      expect(strokes).toBeCloseTo((from_spot ?? 0) + 1, 12)
    }
  })

  it('names edition, clause and whose word counts', () => {
    expect(editionWords(answer.rules)).toBe('Rules of Golf, January 2023')
    expect(answer.rules.ruling).toMatch(/Committee.*referee/)
    expect(answer.notes.join(' ')).toMatch(/17\.1c/)
    expect(reliefSentence(answer)).toMatch(/Rule 17\.1d/)
  })

  it('drops on the fairway beside red water where two club-lengths reach it, else in rough (17.1d(3))', () => {
    const { crossing } = answer.situation
    // From the tee to (18, 120): over the front edge of the pond, y = 100.1 at x = 15.02.
    expect(crossing?.x_m).toBeCloseTo((18 * 100.1) / 120, 6)
    expect(crossing?.y_m).toBeCloseTo(100.1, 6)
    const lateral = row(answer, 'lateral')
    // The fairway's edge is at 11.9 m, 3 m away: out of reach, so the drop is in rough.
    expect(lateral.spot.ground).toBe('rough')
    const nearer = relief({ ball: [18, 120], crossed: [13, 99] })
    expect(row(nearer, 'lateral').spot.ground).toBe('fairway')
    expect(nearer.options[0]?.strokes).toBeLessThan(answer.options[0]?.strokes ?? 0)
  })

  it('says what the spot is worth from its own lie: the ground of the survey, not of a cell', () => {
    for (const { spot, kind } of answer.options) {
      if (kind === 'stroke-and-distance') continue
      expect(spot.ground).toBe(groundAt(HOLE, [spot.x_m, spot.y_m]))
    }
    expect(row(answer, 'stroke-and-distance').spot).toMatchObject({ x_m: 0, y_m: 0, lie: 'tee' })
  })

  it('is mirrored for a mirrored player on the mirrored hole', () => {
    const other = relief({ ball: [-18, 120], player: mirrorPlayer(PLAYER) }, mirrored(HOLE))
    expect(other.options.map(({ kind }) => kind)).toEqual(answer.options.map(({ kind }) => kind))
    for (const [index, { strokes, spot }] of answer.options.entries()) {
      if (strokes === null) continue
      expect(other.options[index]?.strokes).toBeCloseTo(strokes, 6)
      expect(other.options[index]?.spot.x_m).toBeCloseTo(-spot.x_m, 4)
    }
  })

  it('calls two options under 0.03 apart too close', () => {
    const [first, second] = answer.options
    const gap = (second?.strokes ?? 0) - (first?.strokes ?? 0)
    expect(answer.verdict).toBe(gap < 0.03 ? 'too-close' : gap < 0.08 ? 'close' : 'clear')
    expect(reliefSentence({ ...answer, verdict: 'too-close' })).toMatch(
      /too close to call.*take the one you trust/i,
    )
  })

  it('needs a green', () => {
    expect(() => relief({ ball: [18, 120] }, { ...HOLE, green: null })).toThrow(
      expect.objectContaining({ code: 'MAR-PLAN-001' }),
    )
  })
})

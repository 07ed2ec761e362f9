import { beforeAll, describe, expect, it } from 'vitest'
import type { Hole } from '#golf/course/hole.ts'
import { holeGround, holeModel } from '#golf/strategy/hole-model.ts'
import { CALM_DAY } from '#golf/strategy/invented-hole.fixture.ts'
import { QUICK } from '#golf/strategy/settings.ts'
import { shortGameEndsInto } from '#golf/strategy/short-game-ends.ts'
import { smallHole, threeClubs } from '#golf/strategy/small-hole.fixture.ts'
import type { RecapHole } from './judge-choice.ts'
import { type NearGreenOfHole, nearGreenOfHole } from './near-green-of-hole.ts'
import type { RoundHole, RoundStroke } from './round.ts'
import { unknownStroke } from './unknown-stroke.ts'

const LENGTH = 230
const player = threeClubs()

/** A hole with the values of its short game alone: nothing of the full game is asked here. */
function shortGameOf(hole: Hole): RecapHole {
  const model = holeModel(holeGround(hole, QUICK.cellMetres), player, CALM_DAY)
  const values = new Float64Array(model.places.count)
  shortGameEndsInto(values, model.places, player, model.nearGreen)
  return { model, values, shots: [], quadrature: { good: 2, mishit: 2 }, lineStepDegrees: 5 }
}

let flat: RecapHole
let sloping: RecapHole
beforeAll(() => {
  const hole = smallHole(LENGTH, 40)
  flat = shortGameOf(hole)
  // Downhill towards the tee: a putt from behind the pin runs down, one from the front runs up.
  sloping = shortGameOf({ ...hole, greenFallPercent: 3, greenFallTowardDegrees: 180 })
})

function read(
  strokes: readonly Partial<RoundStroke>[],
  rest: Partial<RoundHole> = {},
  solved: RecapHole = flat,
): NearGreenOfHole {
  const hole: RoundHole = {
    ref: '1',
    strokes: strokes.map((stroke, index) => ({
      ...unknownStroke(''),
      place: `stroke ${index + 1}`,
      ...stroke,
    })),
    ...{ putts: 0, firstPuttMetres: null, isPickedUp: false, place: 'line 1' },
    ...rest,
  }
  return nearGreenOfHole(solved, { hole, date: '2026-07-23' })
}

const beside = { finish: { x: 3, y: LENGTH - 22 }, lie: 'rough' } as const
const green = (leftMetres: number | null): Partial<RoundStroke> => ({ finish: { letter: 'g', leftMetres } })

describe('a hole as it was written down', () => {
  it('gives each putt with a length, by what it left or that it fell', () => {
    const { putts, strokes, unused } = read([green(6), green(0.8), {}])
    expect(putts).toEqual([
      { date: '2026-07-23', metres: 6, end: { leftMetres: 0.8 } },
      { date: '2026-07-23', metres: 0.8, end: { putts: 1 } },
    ])
    expect(strokes).toEqual([])
    expect(unused).toEqual({ length: 0, fringe: 0, 'near-green': 0 })
  })

  it('gives putts that were counted with the length of the first, and once', () => {
    const logged = { putts: 2, firstPuttMetres: 7 }
    const at = { finish: { x: 0, y: LENGTH - 5 }, lie: 'green' } as const
    expect(read([at], logged).putts).toEqual([{ date: '2026-07-23', metres: 7, end: { putts: 2 } }])
    expect(read([green(5)], { putts: 3 }).putts).toEqual([
      { date: '2026-07-23', metres: 5, end: { putts: 3 } },
    ])
  })

  it('leaves out putts of which only a place is known, and a hole that was picked up', () => {
    const at = { finish: { x: 0, y: LENGTH - 5 }, lie: 'green' } as const
    expect(read([at], { putts: 2 }).unused).toEqual({ length: 2, fringe: 0, 'near-green': 0 })
    expect(read([green(6), green(2), {}], { isPickedUp: true })).toMatchObject({
      putts: [{ metres: 6, end: { leftMetres: 2 } }],
      unused: { length: 1 },
    })
  })

  it('gives strokes near the green with lie, distance and what they left', () => {
    const { strokes, putts } = read([beside, green(2.5)], { putts: 2 })
    expect(strokes).toEqual([
      {
        ...{ date: '2026-07-23', lie: 'rough', used: 1, after: { puttMetres: 2.5 } },
        metres: expect.closeTo(Math.hypot(3, 22), 6) as number,
        added: expect.closeTo(0, 2) as number,
      },
    ])
    expect(putts).toHaveLength(1)
    const holed = read([beside, {}])
    expect(holed.strokes[0]?.after).toBeNull()
    const short = read([beside, { finish: { x: 1, y: LENGTH - 14 }, lie: 'first-cut' }, green(1)], {
      putts: 1,
    })
    expect(short.strokes.map(({ lie, after }) => [lie, after === null ? null : Object.keys(after)])).toEqual([
      ['rough', ['lie', 'metres', 'added']],
      ['first-cut', ['puttMetres']],
    ])
  })

  it('leaves out strokes from the fringe and those that left nobody knows what, each counted once', () => {
    const fringe = { finish: { x: 0, y: LENGTH - 13 }, lie: 'fringe' } as const
    const { strokes, unused } = read([beside, fringe, { finish: { x: 0, y: LENGTH - 4 }, lie: 'green' }], {
      putts: 2,
    })
    expect(strokes).toHaveLength(1)
    expect(unused).toEqual({ length: 2, fringe: 1, 'near-green': 0 })
    // Nobody knows where the putts began: they are one with the chip.
    expect(read([beside, green(null)], { putts: 2 }).unused['near-green']).toBe(3)
  })

  it('counts a penalty with the stroke that cost it', () => {
    const dropped = { finish: { x: 5, y: LENGTH - 25 }, lie: 'rough', penalty: 1 } as const
    expect(read([beside, dropped, green(3)], { putts: 1 }).strokes.map(({ used }) => used)).toEqual([2, 1])
  })
})

it('takes a putt on a slope for the level one that is worth as much, and a chip to it for what it costs there', () => {
  const from = { finish: { x: 0, y: LENGTH + 30 }, lie: 'rough' } as const
  const logged = { putts: 2, firstPuttMetres: 6 }
  const above = { finish: { x: 0, y: LENGTH + 6 }, lie: 'green' } as const
  const [level, slope] = [flat, sloping].map((solved) => read([from, above], logged, solved))
  expect(level?.putts[0]?.metres).toBe(6)
  expect(slope?.putts[0]?.metres).toBeGreaterThan(6.3)
  expect(slope?.strokes[0]?.added).toBeGreaterThan(level?.strokes[0]?.added ?? 0)
})

it('takes putts on a slope by their number alone, since how far a miss runs there is the slope’s too', () => {
  const above = { finish: { letter: 'g', leftMetres: 6 } } as const
  const { putts, unused } = read([above, green(2), green(0.5), {}], {}, sloping)
  expect(putts.map(({ end }) => end)).toEqual([{ putts: 3 }])
  expect(unused.length).toBe(0)
  expect(read([above, green(2), {}], { isPickedUp: true }, sloping).unused.length).toBe(2)
  expect(read([above, green(2), beside, green(1), {}], {}, sloping).unused.length).toBe(4)
})

import { describe, expect, it } from 'vitest'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { area, course, holeLine, rectangle } from '#golf/course/invented-course.fixture.ts'
import { moveHazards } from '#golf/course/move-hazards.ts'
import type { Flip, Plan } from '#golf/strategy/plan.ts'
import { polygonCentroid } from '#numbers/geometry/polygon.ts'
import { openDesk } from './desk.ts'
import { moveHazard, setWindFrom, setWindPart, setWindSpeed, windParts } from './edits.ts'
import { type Quantity, quantityName, rememberScales, restOf, scalesOf, setOn, valueOn } from './ruler.ts'

// A dogleg: the pond lies beside the second leg, so that its box is turned against the hole frame.
const hole = holeFromCourse(
  course({
    holes: [
      holeLine('1', [
        [0, 0],
        [0, 200],
        [120, 320],
      ]),
    ],
    areas: [
      area('green', 'green', rectangle(112, 312, 128, 328)),
      area('pond', 'penalty-red', rectangle(20, 240, 40, 260)),
    ],
  }),
  '1',
)
const desk = openDesk('ness', '1', 'wren')
const ALONG: Quantity = { what: 'wind along' }
const POND: Quantity = { what: 'hazard along', hazard: 'pond' }

const flip = (what: string, direction: string, at: number | null, club: string | null): Flip => ({
  what,
  unit: '',
  direction,
  at,
  club,
  ...(what.startsWith('hazard:') ? { area: 'pond' } : {}),
})

function plan(
  club: string,
  flips: Flip[],
  side: 'left' | 'right' = 'right',
): Pick<Plan, 'flips' | 'options' | 'avoid'> {
  return { flips, options: [{ club }] as unknown as Plan['options'], avoid: { what: 'water', side } }
}

describe('the scales of the ruler of flips', () => {
  it('take the wind apart along the hole and put it together again', () => {
    const windy = setWindFrom(setWindSpeed(desk, 10), hole.bearingDegrees + 30)
    expect(windParts(windy, hole.bearingDegrees).into).toBeCloseTo(10 * Math.cos(Math.PI / 6), 9)
    const turned = setOn(windy, hole, ALONG, -5)
    expect(valueOn(turned, hole, ALONG)).toBeCloseTo(-5, 9)
    expect(valueOn(turned, hole, { what: 'wind across' })).toBeCloseTo(5, 9)
    expect(setWindPart(desk, 0, 'into', 99).day.wind.speedMetresPerSecond).toBe(15)
    expect(setWindPart(windy, hole.bearingDegrees, 'into', 0).day.wind.fromDegrees).toBeCloseTo(
      (hole.bearingDegrees + 90) % 360,
      6,
    )
  })

  it('move a hazard along the first leg though it lies beside another, and keep what it was moved across', () => {
    const moved = setOn(setOn(desk, hole, { ...POND, what: 'hazard across' }, 7), hole, POND, 12)
    expect(valueOn(moved, hole, POND)).toBeCloseTo(12, 9)
    const there = moveHazards(hole, moved.moved).areas.find(({ id }) => id === 'pond')!
    const [x, y] = polygonCentroid(there.polygon)
    expect([x, y]).toEqual([expect.closeTo(37, 6), expect.closeTo(262, 6)])
  })

  it('say at which value which club takes over, on both sides of what is on the desk', () => {
    const windy = setWindPart(desk, hole.bearingDegrees, 'into', 2)
    const scales = scalesOf(
      plan(
        '5-wood',
        [
          flip('wind', 'into', 1.5, '5-hybrid'),
          flip('wind', 'behind', 3, 'driver'),
          flip('firmness', 'softer', 0.7, 'driver'),
          flip('firmness', 'firmer', null, null),
          flip('spread', 'wider', 1.25, '7-iron'),
          flip('hazard:water-left', 'nearer the line', 8, 'driver'),
        ],
        'left',
      ),
      { ...windy, spread: 1.2 },
      hole,
    )
    expect(scales.map(({ quantity, crossings }) => [quantityName(quantity), crossings])).toEqual([
      [
        'wind along',
        [
          { at: expect.closeTo(3.5, 9), below: '5-wood', above: '5-hybrid' },
          { at: expect.closeTo(-1, 9), below: 'driver', above: '5-wood' },
        ],
      ],
      ['firmness', [{ at: 0.7, below: 'driver', above: '5-wood' }]],
      ['spread', [{ at: expect.closeTo(1.5, 9), below: '5-wood', above: '7-iron' }]],
      ['hazard across pond', [{ at: 8, below: '5-wood', above: 'driver' }]],
    ])
  })

  it('keep a tick where it is while one drags past it, and forget it when something else changes', () => {
    const before = scalesOf(plan('5-wood', [flip('wind', 'into', 4, '5-hybrid')]), desk, hole)
    const past = setOn(desk, hole, ALONG, 6)
    const found = scalesOf(
      plan('5-hybrid', [flip('wind', 'behind', 2.3, '5-wood'), flip('wind', 'into', 3, '7-iron')]),
      past,
      hole,
    )
    const kept = rememberScales(before, found, (quantity) => restOf(past, hole, quantity))
    expect(kept[0]?.crossings).toEqual([
      { at: 4, below: '5-wood', above: '5-hybrid' },
      { at: expect.closeTo(9, 9), below: '5-hybrid', above: '7-iron' },
    ])
    const firm = { ...past, day: { ...past.day, firmness: 1.5 } }
    const anew = rememberScales(
      kept,
      scalesOf(plan('5-hybrid', [flip('wind', 'into', 3, '7-iron')]), firm, hole),
      (quantity) => restOf(firm, hole, quantity),
    )
    expect(anew[0]?.crossings).toHaveLength(1)
  })

  it('keep the scale of a hazard that is moved until it no longer matters', () => {
    const before = scalesOf(plan('5-wood', [flip('hazard:water-right', 'further', 20, 'driver')]), desk, hole)
    const away = setOn(desk, hole, POND, 60)
    const none = rememberScales(before, [], (quantity) => restOf(away, hole, quantity))
    expect(none.map(({ quantity }) => quantityName(quantity))).toEqual(['hazard along pond'])
    const other = moveHazard(away, 'elsewhere', { near: 5, far: 5, left: 0, right: 0 })
    expect(rememberScales(before, [], (quantity) => restOf(other, hole, quantity))).toEqual([])
  })
})

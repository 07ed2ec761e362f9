import { describe, expect, it } from 'vitest'
import type { HazardMeasure } from '#golf/course/hole-measures.ts'
import { measureHole } from '#golf/course/measure-hole.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { greenNumbers } from '../green-numbers.ts'
import type { HoleModel } from '../hole-model.ts'
import { area, box, inventedHole } from '../invented-hole.fixture.ts'
import type { Shot } from '../shots.ts'
import { backNumber } from './back-number.ts'
import { fatSide } from './fat-side.ts'
import { fullClub } from './full-club.ts'
import { goOrLayUp } from './go-or-lay-up.ts'
import { ruleBands } from './rule-bands.ts'
import type { RuleOption, RuleScene } from './rule-scene.ts'
import { watersInPlay } from './short-of-water.ts'

// Options are written out by hand here, so that every verdict can be told by looking: no hole is solved.
const LENGTH = 300
const hole = inventedHole(LENGTH, [area('penalty-red', box(-60, 60, 210, 220))])
const measures = measureHole(hole)

/** A shot straight up the hole line, `strokes` to hole out with it. */
function option(from: number, total: number, strokes: number, shape: Shot['shape'] = 'stock'): RuleOption {
  const shot = { club: `club ${total}`, shape, stock: { totalMetres: total } } as Shot
  const finish: Point = [0, from + total]
  const toPin = Math.abs(LENGTH - from - total)
  return { shot, strokes, heading: 0, total, finish, along: from + total, toPin }
}

function scene(from: number, options: readonly RuleOption[], on = hole): RuleScene {
  const model = { hole: on } as HoleModel
  const place: Point = [0, from]
  const numbers = greenNumbers(on, place)
  return { measures, model, from: place, lie: 'fairway', along: from, toPin: LENGTH - from, numbers, options }
}

describe('stay short of the water', () => {
  const [rule] = watersInPlay(measures)

  it('compares what stays 10 m short with what goes on past its edge, and says nothing of what lies between', () => {
    const sort = rule?.sort(scene(50, []))
    expect([149, 151, 160.5].map((total) => sort?.(option(50, total, 4)))).toEqual([
      'follows',
      'neither',
      'departs',
    ])
    expect(rule?.sort(scene(201, []))).toBeNull()
  })

  it('speaks once for each water near the line', () => {
    const far = { ...(measures.hazards[0] as HazardMeasure), offsetMetres: -26, side: 'left' as const }
    const near = { ...far, offsetMetres: -24 }
    expect(watersInPlay({ ...measures, hazards: [far, near] }).map(({ hazard }) => hazard)).toEqual([
      'water on the left',
    ])
  })

  it('is right, then wrong: with both distances, and the one at which it turns', () => {
    const places = [
      scene(40, [option(40, 150, 3.9), option(40, 190, 4.0)]),
      scene(50, [option(50, 150, 3.8), option(50, 190, 3.86)]),
      scene(60, [option(60, 140, 3.75), option(60, 190, 3.73)]),
      scene(70, [option(70, 130, 3.7), option(70, 190, 3.61)]),
      scene(80, [option(80, 100, 3.7)]),
    ]
    const found = rule && ruleBands(rule, places)
    expect(found?.bands.map(({ from_m, to_m, verdict }) => [verdict, from_m, to_m])).toEqual([
      ['right', 260, 250],
      ['indifferent', 240, 240],
      ['wrong', 230, 230],
    ])
    expect(found?.bands[0]?.saves.least).toBeCloseTo(0.06, 9)
    expect(found?.bands[0]?.saves.most).toBeCloseTo(0.1, 9)
    expect(found?.turns).toEqual([{ right_m: 250, wrong_m: 230, at_m: expect.closeTo(242.5, 9) }])
  })
})

describe('play to the back number', () => {
  // The green of the invented hole reaches 11.3 m to every side of the pin.
  const from = 150
  const options = [139, 150, 160].map((total) => option(from, total, 3))

  it('follows with the one shot that is nearest to the back edge', () => {
    const sort = backNumber.sort(scene(from, options))
    expect(options.map((one) => sort?.(one))).toEqual(['departs', 'departs', 'follows'])
    expect(sort?.(option(from, 120, 3))).toBe('neither')
  })

  it('says nothing where no shot comes near the back edge', () => {
    expect(backNumber.sort(scene(from, [option(from, 139, 3), option(from, 152, 3)]))).toBeNull()
  })
})

describe('miss on the fat side', () => {
  const from = 150
  const aimed = (metres: number): RuleOption => ({
    ...option(from, 150, 3),
    heading: Math.atan2(metres, 150),
  })

  it('says nothing of a pin in the middle', () => {
    expect(fatSide.sort(scene(from, []))).toBeNull()
  })

  it('follows towards the side with more green, and departs at the pin and beyond it', () => {
    const pin: Point = [-6, LENGTH]
    const line: Point[] = [[0, 0], pin]
    const tucked = { ...hole, pin, line }
    const sort = fatSide.sort({ ...scene(from, [], tucked), from: [-6, from] })
    expect([3, 1, 0, -3].map((metres) => sort?.(aimed(metres)))).toEqual([
      'follows',
      'neither',
      'departs',
      'departs',
    ])
  })
})

describe('lay up to a full club', () => {
  const clubs = [60, 72, 85, 170].map((total) => option(30, total, 5))

  it('follows with a leave of one of the three shortest full clubs, and departs with a shorter leave', () => {
    const sort = fullClub.sort(scene(30, [...clubs, option(30, 40, 5, 'half')]))
    const leaving = (metres: number): RuleOption => option(30, LENGTH - 30 - metres, 4)
    expect([88, 78, 66, 62, 50].map((metres) => sort?.(leaving(metres)))).toEqual([
      'follows',
      'neither',
      'neither',
      'follows',
      'departs',
    ])
  })

  it('says nothing where the best stroke goes for the green', () => {
    expect(fullClub.sort(scene(120, [...clubs, option(120, 178, 3)]))).toBeNull()
  })
})

describe('go or lay up', () => {
  const gone = (from: number, strokes: number): RuleOption => option(from, LENGTH - from, strokes)
  const laid = (from: number): RuleOption => option(from, 100, 4)

  it('switches by cost where both were possible, and by reach where going has just become so', () => {
    const [, far] = goOrLayUp([
      scene(60, [laid(60)]),
      scene(70, [laid(70), gone(70, 4.2)]),
      scene(80, [laid(80), gone(80, 4.02)]),
      scene(90, [laid(90), gone(90, 3.9)]),
    ])
    expect(far?.over).toBeNull()
    expect(far?.bands.map(({ choice, from_m, to_m }) => [choice, from_m, to_m])).toEqual([
      ['out-of-reach', 240, 240],
      ['lay-up', 230, 230],
      ['either', 220, 220],
      ['go', 210, 210],
    ])
    expect(far?.switches).toEqual([{ at_m: expect.closeTo(220 - 10 / 6, 9), to: 'go', by: 'cost' }])
    const [, near] = goOrLayUp([scene(60, [laid(60)]), scene(70, [laid(70), gone(70, 3.5)])])
    expect(near?.switches).toEqual([{ at_m: 230, to: 'go', by: 'reach' }])
    expect(near?.curve.map(({ go }) => go)).toEqual([null, 3.5])
  })

  it('weighs going over water across the line on its own, and not from beyond it', () => {
    const past = (from: number, strokes: number): RuleOption => option(from, 230 - from, strokes)
    const [water] = goOrLayUp([
      scene(60, [laid(60), past(60, 4.1)]),
      scene(100, [laid(100), past(100, 3.9)]),
      scene(225, [gone(225, 3)]),
    ])
    expect(water?.over).toBe('water')
    expect(water?.bands.map(({ choice }) => choice)).toEqual(['lay-up', 'go'])
    expect(water?.switches).toEqual([{ at_m: expect.closeTo(220, 9), to: 'go', by: 'cost' }])
  })
})

import { beforeAll, describe, expect, it } from 'vitest'
import type { Hole } from '#golf/course/hole.ts'
import { mirrorPlayer } from '#golf/player/mirror-player.ts'
import type { Player } from '#golf/player/player.ts'
import type { ShotRecord, StruckWay } from '#golf/player/shot-record.ts'
import { holeGround, holeModel } from '#golf/strategy/hole-model.ts'
import {
  area,
  box,
  CALM_DAY,
  inventedHole,
  inventedPlayer,
  mirrored,
} from '#golf/strategy/invented-hole.fixture.ts'
import { QUICK } from '#golf/strategy/settings.ts'
import { solveHole } from '#golf/strategy/solve-hole.ts'
import type { RecapHole } from './judge-choice.ts'
import type { RoundHole, RoundStroke } from './round.ts'
import { FINISH_SD_METRES, FINISH_SD_SHARE } from './settings.ts'
import { type ShotsOfHole, shotsOfHole, shotsOfHoles } from './shots-of-hole.ts'
import { unknownStroke } from './unknown-stroke.ts'

/** Fairway all over, a red pond across it from 150 to 190 m, sand beyond it to the left, a wood to the right. */
const hole = inventedHole(330, [
  area('fairway', box(-80, 80, -20, 340)),
  area('penalty-red', box(-80, 20, 150, 190)),
  area('bunker', box(-60, -8, 205, 230)),
  area('out', box(60, 300, -100, 500), 'out right'),
])
const player = inventedPlayer([
  { name: 'driver', carry_m: 180, total_m: 198 },
  { name: '7-iron', carry_m: 125, total_m: 131 },
  { name: 'sand-wedge', carry_m: 70, total_m: 71 },
])

function solve(of: Hole, by: Player): RecapHole {
  const model = holeModel(holeGround(of, QUICK.cellMetres), by, CALM_DAY)
  const { problem, values } = solveHole(model, QUICK.quadrature, QUICK.aboutPinDegrees)
  return { model, values, shots: problem.shots, quadrature: { good: 24, mishit: 8 }, lineStepDegrees: 5 }
}

let solved: RecapHole
let model: RecapHole['model']
beforeAll(() => {
  solved = solve(hole, player)
  model = holeModel(holeGround(hole), player, CALM_DAY)
})

const logged = (strokes: readonly Partial<RoundStroke>[], rest: Partial<RoundHole> = {}): RoundHole => ({
  ref: hole.ref,
  strokes: strokes.map((stroke, index) => ({
    ...unknownStroke(''),
    place: `stroke ${index + 1}`,
    ...stroke,
  })),
  putts: 2,
  firstPuttMetres: null,
  isPickedUp: false,
  place: 'line 1',
  ...rest,
})
const shotsOn = (strokes: readonly Partial<RoundStroke>[], rest?: Partial<RoundHole>): ShotsOfHole =>
  shotsOfHole(solved, model, { date: '2026-07-23', hole: logged(strokes, rest) })
const onlyShot = (
  strokes: readonly Partial<RoundStroke>[],
  rest?: Partial<RoundHole>,
): ShotRecord & { ways: readonly StruckWay[] } => {
  const [shot, more] = shotsOn(strokes, rest).shots
  expect(more).toBeUndefined()
  return { ...(shot as ShotRecord), ways: shot?.ways ?? [] }
}

/** Mean and standard deviation of a number of the ways, each by its likelihood. */
function spreadOf(ways: readonly StruckWay[], of: (way: StruckWay) => number): { mean: number; sd: number } {
  const all = ways.reduce((sum, { ifGood }) => sum + ifGood, 0)
  const mean = ways.reduce((sum, way) => sum + way.ifGood * of(way), 0) / all
  const square = ways.reduce((sum, way) => sum + way.ifGood * (of(way) - mean) ** 2, 0) / all
  return { mean, sd: Math.sqrt(square) }
}

const driver = { club: 'driver', aim_offset: 0 }
const aimed = { ...driver, aimOffsetMetres: 0 }
const ON_GREEN = { club: '7-iron', aimOffsetMetres: 0, finish: { x: 2, y: 325 } } as const

describe('a stroke to a place on open fairway', () => {
  it('carried so far that the stock run is left, as sure as the place is', () => {
    const { ways, ...shot } = onlyShot([{ ...aimed, finish: { x: 17, y: 140 } }])
    const reach = Math.hypot(17, 140)
    const sd = Math.hypot(FINISH_SD_METRES, FINISH_SD_SHARE * reach)
    const carry = spreadOf(ways, ({ carryMetres }) => carryMetres)
    // Cells of 3 m and runs of 1.5 m leave a metre or so.
    expect(Math.abs(carry.mean - (reach - 18))).toBeLessThan(1.5)
    expect(carry.sd / sd).toBeGreaterThan(0.85)
    expect(carry.sd / sd).toBeLessThan(1.25)
    const off = spreadOf(ways, ({ directionDegrees }) => directionDegrees ?? Number.NaN)
    expect(off.mean).toBeCloseTo((Math.atan2(17, 140) * 180) / Math.PI, 0)
    expect(off.sd / ((sd / reach) * (180 / Math.PI))).toBeGreaterThan(0.8)
    expect(off.sd / ((sd / reach) * (180 / Math.PI))).toBeLessThan(1.3)
    expect(spreadOf(ways, ({ carryPerRun }) => carryPerRun).mean).toBeCloseTo(1, 1)
    expect(shot).toMatchObject({
      date: '2026-07-23',
      club: 'driver',
      lie: 'tee',
      carryMetres: null,
      strike: null,
    })
    expect(shot.totalMetres).toBeCloseTo(140, 0)
    expect(shot.offlineMetres).toBeCloseTo(17, 0)
  })

  it('is off the line that was aimed at, not off the middle of the hole', () => {
    const straight = onlyShot([{ ...driver, aimOffsetMetres: 25, finish: { x: 25, y: 205 } }])
    expect(
      Math.abs(spreadOf(straight.ways, ({ directionDegrees }) => directionDegrees ?? 99).mean),
    ).toBeLessThan(0.6)
  })

  it('is off the plan’s line where it was played as planned', () => {
    const { ways } = onlyShot([{ club: null, isAsPlanned: true, finish: { x: 0, y: 140 } }])
    expect(ways.every(({ directionDegrees }) => directionDegrees !== null)).toBe(true)
  })

  it('says how far and not how straight where nobody knows the line', () => {
    const read = shotsOn([{ club: 'driver', finish: { x: 17, y: 140 } }])
    expect(read.withoutLine).toBe(1)
    const ways = read.shots[0]?.ways ?? []
    expect(ways.every(({ directionDegrees }) => directionDegrees === null)).toBe(true)
    expect(
      Math.abs(spreadOf(ways, ({ carryMetres }) => carryMetres).mean - (Math.hypot(17, 140) - 18)),
    ).toBeLessThan(1.5)
  })

  it('gives mirrored ways on a mirrored hole', () => {
    const turnedHole = mirrored(hole)
    const turned = mirrorPlayer(player)
    const there = { ...unknownStroke(''), place: 'stroke 1', ...driver }
    const [here, other] = [
      onlyShot([{ ...there, aimOffsetMetres: 5, finish: { x: 25, y: 205 } }]),
      shotsOfHole(solve(turnedHole, turned), holeModel(holeGround(turnedHole), turned, CALM_DAY), {
        date: null,
        hole: logged([{ ...there, aimOffsetMetres: -5, finish: { x: -25, y: 205 } }]),
      }).shots[0],
    ]
    const key = ({ carryMetres, ifGood }: StruckWay, off: number): string =>
      [carryMetres, off, ifGood].map((value) => value.toFixed(6)).join(' ')
    expect(other?.ways?.map((way) => key(way, -(way.directionDegrees ?? 0))).sort()).toEqual(
      here.ways.map((way) => key(way, way.directionDegrees ?? 0)).sort(),
    )
  })
})

describe('a stroke that the ground stopped', () => {
  it('may have carried anything over the water it was lost in, and nothing else', () => {
    const { ways, totalMetres } = onlyShot([
      { ...aimed, finish: { x: 0, y: 146 }, penalty: 1, lie: 'fairway' },
      { club: 'sand-wedge' },
    ])
    expect(totalMetres).toBeNull()
    const likely = ways.filter(({ ifGood }) => ifGood > 0.2 * Math.max(...ways.map((way) => way.ifGood)))
    // Into the pond on the fly, or by the run of 18 m.
    for (const { carryMetres } of likely) {
      expect(carryMetres).toBeGreaterThan(150 - 20)
      expect(carryMetres).toBeLessThan(195)
    }
    const reach = spreadOf(likely, ({ carryMetres }) => carryMetres)
    expect(reach.sd).toBeGreaterThan(10)
  })

  it('went in about where it was seen to', () => {
    const { ways } = onlyShot([{ ...aimed, finish: { x: -10, y: 170 }, penalty: 1 }])
    expect(
      Math.abs(spreadOf(ways, ({ carryMetres }) => carryMetres).mean - Math.hypot(10, 170)),
    ).toBeLessThan(3)
  })

  it('carried into sand with no run to come', () => {
    const { ways } = onlyShot([{ ...aimed, finish: { x: -30, y: 215 } }])
    const carry = spreadOf(ways, ({ carryMetres }) => carryMetres)
    const reach = Math.hypot(30, 215)
    expect(carry.mean).toBeGreaterThan(reach - 8)
    expect(carry.mean).toBeLessThan(reach + 1)
    expect(spreadOf(ways, ({ carryPerRun }) => carryPerRun).mean).toBeLessThan(0.4)
  })

  it('was wide where it went out of bounds, however far', () => {
    const { ways } = onlyShot([{ ...aimed, finish: { letter: 'o', leftMetres: null } }])
    expect(Math.min(...ways.map(({ directionDegrees }) => directionDegrees ?? 0))).toBeGreaterThan(10)
    expect(spreadOf(ways, ({ carryMetres }) => carryMetres).sd).toBeGreaterThan(20)
  })
})

describe('a letter and what was left', () => {
  it('is a ring and not a place: wide to the sides, as sure of the distance as it was paced', () => {
    const { ways } = onlyShot([{ ...aimed, finish: { letter: 'f', leftMetres: 220 } }])
    const off = spreadOf(ways, ({ directionDegrees }) => directionDegrees ?? Number.NaN)
    expect(Math.abs(off.mean)).toBeLessThan(3)
    expect(off.sd).toBeGreaterThan(4)
    const straight = ways.filter(({ directionDegrees }) => Math.abs(directionDegrees ?? 99) < 2)
    expect(
      Math.abs(spreadOf(straight, ({ carryMetres }) => carryMetres).mean - (330 - 220 - 18)),
    ).toBeLessThan(3)
  })

  it('gives no direction to the stroke after it, since nobody knows where on the ring it was played from', () => {
    const read = shotsOn([
      { ...aimed, finish: { letter: 'f', leftMetres: 120 } },
      { ...ON_GREEN, finish: { letter: 'g', leftMetres: 5 } },
    ])
    expect(read.shots).toHaveLength(2)
    expect(read.withoutLine).toBe(1)
    expect(read.shots[1]?.ways?.[0]?.directionDegrees).toBeNull()
  })
})

it('counts every stroke once: learned from, or why not', () => {
  const read = shotsOn([
    { ...aimed, finish: { x: 10, y: 205 } },
    { club: null, finish: { x: 12, y: 230 } },
    { club: '7-iron', finish: null },
    { club: 'sand-wedge', finish: { x: 3, y: 312 } },
    { club: 'sand-wedge', finish: { x: 1, y: 329 } },
  ])
  const { unused, shots } = read
  expect(shots).toHaveLength(1)
  // A stroke without a club, two with no place between them, one from beside the green that left no length, two putts.
  expect(unused).toEqual({
    ...{ length: 2, fringe: 0, 'near-green': 1 },
    ...{ places: 2, club: 1, swing: 0, line: 0, unlike: 0 },
  })
})

it('says nothing where no strike of the club ends so, and where the swing may have been no full one', () => {
  expect(
    shotsOn([{ club: 'sand-wedge', aimOffsetMetres: 0, finish: { x: 0, y: 240 } }], {
      putts: 0,
      isPickedUp: true,
    }).unused.unlike,
  ).toBe(1)
  const short = shotsOn([
    { ...aimed, finish: { x: 0, y: 280 } },
    { club: 'sand-wedge', finish: { x: 0, y: 326 } },
  ])
  expect(short.unused.swing).toBe(1)
  expect(shotsOn([{ club: 'driver', finish: { letter: 'o', leftMetres: null } }]).unused.line).toBe(1)
})

it('learns from a hole that was picked up as far as it goes', () => {
  const read = shotsOn([{ ...aimed, finish: { x: 25, y: 205 } }], { putts: 0, isPickedUp: true })
  expect(read.shots).toHaveLength(1)
  expect(read.shots[0]?.totalMetres).toBeCloseTo(205, 0)
})

describe('a stroke that was played as planned', () => {
  const short = inventedHole(128, [area('fairway', box(-40, 40, -20, 160))])
  /** As the card was made, the 7-iron reached the green; since then the player hits it shorter and the plan is the driver. */
  const then = inventedPlayer([
    { name: 'driver', carry_m: 180, total_m: 198 },
    { name: '7-iron', carry_m: 122, total_m: 126 },
  ])
  const now = inventedPlayer([
    { name: 'driver', carry_m: 119, total_m: 126 },
    { name: '7-iron', carry_m: 70, total_m: 73 },
  ])
  const clubsOf = (planned: Player | null): string[] =>
    shotsOfHoles({
      ...{ hole: short, player: now, day: CALM_DAY, isQuick: true },
      logged: [{ date: null, hole: logged([{ isAsPlanned: true, finish: { x: 0, y: 120 } }]) }],
      planned: planned && { player: planned, day: CALM_DAY },
    }).shots.map(({ club }) => club)

  it('was the club of the card, whatever the plan is since', () => {
    expect(clubsOf(null)).toEqual(['driver'])
    expect(clubsOf(then)).toEqual(['7-iron'])
  })
})

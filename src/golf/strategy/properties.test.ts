import { beforeAll, describe, expect, it } from 'vitest'
import type { Hole } from '#golf/course/hole.ts'
import { mirrorPlayer } from '#golf/player/mirror-player.ts'
import type { Player } from '#golf/player/player.ts'
import { puttingValues } from '#golf/player/putting-values.ts'
import { type ShortestPathSolution, solveShortestPath } from '#numbers/solver/solve-shortest-path.ts'
import { type HoleModel, holeGround, holeModel } from './hole-model.ts'
import { holeProblem } from './hole-problem.ts'
import {
  area,
  box,
  CALM_DAY,
  enclosed,
  inventedHole,
  inventedPlayer,
  mirrored,
} from './invented-hole.fixture.ts'
import { placeAt } from './places.ts'
import { planHole } from './plan-hole.ts'

const CLUBS = [
  { name: '3-wood', carry_m: 185, total_m: 200, left_share: 1.2, right_share: 0.8, curve_share: -0.04 },
  { name: '6-iron', carry_m: 138, total_m: 145 },
  { name: 'pitching-wedge', carry_m: 98, total_m: 101 },
  { name: 'sand-wedge', carry_m: 70, total_m: 71 },
]
const QUADRATURE = { good: 16, mishit: 8 }
const CELL = 6

/** Water on the right and short of the green, sand, trees, and boundaries, which keep the places few. */
function troubled(lengthMetres: number): Hole {
  const hole = inventedHole(lengthMetres, [
    area('fairway', box(-17.3, 14.9, 60.2, lengthMetres - 15)),
    area('penalty-red', box(16.1, 60.7, 120.4, 190.3)),
    area('bunker', box(-14.2, -4.7, lengthMetres - 21.3, lengthMetres - 9.1)),
    area('trees', box(-70.3, -30.8, 40.6, 170.2)),
  ])
  return enclosed(hole, -71.9, 60.7)
}

function solve(
  hole: Hole,
  player: Player,
): ShortestPathSolution & { readonly model: HoleModel; readonly tee: number } {
  const model = holeModel(holeGround(hole, CELL), player, CALM_DAY)
  const solution = solveShortestPath(holeProblem(model, { quadrature: QUADRATURE }), { tolerance: 1e-9 })
  return { ...solution, model, tee: solution.values[placeAt(model.places, 0, 0)] as number }
}

const player = inventedPlayer(CLUBS)

describe('what must be true of every plan', () => {
  const hole = troubled(240.7)
  let usual: ReturnType<typeof solve>
  beforeAll(() => {
    usual = solve(hole, player)
  })

  it('mirrors: a mirrored player on a mirrored hole has the same values within 1e-9 and the mirrored plan', () => {
    const tilted = { ...hole, greenFallPercent: 3, greenFallTowardDegrees: 200 }
    const question = {
      courseName: 'test',
      day: CALM_DAY,
      draws: 0,
      flips: false,
      cellMetres: CELL,
      quadrature: QUADRATURE,
    }
    const plan = planHole({ ...question, hole: tilted, player })
    const mirror = planHole({ ...question, hole: mirrored(tilted), player: mirrorPlayer(player) })
    expect(mirror.value.strokes).toBeCloseTo(plan.value.strokes, 9)
    expect(mirror.options.map((option) => option.club)).toEqual(plan.options.map((option) => option.club))
    for (const [index, option] of plan.options.entries()) {
      const other = mirror.options[index]
      expect(other?.strokes).toBeCloseTo(option.strokes, 9)
      expect(other?.aim.heading_deg).toBeCloseTo(-option.aim.heading_deg, 9)
    }
  })

  it('is never worse off for one club more', () => {
    const poorer = solve(hole, inventedPlayer(CLUBS.filter((club) => club.name !== '6-iron')))
    const richer = usual
    // Reason: only the clubs listed, so the other numbers of both players are the same.
    for (const state of richer.model.states.order)
      expect(richer.values[state] as number).toBeLessThanOrEqual((poorer.values[state] as number) + 1e-8)
    expect(richer.tee).toBeLessThan(poorer.tee)
  })

  it('is never worse off for more relief: red water beats yellow, yellow beats out of bounds, a Local Rule helps', () => {
    const withWater = (ground: 'penalty-red' | 'penalty-yellow' | 'out'): Hole => ({
      ...hole,
      areas: hole.areas.map((one) => (one.ground === 'penalty-red' ? { ...one, ground } : one)),
    })
    const red = usual
    const yellow = solve(withWater('penalty-yellow'), player)
    const out = solve(withWater('out'), player)
    const local = solve({ ...withWater('out'), localRules: ['E-5'] }, player)
    for (const state of red.model.states.order) {
      expect(red.values[state] as number).toBeLessThanOrEqual((yellow.values[state] as number) + 1e-8)
      expect(yellow.values[state] as number).toBeLessThanOrEqual((out.values[state] as number) + 1e-8)
      expect(local.values[state] as number).toBeLessThanOrEqual((out.values[state] as number) + 1e-8)
    }
    expect(red.tee).toBeLessThanOrEqual(yellow.tee + 1e-8)
    expect(yellow.tee).toBeLessThan(out.tee)
  })

  it('is never better off when more balls in the trees cannot be played', () => {
    const thicker = (unplayableShare: number): Hole => ({
      ...hole,
      areas: hole.areas.map((one) =>
        one.ground === 'trees' ? { ...one, unplayableShare, lostShare: 0.02 } : one,
      ),
    })
    const [open, thick, wall] = [0, 0.4, 0.9].map((share) => solve(thicker(share), player)) as [
      ReturnType<typeof solve>,
      ReturnType<typeof solve>,
      ReturnType<typeof solve>,
    ]
    for (const state of open.model.states.order) {
      expect(open.values[state] as number).toBeLessThanOrEqual((thick.values[state] as number) + 1e-8)
      expect(thick.values[state] as number).toBeLessThanOrEqual((wall.values[state] as number) + 1e-8)
    }
    expect(open.tee).toBeLessThan(wall.tee)
  })

  it('leaves a Bellman residual under 1e-6', () => {
    expect(usual.converged).toBe(true)
    expect(usual.residual).toBeLessThan(1e-6)
  })

  // Closed form: two full shots of 150 m and 151 m without any spread, then the putt that is left.
  it('counts distances when there is neither hazard nor spread', () => {
    const bag = inventedPlayer([
      { name: '6-iron', carry_m: 150, total_m: 150, curve_share: 0, mishit_share: 0 },
    ])
    const machine = {
      ...bag,
      clubs: bag.clubs.map((club) => ({ ...club, directionSdDegrees: 1e-6, carrySdShare: 1e-9 })),
    }
    const plain = inventedHole(303, [area('fairway', box(-90, 90, -30, 280))])
    const plan = planHole({
      courseName: 'test',
      hole: plain,
      player: machine,
      day: CALM_DAY,
      draws: 0,
      flips: false,
      cellMetres: 3,
    })
    const putt = puttingValues(machine).expected(3)
    expect(plan.value.strokes).toBeCloseTo(2 + putt, 2)
  })

  it('is the same hole wherever it bears, when the wind turns with it', () => {
    const question = {
      courseName: 'test',
      player,
      draws: 0,
      flips: false,
      cellMetres: CELL,
      quadrature: QUADRATURE,
    }
    const north = planHole({
      ...question,
      hole,
      day: { ...CALM_DAY, wind: { speedMetresPerSecond: 5, fromDegrees: 40 } },
    })
    const turned = planHole({
      ...question,
      hole: { ...hole, bearingDegrees: 217 },
      day: { ...CALM_DAY, wind: { speedMetresPerSecond: 5, fromDegrees: 257 } },
    })
    expect(turned.value.strokes).toBeCloseTo(north.value.strokes, 9)
  })
})

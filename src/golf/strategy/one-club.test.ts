import { describe, expect, it } from 'vitest'
import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import { puttingValues } from '#golf/player/putting-values.ts'
import { solveShortestPath } from '#numbers/solver/solve-shortest-path.ts'
import { holeGround, holeModel } from './hole-model.ts'
import { holeProblem } from './hole-problem.ts'
import { area, box, CALM_DAY, enclosed, inventedHole, inventedPlayer } from './invented-hole.fixture.ts'
import { placeAt } from './places.ts'
import { planHole } from './plan-hole.ts'

// One club that reaches with chance p. Closed forms of the geometric distribution: 1/p strokes when a failure leaves the
// ball where it was; 2/p − 1 when each of the 1/p − 1 failures costs a penalty stroke too (stroke and distance,
// Rules of Golf 2023, Rule 18.2b); and the value of the place reached on top.

const LENGTH = 152
/** An odd number of metres, so that the fine cells are of 1 m. */
const CELL = 15
const QUADRATURE = { good: 16, mishit: 8 }

/** A machine: it carries exactly its distance, or with chance 1 − p exactly `mishitCarryShare` of it. */
function machine(p: number, mishitCarryShare: number): Player {
  const player = inventedPlayer([
    { name: '6-iron', carry_m: 150, total_m: 150, curve_share: 0, mishit_share: 0.5 },
  ])
  return {
    ...player,
    clubs: player.clubs.map((club) => ({
      ...club,
      directionSdDegrees: 1e-6,
      carrySdShare: 1e-9,
      mishitShare: 1 - p,
      mishitCarryShare,
      mishitCarrySdShare: 0,
    })),
  }
}

/** A fairway of a few cells and the green, and out of bounds everywhere else. */
const overTheBoundary: Hole = inventedHole(LENGTH, [
  area('fairway', box(-22.5, 22.5, -7.5, 22.5)),
  area('out', box(-300, 300, -100, -7.5), 'behind'),
  area('out', box(-300, -22.5, -100, 300), 'left'),
  area('out', box(22.5, 300, -100, 300), 'right'),
  area('out', box(-300, 300, 22.5, LENGTH - 30), 'between'),
  area('out', box(-300, 300, LENGTH + 30, 300), 'beyond'),
])
const plain: Hole = inventedHole(LENGTH, [area('fairway', box(-20, 20, -40, LENGTH - 12))])

function teeValue(hole: Hole, player: Player, isEndFree: boolean, cell = CELL): number {
  const model = holeModel(holeGround(hole, cell), player, CALM_DAY)
  const problem = holeProblem(model, { quadrature: QUADRATURE })
  const start = problem.startValues()
  if (isEndFree)
    for (let place = 0; place < start.length; place++)
      if (model.places.isShortGame[place] === 1) start[place] = 0
  const { values, converged } = solveShortestPath(problem, { tolerance: 1e-12, start, maximumSweeps: 20_000 })
  expect(converged).toBe(true)
  return values[placeAt(model.places, 0, 0)] as number
}

describe.each([0.9, 0.6, 0.25])('one club that reaches with chance %d', (p) => {
  it('takes 1/p strokes when a failure leaves the ball where it was and the end costs nothing', () => {
    // A topped ball of 5 % of the carry, 7.5 m, stays in its cell of 24 m.
    expect(teeValue(plain, machine(p, 0.05), true, 24)).toBeCloseTo(1 / p, 9)
  })

  it('takes 1/p strokes and 1/p − 1 penalties when a failure is out of bounds', () => {
    expect(teeValue(overTheBoundary, machine(p, 0.5), true)).toBeCloseTo(1 / p + (1 / p - 1), 9)
  })

  it('takes the putts on top', () => {
    const player = machine(p, 0.5)
    // The pin stands in the middle of a fine cell, so the ball comes to lie exactly 2 m short.
    const putts = puttingValues(player).expected(2)
    expect(teeValue(overTheBoundary, player, false)).toBeCloseTo(2 / p - 1 + putts, 6)
    const plan = planHole({
      courseName: 'test',
      hole: overTheBoundary,
      player,
      day: CALM_DAY,
      // From a tee fewer are mishit.
      lie: 'fairway',
      draws: 0,
      flips: false,
      cellMetres: CELL,
      quadrature: QUADRATURE,
    })
    expect(plan.value.strokes).toBeCloseTo(2 / p - 1 + putts, 6)
  })
})

// Found while this was written: with a club too long for what is left, no line was tried at all near the green.
it('finds a stroke wherever the ball lies, though the only club is too long', () => {
  const player = inventedPlayer([{ name: '6-iron', carry_m: 150, total_m: 155 }])
  const model = holeModel(holeGround(inventedHole(303), CELL), player, CALM_DAY)
  const { values, converged } = solveShortestPath(holeProblem(model, { quadrature: QUADRATURE }))
  expect(converged).toBe(true)
  for (const state of model.states.order) expect(Number.isFinite(values[state])).toBe(true)
})

// Found while this was written: one pocket of ground without a way out made every value not a number.
it('plans the rest of a hole that has places from which every stroke goes out of bounds', () => {
  const player = machine(0.5, 0.5)
  const hole = inventedHole(LENGTH, [
    area('fairway', box(-22.5, 22.5, -37.5, 22.5)),
    area('out', box(-300, 300, 22.5, LENGTH - 30)),
  ])
  const model = holeModel(holeGround(hole, CELL), player, CALM_DAY)
  const { values, converged } = solveShortestPath(holeProblem(model, { quadrature: QUADRATURE }))
  expect(converged).toBe(true)
  const stuck = [...model.states.order].filter((state) => values[state] === Number.POSITIVE_INFINITY)
  expect(stuck.length).toBeGreaterThan(0)
  const putts = puttingValues(player).expected(2)
  expect(values[placeAt(model.places, 0, 0)]).toBeCloseTo(2 / 0.5 - 1 + putts, 6)
})

/** Two shots of exactly 150 m to 2 m short of the pin, boundaries all about. */
const closed: Hole = enclosed(inventedHole(302, [area('fairway', box(-20, 20, 20, 290))]), -30, 30)
const planOf = (hole: Hole, player: Player) =>
  planHole({
    courseName: 'test',
    hole,
    player,
    day: CALM_DAY,
    draws: 0,
    flips: false,
    cellMetres: CELL,
    quadrature: { good: 8, mishit: 2 },
  })

// Found by closing the holes of other tests: a strike that never happens, on to a place from which nothing ends, was no number.
it('plans past places from which every stroke goes out, when no ball comes to them', () => {
  const player = machine(1, 0.5)
  expect(planOf(closed, player).value.strokes).toBeCloseTo(2 + puttingValues(player).expected(2), 6)
})

it('says so when every stroke surely goes out', () => {
  const [club] = machine(1, 0.5).clubs
  const player = { ...machine(1, 0.5), clubs: [{ ...club!, carryMetres: 400, totalMetres: 400 }] }
  expect(() => planOf(closed, player)).toThrow(
    expect.objectContaining({ code: 'MAR-PLAN-008', where: 'hole 1' }),
  )
})

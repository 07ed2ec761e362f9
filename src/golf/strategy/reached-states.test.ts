import { describe, expect, it } from 'vitest'
import { solveShortestPath } from '#numbers/solver/solve-shortest-path.ts'
import { type TriedStroke, triedStrokes, weighTried } from './evaluate-stroke.ts'
import { holeGround, holeModel } from './hole-model.ts'
import { type HoleProblem, holeProblem } from './hole-problem.ts'
import { area, box, CALM_DAY, inventedHole, inventedPlayer } from './invented-hole.fixture.ts'
import { reachedStates } from './reached-states.ts'
import { SOLVE_TOLERANCE } from './settings.ts'
import { strokeTries } from './stroke-tries.ts'

const player = inventedPlayer([
  { name: '3-wood', carry_m: 185, total_m: 200 },
  { name: '6-iron', carry_m: 138, total_m: 145 },
  { name: 'pitching-wedge', carry_m: 98, total_m: 101 },
])
const hole = inventedHole(380, [
  area('fairway', box(-20, 20, 60, 360)),
  area('penalty-red', box(-60, 60, 206, 240), 'pond'),
  area('out', box(40, 300, -100, 600)),
])
const QUADRATURE = { good: 24, mishit: 12 }

describe('states that balls come to', () => {
  const ground = holeGround(hole, 6)
  const calm = holeProblem(holeModel(ground, player, CALM_DAY), { quadrature: QUADRATURE })
  const solved = solveShortestPath(calm, { tolerance: SOLVE_TOLERANCE }).values
  const windy = holeModel(ground, player, { ...CALM_DAY, wind: { speedMetresPerSecond: 5, fromDegrees: 30 } })

  function weighedFrom(x: number, y: number, some: boolean): { costs: number[]; settled: number } {
    const problem = holeProblem(windy, { quadrature: QUADRATURE, kept: calm.kept })
    const situation = { x, y, lie: 'fairway' } as const
    const tried = triedStrokes(windy, {
      situation,
      quadrature: QUADRATURE,
      tries: strokeTries(windy, problem.shots, situation, 8),
    })
    const reached = some ? reachedFrom(problem, tried) : ground.states.order
    problem.settleOnly(reached)
    const { values } = solveShortestPath(problem, { start: solved, keptOnly: true, tolerance: 1e-6 })
    const { candidates } = weighTried(windy, values, situation, tried)
    return { costs: candidates.map(({ strokes }) => strokes), settled: reached.length }
  }

  function reachedFrom(problem: HoleProblem, tried: readonly TriedStroke[]): Int32Array {
    const strokes = tried.map(({ ends }) => ends)
    return reachedStates(windy, strokes, problem.rowsFrom, solved)
  }

  it.each([
    [0, 0],
    [-8, 150],
    [15, 250],
  ])('are enough to weigh every stroke from %i m right, %i m on, to a thousandth of a stroke', (x, y) => {
    const few = weighedFrom(x, y, true)
    const all = weighedFrom(x, y, false)
    expect(few.settled).toBeLessThan(0.8 * all.settled)
    expect(few.costs.length).toBeGreaterThan(20)
    for (const [index, cost] of few.costs.entries())
      expect(Math.abs(cost - (all.costs[index] as number))).toBeLessThan(1e-3)
  })
})

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type ExplicitActions, explicitProblem } from './explicit-problem.ts'
import { solveShortestPath } from './solve-shortest-path.ts'

describe('solveShortestPath', () => {
  // Closed form: one stroke that holes out with chance p takes 1/p strokes on average (geometric distribution).
  it('gives 1/p strokes for one action that ends with chance p', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1, noNaN: true }), (chance) => {
        const problem = explicitProblem([[{ cost: 1, next: [{ state: 0, chance: 1 - chance }] }]])
        const solution = solveShortestPath(problem)
        expect(solution.values[0]).toBeCloseTo(1 / chance, 9)
        expect(solution.converged).toBe(true)
      }),
    )
  })

  // Broadie's worked example of 2014: a longer club to 100 yd with 50 % fairway against a shorter one to 120 yd
  // with 65 %: 2.910 against 2.9305. The end states carry the published expected strokes as their only cost.
  it('chooses the longer club of the published one-step example', () => {
    const ends = [2.8, 3.02, 2.85, 3.08].map((strokes) => [{ cost: strokes, next: [] }])
    const tee = [
      {
        cost: 0,
        next: [
          { state: 1, chance: 0.5 },
          { state: 2, chance: 0.5 },
        ],
      },
      {
        cost: 0,
        next: [
          { state: 3, chance: 0.65 },
          { state: 4, chance: 0.35 },
        ],
      },
    ]
    const both = explicitProblem([tee, ...ends])
    expect(solveShortestPath(both).values[0]).toBeCloseTo(2.91, 12)
    expect(both.policy[0]).toBe(0)
    const shorterOnly = explicitProblem([tee.slice(1), ...ends])
    expect(solveShortestPath(shorterOnly).values[0]).toBeCloseTo(2.9305, 12)
  })

  it('never does worse with more actions, and its policy satisfies its own linear equations', () => {
    fc.assert(
      fc.property(randomActions(), (actions) => {
        const problem = explicitProblem(actions)
        const solution = solveShortestPath(problem, { tolerance: 1e-12, maximumSweeps: 100_000 })
        expect(solution.converged).toBe(true)
        for (const [state, value] of solveLinearly(actions, problem.policy).entries())
          expect(solution.values[state]).toBeCloseTo(value, 8)
        const fewer = actions.map((list) => list.slice(0, 1))
        const poorer = solveShortestPath(explicitProblem(fewer), { tolerance: 1e-12, maximumSweeps: 100_000 })
        for (const [state, value] of solution.values.entries())
          expect(value).toBeLessThanOrEqual((poorer.values[state] as number) + 1e-9)
      }),
      { numRuns: 60 },
    )
  })

  it('says so when it was stopped before it converged', () => {
    const problem = explicitProblem([
      [{ cost: 1, next: [{ state: 1, chance: 0.99 }] }],
      [{ cost: 1, next: [{ state: 0, chance: 0.99 }] }],
    ])
    const solution = solveShortestPath(problem, { maximumSweeps: 3 })
    expect(solution.converged).toBe(false)
    expect(solution.residual).toBeGreaterThan(solution.tolerance)
    expect(solution.sweeps).toBe(3)
  })
})

/** Up to eight states with up to four actions each; every action ends with a chance of at least 0.1. */
function randomActions(): fc.Arbitrary<ExplicitActions> {
  return fc.integer({ min: 1, max: 8 }).chain((states) => {
    const next = fc.array(
      fc.record({ state: fc.integer({ min: 0, max: states - 1 }), weight: fc.integer({ min: 1, max: 9 }) }),
      { maxLength: 4 },
    )
    const action = fc.record({
      cost: fc.double({ min: 1, max: 3, noNaN: true }),
      next,
      end: fc.integer({ min: 1, max: 9 }),
    })
    return fc
      .array(fc.array(action, { minLength: 1, maxLength: 4 }), { minLength: states, maxLength: states })
      .map((lists) =>
        lists.map((list) =>
          list.map(({ cost, next: nexts, end }) => {
            const total = nexts.reduce((sum, { weight }) => sum + weight, 0)
            const going = total === 0 ? 0 : (0.9 * total) / (total + end)
            return {
              cost,
              next: nexts.map(({ state, weight }) => ({ state, chance: (going * weight) / total })),
            }
          }),
        ),
      )
  })
}

/** The policy's values by Gaussian elimination with partial pivoting: an independent answer. */
function solveLinearly(actions: ExplicitActions, policy: Int32Array): number[] {
  const size = actions.length
  const rows = actions.map((list, state) => {
    const action = list[policy[state] as number]
    const row = new Array<number>(size + 1).fill(0)
    row[state] = 1
    for (const { state: next, chance } of action?.next ?? []) row[next] = (row[next] as number) - chance
    row[size] = action?.cost ?? 0
    return row
  })
  for (let column = 0; column < size; column++) {
    const pivot = rows
      .slice(column)
      .reduce((best, row) =>
        Math.abs(row[column] as number) > Math.abs(best[column] as number) ? row : best,
      )
    rows.splice(rows.indexOf(pivot), 1)
    rows.splice(column, 0, pivot)
    for (const row of rows) {
      if (row === pivot) continue
      const factor = (row[column] as number) / (pivot[column] as number)
      for (let k = column; k <= size; k++) row[k] = (row[k] as number) - factor * (pivot[k] as number)
    }
  }
  return rows.map((row, state) => (row[size] as number) / (row[state] as number))
}

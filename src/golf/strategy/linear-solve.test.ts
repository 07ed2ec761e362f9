import { describe, expect, it } from 'vitest'
import { solveShortestPath } from '#numbers/solver/solve-shortest-path.ts'
import { type HoleModel, holeGround, holeModel } from './hole-model.ts'
import { holeProblem } from './hole-problem.ts'
import { CALM_DAY } from './invented-hole.fixture.ts'
import type { ShotTable } from './shot-table.ts'
import { smallHole, threeClubs } from './small-hole.fixture.ts'
import { chosenRelief, fatesOf, kindsMet } from './spelled-out-stroke.fixture.ts'

// A policy's values solve a linear system: V = 1 + P V + penalties (Puterman, Markov Decision Processes, 1994,
// section 6.1.1; its stochastic shortest path form, 7.2). The system is written out here stroke by stroke and solved
// by Gaussian elimination, which knows nothing of sweeps, closed forms or kept actions.

describe('the policy of a solved hole', () => {
  it('has the values that its own linear equations give, within 1e-9', () => {
    const model = holeModel(holeGround(smallHole(144.3, 33.1), 6), threeClubs(), CALM_DAY)
    const problem = holeProblem(model, { quadrature: { good: 16, mishit: 8 } })
    const { values, converged } = solveShortestPath(problem, { tolerance: 1e-12 })
    expect(converged).toBe(true)
    const states = [...model.states.order]
    expect(states.length).toBeGreaterThan(100)
    expect(states.length).toBeLessThanOrEqual(350)

    const shotOf = (state: number): ShotTable | null => problem.bestShot(state)
    // Reason: the hole must put every kind of outcome to the test, or agreement says little.
    expect(kindsMet(model, values, shotOf)).toEqual(
      new Set(['lies', 'back', 'relief taken', 'relief declined']),
    )
    const solved = eliminate(equationsOf(model, states, values, shotOf))
    let largest = 0
    for (const [index, state] of states.entries())
      largest = Math.max(largest, Math.abs((solved[index] as number) - (values[state] as number)))
    expect(largest).toBeLessThan(1e-9)
  })
})

/** One row a state: coefficients of the values of the states, and last the constant. */
function equationsOf(
  model: HoleModel,
  states: readonly number[],
  values: Float64Array,
  shotOf: (state: number) => ShotTable | null,
): Float64Array[] {
  const indexOf = new Map(states.map((state, index) => [state, index]))
  return states.map((state, index) => {
    const row = new Float64Array(states.length + 1)
    const add = (column: number | undefined, by: number): void => {
      if (column !== undefined) row[column] = (row[column] as number) + by
    }
    /** What follows with a chance: a value that is sought, or one that the short game gives. */
    const follow = (place: number, chance: number): void => {
      if (indexOf.has(place)) add(indexOf.get(place), -chance)
      else add(states.length, chance * (values[place] as number))
    }
    add(index, 1)
    add(states.length, 1)
    const table = shotOf(state)
    if (!table) throw new Error(`no shot from ${state}`)
    for (const fate of fatesOf(model, table, state)) {
      if (fate.kind === 'lies') {
        follow(fate.place, fate.chance)
        continue
      }
      const relief = fate.kind === 'relief' ? chosenRelief(fate, values, state) : 'back'
      add(states.length, fate.chance * (relief === 'back' ? 1 : relief.penalty))
      follow(relief === 'back' ? state : relief.place, fate.chance)
    }
    return row
  })
}

/** Gaussian elimination with partial pivoting; the last column is the constant. */
function eliminate(rows: readonly Float64Array[]): Float64Array {
  const left = [...rows]
  const size = left.length
  for (let column = 0; column < size; column++) {
    let pivot = column
    for (let row = column + 1; row < size; row++)
      if (Math.abs(at(left, row, column)) > Math.abs(at(left, pivot, column))) pivot = row
    ;[left[column], left[pivot]] = [left[pivot] as Float64Array, left[column] as Float64Array]
    for (let row = column + 1; row < size; row++) {
      const factor = at(left, row, column) / at(left, column, column)
      if (factor === 0) continue
      const target = left[row] as Float64Array
      for (let k = column; k <= size; k++) target[k] = (target[k] as number) - factor * at(left, column, k)
    }
  }
  const solved = new Float64Array(size)
  for (let row = size - 1; row >= 0; row--) {
    let sum = at(left, row, size)
    for (let k = row + 1; k < size; k++) sum -= at(left, row, k) * (solved[k] as number)
    solved[row] = sum / at(left, row, row)
  }
  return solved
}

function at(rows: readonly Float64Array[], row: number, column: number): number {
  return (rows[row] as Float64Array)[column] as number
}

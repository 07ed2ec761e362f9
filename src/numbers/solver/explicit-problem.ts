import type { ShortestPathProblem } from './shortest-path-problem.ts'

/** One choice of one state: what it costs and where it leads. Chances that fall short of 1 reach the end. */
export interface ExplicitAction {
  readonly cost: number
  readonly next: readonly { readonly state: number; readonly chance: number }[]
}

/** Every action of every state written out; a state without actions is an end worth 0. */
export type ExplicitActions = readonly (readonly ExplicitAction[])[]

/**
 * A small problem with all its transitions written out: for tests, examples and export to other solvers.
 * A chance of staying in the same state is solved in closed form.
 */
export function explicitProblem(
  actions: ExplicitActions,
): ShortestPathProblem & { readonly policy: Int32Array } {
  const policy = new Int32Array(actions.length)
  function sweep(values: Float64Array, isOverAll: boolean): number {
    let largest = 0
    for (const [state, choices] of actions.entries()) {
      if (choices.length === 0) continue
      let best = Number.POSITIVE_INFINITY
      for (const [index, action] of choices.entries()) {
        if (!isOverAll && index !== policy[state]) continue
        const cost = costOf(action, state, values)
        if (cost >= best) continue
        best = cost
        policy[state] = index
      }
      largest = Math.max(largest, Math.abs(best - (values[state] as number)))
      values[state] = best
    }
    return largest
  }
  return {
    policy,
    startValues: () => new Float64Array(actions.length),
    improve: (values) => sweep(values, true),
    settle: (values) => sweep(values, false),
  }
}

function costOf(action: ExplicitAction, state: number, values: Float64Array): number {
  let cost = action.cost
  let stay = 0
  for (const { state: next, chance } of action.next) {
    if (next === state) stay += chance
    else cost += chance * (values[next] ?? 0)
  }
  return stay < 1 ? cost / (1 - stay) : Number.POSITIVE_INFINITY
}

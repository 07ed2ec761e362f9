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
  const choosing = actions.flatMap((list, state) => (list.length > 0 ? [state] : []))
  return {
    policy,
    valueCount: actions.length,
    order: Int32Array.from(choosing),
    startValues: () => new Float64Array(actions.length),
    bestOfAll(state, values) {
      let best = Number.POSITIVE_INFINITY
      for (const [index, action] of (actions[state] ?? []).entries()) {
        const cost = costOf(action, state, values)
        if (cost >= best) continue
        best = cost
        policy[state] = index
      }
      return best
    },
    bestKept(state, values) {
      const action = actions[state]?.[policy[state] ?? 0]
      return action ? costOf(action, state, values) : 0
    },
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

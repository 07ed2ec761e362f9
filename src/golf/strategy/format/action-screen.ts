import type { HoleModel } from '../hole-model.ts'
import { holeProblem } from '../hole-problem.ts'
import type { Shot } from '../shots.ts'

/**
 * Picks out of all actions the few that are worth most from each state, roughly: `after` is what places are worth after the
 * stroke, `later` after one stroke more. By state as many as a solve keeps, best first, −1 where there are no more; `null`
 * where a stroke more or less is worth nothing anywhere.
 */
export type ActionScreen = (after: Float64Array, later: Float64Array) => Int32Array | null

/**
 * Screens with the solve's own weighing of all actions: what a place is worth less than the best one, in the worth of an
 * average stroke, stands for its strokes. Exact but for penalties and going back, which cost an average stroke there.
 */
export function actionScreen(
  model: HoleModel,
  shots: readonly Shot[],
  quadrature: { readonly good: number; readonly mishit: number },
): ActionScreen {
  const problem = holeProblem(model, { shots, quadrature })
  return (after, later) => {
    let worthOfStrokes = 0
    let count = 0
    for (const [place, worth] of after.entries()) {
      const fall = worth - (later[place] as number)
      if (fall <= 0) continue
      worthOfStrokes += fall
      count += 1
    }
    if (count === 0) return null
    const most = after.reduce((best, worth) => Math.max(best, worth), Number.NEGATIVE_INFINITY)
    problem.improve(after.map((worth) => ((most - worth) * count) / worthOfStrokes))
    return problem.kept
  }
}

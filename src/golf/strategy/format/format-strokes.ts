import { WEIGHED_EXACTLY } from '../format-settings.ts'
import type { HoleModel } from '../hole-model.ts'
import type { HoleProblem } from '../hole-problem.ts'
import { KEPT_ACTIONS } from '../settings.ts'
import { actionScreen } from './action-screen.ts'
import { cellStrokes } from './cell-strokes.ts'
import type { ImproveLevel, WeighedStroke } from './levels.ts'

/** Strikes that stand for a pattern while all strokes are weighed roughly, and while the best of them are weighed exactly. */
export interface FormatQuadrature {
  readonly all: { readonly good: number; readonly mishit: number }
  readonly best: { readonly good: number; readonly mishit: number }
}

/**
 * The strokes weighed exactly from each state for a format: the best one for the fewest strokes, and the few that a rough
 * weighing of all actions picks for this very level.
 */
export function formatStrokes(
  model: HoleModel,
  problem: HoleProblem,
  quadrature: FormatQuadrature,
): ImproveLevel {
  const strokes = cellStrokes(model, problem.shots, quadrature.best)
  const screen = actionScreen(model, problem.shots, quadrature.all)
  return (after, later) => {
    const screened = screen(after, later)
    return (state, worthOf) => {
      const first = state * KEPT_ACTIONS
      const picked = screened?.subarray(first, first + WEIGHED_EXACTLY) ?? []
      const tables = [...picked].flatMap((action) => (action < 0 ? [] : [strokes.tableOf(action)]))
      const fewest = problem.bestShot(state)
      let best: WeighedStroke | null = null
      // Of equal worth the stroke that is better for the mean stands.
      for (const table of fewest ? [fewest, ...tables] : tables) {
        if (best !== null && table.shot === fewest?.shot && table.heading === fewest.heading) continue
        const outcomes = strokes.outcomes(state, table)
        const worth = worthOf(outcomes)
        if (best === null || worth > best.worth) best = { table, outcomes, worth }
      }
      return best
    }
  }
}

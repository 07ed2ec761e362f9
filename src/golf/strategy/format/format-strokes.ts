import type { Lie } from '#golf/player/player.ts'
import { radiansToDegrees } from '#numbers/units/units.ts'
import { actionHeading, actionOf } from '../actions.ts'
import type { CellOutcomes } from '../cell-outcomes.ts'
import { WEIGHED_AGAIN } from '../format-settings.ts'
import { centreToday, type HoleModel } from '../hole-model.ts'
import type { HoleProblem } from '../hole-problem.ts'
import { lieOfGround } from '../lie-of-ground.ts'
import { HEADINGS, headingOf } from '../lines-of-play.ts'
import { groundOf } from '../places.ts'
import { KEPT_ACTIONS, LINE_STEP_DEGREES, OVERCLUB_METRES, PARTIAL_SWING_METRES } from '../settings.ts'
import { isAllowed, isLow, isPartial } from '../shots.ts'
import { isOnHole } from '../states.ts'
import { cellStrokes } from './cell-strokes.ts'
import type { ImproveState, WeighedStroke } from './levels.ts'

/** Strikes that stand for a pattern while all strokes are weighed, and while the best of them are weighed again; `null` = not again. */
export interface FormatQuadrature {
  readonly all: { readonly good: number; readonly mishit: number }
  readonly best: { readonly good: number; readonly mishit: number } | null
}

/**
 * The strokes weighed from each state for a format: those that the solve for fewest strokes kept, and every other shot
 * of the player at the pin and on the line of the best kept stroke. What is never worth it for the mean may be so for a
 * format, but with another club, hardly on a far line.
 */
export function formatStrokes(
  model: HoleModel,
  problem: HoleProblem,
  quadrature: FormatQuadrature,
): ImproveState {
  const few = cellStrokes(model, problem.shots, quadrature.all)
  const many = quadrature.best && cellStrokes(model, problem.shots, quadrature.best)
  // The same at every level, so that they are laid once.
  const candidates = new Map<
    number,
    readonly { readonly action: number; readonly outcomes: CellOutcomes }[]
  >()
  return (state, worthOf) => {
    const known =
      candidates.get(state) ??
      actionsFrom(model, problem, state).map((action) => ({ action, outcomes: few(state, action) }))
    candidates.set(state, known)
    const weighed = known.map((one) => ({ ...one, worth: worthOf(one.outcomes) }))
    // A stable order: of equal worth the stroke that is better for the mean comes first.
    weighed.sort((a, b) => b.worth - a.worth)
    if (!many) return weighed[0] ?? null
    const again = weighed.slice(0, WEIGHED_AGAIN).map(({ action }) => {
      const outcomes = many(state, action)
      return { outcomes, worth: worthOf(outcomes) }
    })
    return again.reduce<WeighedStroke | null>(
      (best, one) => (best && best.worth >= one.worth ? best : one),
      null,
    )
  }
}

function actionsFrom(model: HoleModel, problem: HoleProblem, state: number): number[] {
  const { places, states, player } = model
  const lie = lieOfGround(groundOf(places, state)) as Lie
  const kept = [...problem.kept.subarray(state * KEPT_ACTIONS, (state + 1) * KEPT_ACTIONS)].filter(
    (action) => action >= 0,
  )
  const found = new Set(kept)
  const lines = new Set(kept.slice(0, 1).map(actionHeading))
  lines.add(headingNumber(states.pinDirection[state] as number))
  const x = places.x[state] as number
  const y = places.y[state] as number
  const toPin = places.toPin[state] as number
  for (const [index, shot] of problem.shots.entries()) {
    if (!isAllowed(shot, lie, player)) continue
    if (isLow(shot) && states.isHampered[state] === 0) continue
    if (isPartial(shot) && toPin > shot.stock.totalMetres + PARTIAL_SWING_METRES) continue
    for (const line of lines) {
      const { heading, total } = centreToday(model, shot, headingOf(line))
      if (total > toPin + OVERCLUB_METRES || !isOnHole(model, x, y, heading, total)) continue
      found.add(actionOf(index, lie, line))
    }
  }
  return [...found]
}

/** Number of the line nearest to a direction. */
function headingNumber(radians: number): number {
  const step = Math.round(radiansToDegrees(radians) / LINE_STEP_DEGREES)
  return ((step % HEADINGS) + HEADINGS) % HEADINGS
}

import { REFERENCE_DAY } from '../../src/golf/course/day.ts'
import type { Player } from '../../src/golf/player/player.ts'
import {
  type Candidate,
  evaluateStroke,
  type StrokeQuestion,
} from '../../src/golf/strategy/evaluate-stroke.ts'
import { type HoleGround, type HoleModel, holeModel } from '../../src/golf/strategy/hole-model.ts'
import { type HoleProblem, holeProblem } from '../../src/golf/strategy/hole-problem.ts'
import { bestByClub } from '../../src/golf/strategy/plan-options.ts'
import {
  COMPARE_QUADRATURE,
  QUICK,
  REFINED_TOLERANCE,
  SOLVE_TOLERANCE,
} from '../../src/golf/strategy/settings.ts'
import { linesAbout } from '../../src/golf/strategy/settle-reached.ts'
import { shotsOf } from '../../src/golf/strategy/shots.ts'
import { situationOf } from '../../src/golf/strategy/situation.ts'
import { strokeTries } from '../../src/golf/strategy/stroke-tries.ts'
import { solveShortestPath } from '../../src/numbers/solver/solve-shortest-path.ts'

/** A hole with the plan of one player. */
export interface OwnPlan {
  readonly model: HoleModel
  readonly problem: HoleProblem
  readonly values: Float64Array
  /** Clubs off the tee, each on its best line, the plan first. */
  readonly first: readonly Candidate[]
}

/** Eight times the strikes of a quick plan: by those alone two plans of one player differ by 0.06 of a stroke in play, more than is asked. */
const QUADRATURE = { good: 96, mishit: 32 } as const
const LINES_DEGREES = 4

/** The plan of a player, all strokes weighed. */
export function ownPlan(ground: HoleGround, player: Player): OwnPlan {
  const model = holeModel(ground, player, REFERENCE_DAY)
  const problem = holeProblem(model, { quadrature: QUADRATURE, aboutPinDegrees: QUICK.aboutPinDegrees })
  const { values } = solveShortestPath(problem, { tolerance: SOLVE_TOLERANCE })
  const tries = strokeTries(model, problem.shots, situationOf({}, ground.places), QUICK.strokeLineStepDegrees)
  return { model, problem, values, first: firstStrokes(model, values, tries) }
}

/**
 * The own plan of the same player when a part of the game is better: of the six strokes of each place that were best before, and
 * off the tee of all clubs about the lines that were best.
 */
export function planWhenBetter({ model, problem, values, first }: OwnPlan, better: Player): OwnPlan {
  const own = holeModel(model, better, REFERENCE_DAY, model.flights)
  const kept = holeProblem(own, { quadrature: QUADRATURE, kept: problem.kept })
  kept.gather()
  const start = kept.startValues()
  for (const state of own.states.order) start[state] = values[state] as number
  const solution = solveShortestPath(kept, { start, keptOnly: true, tolerance: REFINED_TOLERANCE })
  const shots = shotsOf(better)
  const tries = first.map(({ shot, heading }) => ({
    shot: shots[problem.shots.indexOf(shot)] ?? shot,
    headings: linesAbout(heading, LINES_DEGREES, QUICK.strokeLineStepDegrees),
  }))
  return {
    model: own,
    problem: kept,
    values: solution.values,
    first: firstStrokes(own, solution.values, tries),
  }
}

function firstStrokes(model: HoleModel, values: Float64Array, tries: StrokeQuestion['tries']): Candidate[] {
  const situation = situationOf({}, model.places)
  return bestByClub(evaluateStroke(model, values, { situation, quadrature: COMPARE_QUADRATURE, tries }))
}

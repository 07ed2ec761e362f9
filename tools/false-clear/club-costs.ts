import { REFERENCE_DAY } from '../../src/golf/course/day.ts'
import type { Player } from '../../src/golf/player/player.ts'
import { doubtOfDraws } from '../../src/golf/strategy/doubt-of-draws.ts'
import { type Candidate, evaluateStroke } from '../../src/golf/strategy/evaluate-stroke.ts'
import { type HoleGround, holeModel } from '../../src/golf/strategy/hole-model.ts'
import type { SolvedHole } from '../../src/golf/strategy/neighbour.ts'
import type { Plan } from '../../src/golf/strategy/plan.ts'
import { bestByClub } from '../../src/golf/strategy/plan-options.ts'
import { COMPARE_LINE_STEP_DEGREES, COMPARE_QUADRATURE } from '../../src/golf/strategy/settings.ts'
import { solveHole } from '../../src/golf/strategy/solve-hole.ts'
import { strokeTries } from '../../src/golf/strategy/stroke-tries.ts'
import { verdictOf } from '../../src/golf/strategy/verdict.ts'

const TEE = { x: 0, y: 0, lie: 'tee' } as const

/** The clubs of a tee shot on their best lines, cheapest first, and the solved hole they were weighed on. */
export interface ClubCosts {
  readonly solved: SolvedHole
  readonly best: readonly Candidate[]
}

/** Weighs a player's clubs from the tee as a plan does, with the strikes and lines that draws are compared with. */
export function clubCosts(ground: HoleGround, player: Player): ClubCosts {
  const day = REFERENCE_DAY
  const model = holeModel(ground, player, day)
  const { problem, values } = solveHole(model)
  const evaluation = evaluateStroke(model, values, {
    situation: TEE,
    quadrature: COMPARE_QUADRATURE,
    tries: strokeTries(model, problem.shots, TEE, COMPARE_LINE_STEP_DEGREES),
  })
  const { flights, nearGreen } = model
  return {
    solved: { ground, player, day, flights, nearGreen, problem, values },
    best: bestByClub(evaluation),
  }
}

/** What a plan says of its first club, and on what grounds. */
export interface Called {
  readonly verdict: Plan['verdict']
  /** Strokes from the first club to the second. */
  readonly gap: number
  /** Share of the draws in which the first club is the best. */
  readonly bestInDraws: number
}

/** The verdict on the first club, as a plan with so many draws gives it. */
export function verdictOn({ solved, best }: ClubCosts, draws: number): Called {
  const { clubs } = doubtOfDraws(solved, TEE, best, draws, 1)
  const value = best[0]?.strokes ?? Number.NaN
  const options = best.map(({ shot, strokes }) => ({
    cost: strokes - value,
    best_in_draws: clubs.get(shot.club)?.best_in_draws ?? 0,
  }))
  return {
    verdict: verdictOf(options, draws),
    gap: options[1]?.cost ?? Number.NaN,
    bestInDraws: options[0]?.best_in_draws ?? Number.NaN,
  }
}

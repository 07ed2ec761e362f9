import { Failure } from '#faults/failure.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Lie, Player, Sit } from '#golf/player/player.ts'
import type { Stance } from '#golf/player/stance.ts'
import { doubtOfDraws } from './doubt-of-draws.ts'
import { evaluateStroke } from './evaluate-stroke.ts'
import { findFlips } from './find-flips.ts'
import { nearGreenFormat } from './format/near-green-format.ts'
import { planFormat } from './format/plan-format.ts'
import { holeGround, holeModel, type LayGround } from './hole-model.ts'
import { type NearbyStart, nearbyStart } from './nearby-start.ts'
import type { SolvedHole } from './neighbour.ts'
import type { Objective } from './objective.ts'
import type { Plan } from './plan.ts'
import { isNearGreen, planNearGreen } from './plan-near-green.ts'
import { bestByClub } from './plan-options.ts'
import type { LengthUnits } from './plan-sentence.ts'
import { reportPlan } from './report-plan.ts'
import { scoreChances } from './score-distribution.ts'
import {
  COMPARE_QUADRATURE,
  DRAWS,
  QUICK,
  REFINED_QUADRATURE,
  SOLVE_QUADRATURE,
  STROKE_LINE_STEP_DEGREES,
  STROKE_QUADRATURE,
} from './settings.ts'
import { situationOf } from './situation.ts'
import { solveHole } from './solve-hole.ts'
import { strokeTries } from './stroke-tries.ts'

/** What is asked: a hole, a player, a day, and where the ball is. */
export interface PlanQuestion {
  readonly courseName: string
  readonly hole: Hole
  readonly player: Player
  readonly day: Day
  /** Where the ball is, in the hole frame; absent = the markers. */
  readonly from?: readonly [x: number, y: number]
  /** Absent = tee at the markers, else the lie of the ground there. */
  readonly lie?: Lie
  /** How the ball sits, where the player has seen it; the strokes after this one know nothing of it. */
  readonly sit?: Sit
  /** Slopes under the feet for this stroke. */
  readonly stance?: Stance
  /** A club to plan on with, whatever it costs. */
  readonly club?: string
  /** Draws of the player for the intervals; 0 = none. */
  readonly draws?: number
  readonly seed?: number
  /** What the hole is played for; absent = the fewest strokes on average. */
  readonly objective?: Objective
  readonly cellMetres?: number
  readonly quadrature?: { readonly good: number; readonly mishit: number }
  /** Whether to look for what flips the plan. */
  readonly flips?: boolean
  /** A rough answer, soon: no draws, no flips, and settings of its own for cells and strikes. */
  readonly isQuick?: boolean
  /** Units of the sentence only. */
  readonly units?: LengthUnits
}

/** A plan, and what to start from when something small changes; `null` where every plan is worked out anew. */
export interface WorkedPlan {
  readonly plan: Plan
  readonly start: NearbyStart | null
}

/** The plan of one stroke and the hole after it; see {@link workPlan}. */
export function planHole(question: PlanQuestion, layGround?: LayGround): Plan {
  return workPlan(question, layGround).plan
}

/**
 * The plan of one stroke and the hole after it. A ball near the green has a plan of its own kind. `layGround` may keep
 * what it laid. Throws a Failure when the survey lacks the green, the ball lies where no stroke is played from, or the
 * player does not have the club.
 */
export function workPlan(asked: PlanQuestion, layGround: LayGround = holeGround): WorkedPlan {
  const question = asked.isQuick ? quick(asked) : asked
  const { hole, player, day } = question
  if (hole.green === null)
    throw new Failure(
      'MAR-PLAN-001',
      `Hole ${hole.ref} cannot be planned: the survey has no green for it. Draw or type the green first.`,
      `hole ${hole.ref}`,
    )
  const ground = layGround(hole, question.cellMetres)
  const situation = situationOf(question, ground.places)
  if (question.from !== undefined && isNearGreen(situation, hole)) {
    const near = planNearGreen(question, ground.places, situation)
    const plan = question.objective
      ? nearGreenFormat(near, question.objective, question.units ?? 'yards')
      : near
    return { plan, start: null }
  }
  const model = holeModel(ground, player, day)
  const quadrature = question.quadrature ?? SOLVE_QUADRATURE
  const { problem, values, solution } = solveHole(
    model,
    question.quadrature,
    question.isQuick ? QUICK.aboutPinDegrees : undefined,
  )
  const step = question.isQuick ? QUICK.strokeLineStepDegrees : STROKE_LINE_STEP_DEGREES
  const evaluation = evaluateStroke(model, values, {
    situation,
    quadrature: question.isQuick ? COMPARE_QUADRATURE : STROKE_QUADRATURE,
    tries: strokeTries(model, problem.shots, situation, step),
  })
  if (!Number.isFinite(evaluation.value))
    throw new Failure(
      'MAR-PLAN-008',
      `Hole ${hole.ref} cannot be planned from there: no stroke that ${player.name} would try ever leads to the hole; each one surely goes out of bounds or ends where none does. Look at the boundaries of the survey and at the clubs.`,
      `hole ${hole.ref}`,
    )
  const draws = question.draws ?? DRAWS
  const seed = question.seed ?? 1
  const chances = scoreChances(model, problem, values)
  const format = question.objective
    ? planFormat({
        model,
        problem,
        values,
        chances,
        situation,
        evaluation,
        objective: question.objective,
        quadrature: { all: quadrature, best: question.quadrature ?? REFINED_QUADRATURE },
        draws,
        seed,
      })
    : null
  const best = format?.best ?? bestByClub(evaluation)
  const { flights, nearGreen } = model
  const solved: SolvedHole = { ground, player, day, flights, nearGreen, problem, values }
  const plan = reportPlan({
    question,
    model,
    situation,
    evaluation,
    best,
    values,
    chances,
    after: problem,
    doubt: draws > 0 && !format ? doubtOfDraws(solved, situation, best, draws, seed) : null,
    format,
    flipsOf: (contenders, hazard) =>
      question.flips === false || format ? [] : findFlips(solved, situation, contenders, hazard),
    method: {
      cell_m: ground.places.coarse.resolution,
      states: ground.states.order.length,
      quadrature: quadrature.good + quadrature.mishit,
      refined_quadrature: question.quadrature ? null : REFINED_QUADRATURE.good + REFINED_QUADRATURE.mishit,
      sweeps: solution.sweeps,
      residual: solution.residual,
      tolerance: solution.tolerance,
      converged: solution.converged,
      draws,
      milliseconds: 0,
    },
  })
  if (question.quadrature !== undefined) return { plan, start: null }
  // What is near is planned for the fewest strokes first, whatever this one is for.
  const lines = format ? bestByClub(evaluation) : best
  return { plan, start: nearbyStart(solved, solution.values, lines, chances) }
}

function quick(question: PlanQuestion): PlanQuestion {
  const { cellMetres, quadrature } = QUICK
  return { ...question, cellMetres, quadrature, draws: 0, flips: false }
}

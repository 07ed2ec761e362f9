import { Failure } from '#faults/failure.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Lie, Player, Sit } from '#golf/player/player.ts'
import type { Stance } from '#golf/player/stance.ts'
import { cautionsOf } from './cautions.ts'
import { doubtOfDraws } from './doubt-of-draws.ts'
import { type Candidate, evaluateStroke, type Situation } from './evaluate-stroke.ts'
import { findFlips } from './find-flips.ts'
import { nearGreenFormat } from './format/near-green-format.ts'
import { planFormat } from './format/plan-format.ts'
import { limitsOf } from './format-settings.ts'
import { worthWords } from './format-words.ts'
import { type HoleGround, holeGround, holeModel } from './hole-model.ts'
import { type MainHazard, mainHazard } from './main-hazard.ts'
import type { SolvedHole } from './neighbour.ts'
import { nextShots } from './next-shots.ts'
import type { Objective } from './objective.ts'
import type { FormatPart, Plan, PlanOption } from './plan.ts'
import { isNearGreen, planNearGreen } from './plan-near-green.ts'
import { bestByClub, planOptions } from './plan-options.ts'
import { type LengthUnits, type PlanFacts, planSentence, type SentenceLine } from './plan-sentence.ts'
import { pinPlays } from './plays-to-pin.ts'
import { scoreChances } from './score-distribution.ts'
import { sentenceLine } from './sentence-line.ts'
import {
  DRAWS,
  REFINED_QUADRATURE,
  SOLVE_QUADRATURE,
  STROKE_LINE_STEP_DEGREES,
  STROKE_QUADRATURE,
} from './settings.ts'
import { situationOf } from './situation.ts'
import { solveHole } from './solve-hole.ts'
import { strokeTries } from './stroke-tries.ts'
import { verdictOf } from './verdict.ts'

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
  /** Units of the sentence only. */
  readonly units?: LengthUnits
}

/** How many options are compared over flips: what is further behind never becomes the best. */
const CONTENDERS = 8

/**
 * The plan of one stroke and the hole after it. A ball near the green has a plan of its own kind. `layGround` may keep
 * what it laid. Throws a Failure when the survey lacks the green, the ball lies where no stroke is played from, or the
 * player does not have the club.
 */
export function planHole(
  question: PlanQuestion,
  layGround: (hole: Hole, cellMetres?: number) => HoleGround = holeGround,
): Plan {
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
    const plan = planNearGreen(question, ground.places, situation)
    return question.objective ? nearGreenFormat(plan, question.objective, question.units ?? 'yards') : plan
  }
  const model = holeModel(ground, player, day)
  const quadrature = question.quadrature ?? SOLVE_QUADRATURE
  const { problem, values, solution } = solveHole(model, question.quadrature)
  const evaluation = evaluateStroke(model, values, {
    situation,
    quadrature: STROKE_QUADRATURE,
    tries: strokeTries(model, problem.shots, situation, STROKE_LINE_STEP_DEGREES),
  })
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
  const chosen = chooseClub(best, question.club, situation)
  const { flights, nearGreen } = model
  const solved: SolvedHole = { ground, player, day, flights, nearGreen, problem, values }
  const contenders = contendersOf(best, chosen)
  const doubt = draws > 0 && !format ? doubtOfDraws(solved, situation, best, draws, seed) : null
  const byStrokes = planOptions(
    model,
    situation,
    evaluation,
    best,
    values,
    chances,
    format?.doubts ?? doubt?.clubs ?? new Map(),
  )
  const options = format ? byStrokes.map(format.optionFor) : byStrokes
  const part = format?.part(options) ?? null
  const hazard = mainHazard(model, contenders.slice(0, 3))
  const facts = {
    verdict: verdictOf(options, draws, question.objective && limitsOf(question.objective.name)),
    options,
    overruled: question.club
      ? { club: chosen.shot.club, cost: options[best.indexOf(chosen)]?.cost ?? 0 }
      : null,
  }
  return {
    schema: 'plan/1',
    course: question.courseName,
    hole: { ref: hole.ref, par: hole.par, length_m: hole.lengthMetres, tee: hole.teeName },
    player: player.name,
    situation: askedSituation(situation, question.objective),
    value: {
      strokes: evaluation.value,
      low: Math.min(evaluation.value, doubt?.valueLow ?? evaluation.value),
      high: Math.max(evaluation.value, doubt?.valueHigh ?? evaluation.value),
    },
    plays: pinPlays(model, [situation.x, situation.y]),
    ...facts,
    flips: question.flips === false || format ? [] : findFlips(solved, situation, contenders, hazard),
    // biome-ignore lint/suspicious/noThenProperty: `then` is promised by plan/1, and no plan is ever awaited.
    then: nextShots(model, format ?? problem, chosen),
    format: part,
    sentence: sentenceOf(question, facts, part, sentenceLine(hole, situation), hazard),
    cautions: cautionsOf(hole, day, player.guesses, solution.converged),
    guesses: [...player.guesses],
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
  }
}

/** The plan in words, led by what the format changes. */
function sentenceOf(
  { units = 'yards', objective }: PlanQuestion,
  facts: PlanFacts,
  part: FormatPart | null,
  lineFor: (option: PlanOption) => SentenceLine,
  hazard: MainHazard | null,
): string {
  if (!part || !objective) return planSentence(facts, lineFor, hazard, units)
  const costWords = (cost: number): string => worthWords(objective, cost)
  return `${part.sentence} ${planSentence(facts, lineFor, hazard, units, costWords)}`
}

function askedSituation(
  { x, y, lie, sit, stance }: Situation,
  objective: Objective | undefined,
): Plan['situation'] {
  return {
    x_m: x,
    y_m: y,
    lie,
    ...(sit && { sit }),
    ...(stance && { stance: { uphill_deg: stance.uphillDegrees, above_deg: stance.aboveDegrees } }),
    objective: objective?.name ?? 'strokes',
  }
}

function chooseClub(best: readonly Candidate[], club: string | undefined, situation: Situation): Candidate {
  const [first] = best
  if (!first)
    throw new Failure(
      'MAR-PLAN-002',
      `No club of the player is played from ${situation.lie}.`,
      `lie ${situation.lie}`,
    )
  if (club === undefined) return first
  const chosen = best.find((candidate) => candidate.shot.club === club)
  if (chosen) return chosen
  const known = best.map((candidate) => candidate.shot.club).join(', ')
  throw new Failure(
    'MAR-PLAN-003',
    `The player does not play a ${club} from ${situation.lie}. Clubs: ${known}.`,
    `club ${club}`,
  )
}

function contendersOf(best: readonly Candidate[], chosen: Candidate): Candidate[] {
  const contenders = best.slice(0, CONTENDERS)
  return contenders.includes(chosen) ? contenders : [...contenders, chosen]
}

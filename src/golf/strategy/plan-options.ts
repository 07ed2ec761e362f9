import { radiansToDegrees } from '#numbers/units/units.ts'
import type { Candidate, Situation, StrokeEvaluation } from './evaluate-stroke.ts'
import type { HoleModel } from './hole-model.ts'
import { missesOf } from './misses.ts'
import { leaveOf, middleTotal, outcomeShares } from './option-outcomes.ts'
import type { PlanOption } from './plan.ts'
import { type ScoreChances, scoresOfStroke } from './score-distribution.ts'
import { AIM_COSTS_DEGREES } from './settings.ts'
import { wayPastTrees } from './way-past-trees.ts'

/** What is known of each club from draws of the player, by club name. */
export type ClubDoubts = ReadonlyMap<string, Pick<PlanOption, 'cost_low' | 'cost_high' | 'best_in_draws'>>

/** The best line of each club, cheapest club first. */
export function bestByClub(evaluation: StrokeEvaluation): Candidate[] {
  const best = new Map<string, Candidate>()
  for (const candidate of evaluation.candidates) {
    const known = best.get(candidate.shot.club)
    if (!known || candidate.strokes < known.strokes) best.set(candidate.shot.club, candidate)
  }
  return [...best.values()].sort((a, b) => a.strokes - b.strokes)
}

/** Options of a plan, in the order of `best`. */
export function planOptions(
  model: HoleModel,
  situation: Situation,
  evaluation: StrokeEvaluation,
  best: readonly Candidate[],
  values: Float64Array,
  chances: ScoreChances,
  doubts: ClubDoubts,
): PlanOption[] {
  const { value } = evaluation
  const first = best[0]
  const again = first ? scoresOfStroke(model, first.ends, chances, values, value, null) : []
  return best.map((candidate): PlanOption => {
    const scores = scoresOfStroke(
      model,
      candidate.ends,
      chances,
      values,
      value,
      candidate === first ? null : again,
    )
    const doubt = doubts.get(candidate.shot.club)
    const cost = candidate.strokes - value
    return {
      club: candidate.shot.club,
      shape: candidate.shot.shape,
      aim: aimOf(situation, candidate),
      total_m: middleTotal(model, candidate.table, candidate.ends, situation),
      strokes: candidate.strokes,
      cost,
      cost_low: Math.min(cost, doubt?.cost_low ?? cost),
      cost_high: Math.max(cost, doubt?.cost_high ?? cost),
      best_in_draws: doubt?.best_in_draws ?? (candidate === first ? 1 : 0),
      outcomes: outcomeShares(model, candidate.ends),
      leave_m: leaveOf(model, candidate.ends, situation, values),
      misses: missesOf(model, candidate, values, value),
      trees: wayPastTrees(model, situation, candidate),
      scores: Object.fromEntries(
        scores.flatMap((chance, strokes) => (strokes > 0 && chance > 0 ? [[String(strokes), chance]] : [])),
      ),
      aimCosts: aimCostsOf(situation, evaluation, candidate),
    }
  })
}

/** Where a candidate aims: the centre of its pattern, wind and curve included, and its start line. */
export function aimOf(situation: Situation, candidate: Candidate): PlanOption['aim'] {
  const { stock } = candidate.shot
  const { change, turn } = candidate.table
  const start = candidate.heading - Math.atan(stock.curveShare)
  const centre = candidate.heading + turn + Math.atan2(change.driftShare, change.carryShare)
  return {
    heading_deg: radiansToDegrees(centre),
    offset_m: situation.x + stock.totalMetres * Math.sin(centre),
    at_m: stock.totalMetres,
    start_deg: radiansToDegrees(start + turn),
    ...(situation.stance ? { aimed_deg: radiansToDegrees(start) } : {}),
  }
}

/** What other lines of the same shot cost against the plan, from left to right. */
function aimCostsOf(
  situation: Situation,
  evaluation: StrokeEvaluation,
  best: Candidate,
): PlanOption['aimCosts'] {
  return evaluation.candidates
    .filter(
      (one) =>
        one.shot === best.shot &&
        Math.abs(radiansToDegrees(one.heading - best.heading)) <= AIM_COSTS_DEGREES + 1e-9,
    )
    .map((one) => ({ offset_m: aimOf(situation, one).offset_m, cost: one.strokes - evaluation.value }))
}

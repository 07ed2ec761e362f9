import type { Candidate, Situation, StrokeEvaluation } from '../evaluate-stroke.ts'
import { limitsOf, PLANNED_STROKES } from '../format-settings.ts'
import { formatWords } from '../format-words.ts'
import type { HoleModel } from '../hole-model.ts'
import type { HoleProblem } from '../hole-problem.ts'
import { holeChances, type Objective } from '../objective.ts'
import type { FormatPart, PlanOption } from '../plan.ts'
import { aimOf, type ClubDoubts } from '../plan-options.ts'
import type { ScoreChances } from '../score-distribution.ts'
import { AIM_COSTS_DEGREES, MOST_STROKES } from '../settings.ts'
import { doubtOfFormat } from './doubt-of-format.ts'
import { evaluateFormat, type FormatCandidate, type FormatEvaluation } from './evaluate-format.ts'
import { type FormatQuadrature, formatStrokes } from './format-strokes.ts'
import { solveLevels } from './levels.ts'

/** What a format makes of one stroke. */
export interface FormatPlan {
  /** Clubs on their lines for the format, the plan first. */
  readonly best: readonly Candidate[]
  readonly doubts: ClubDoubts
  /** An option as worked out for strokes, with its figures for the format. */
  optionFor(option: PlanOption, index: number): PlanOption
  part(options: readonly PlanOption[]): FormatPart
}

export interface FormatQuestion {
  readonly model: HoleModel
  readonly problem: HoleProblem
  readonly values: Float64Array
  readonly chances: ScoreChances
  readonly situation: Situation
  readonly evaluation: StrokeEvaluation
  readonly objective: Objective
  readonly quadrature: FormatQuadrature
  readonly draws: number
  readonly seed: number
}

/** Plans one stroke and what follows for a format, from a hole that is solved for fewest strokes. */
export function planFormat(question: FormatQuestion): FormatPlan {
  const { model, problem, values, chances, situation, evaluation, objective, draws } = question
  const limits = limitsOf(objective.name)
  const { played } = objective
  const levels = solveLevels(
    model,
    chances,
    { worths: objective.worths, first: played + 1, last: played + PLANNED_STROKES },
    formatStrokes(model, problem, question.quadrature),
  )
  const weighed = evaluateFormat(model, levels, objective, evaluation, chances, values, limits.tooClose)
  const [first] = weighed.best as [FormatCandidate, ...FormatCandidate[]]
  const doubt =
    draws === 0
      ? null
      : doubtOfFormat(model, levels, weighed, problem.shots, situation, played, draws, question.seed)
  const costOf = (worth: number): number => Math.max(0, first.worth - worth)
  return {
    best: weighed.best.map(({ candidate }) => candidate),
    doubts: doubt?.clubs ?? new Map(),
    optionFor(option, index) {
      const row = weighed.best[index] as FormatCandidate
      const cost = costOf(row.worth)
      const doubts = doubt?.clubs.get(option.club)
      return {
        ...option,
        worth: row.worth,
        cost,
        cost_low: Math.min(cost, doubts?.cost_low ?? cost),
        cost_high: Math.max(cost, doubts?.cost_high ?? cost),
        scores: scoresFromHere(row.scores, played),
        aimCosts: evaluation.candidates
          .filter((one) => isBesideLine(one, row.candidate))
          .map((one) => ({
            offset_m: aimOf(situation, one).offset_m,
            cost: first.worth - weighed.worthOf(one),
          })),
      }
    },
    part(options) {
      const part = partOf(weighed, first, objective, situation, limits.tooClose)
      const interval = {
        low: Math.min(first.worth, doubt?.low ?? first.worth),
        high: Math.max(first.worth, doubt?.high ?? first.worth),
      }
      const whole = { ...part, ...interval }
      return { ...whole, sentence: formatWords(objective, whole, options[0] as PlanOption) }
    },
  }
}

function isBesideLine(one: Candidate, best: Candidate): boolean {
  const degrees = (Math.abs(one.heading - best.heading) * 180) / Math.PI
  return one.shot === best.shot && degrees <= AIM_COSTS_DEGREES + 1e-9
}

function partOf(
  weighed: FormatEvaluation,
  first: FormatCandidate,
  objective: Objective,
  situation: Situation,
  negligible: number,
): Omit<FormatPart, 'sentence' | 'low' | 'high'> {
  const { fewest, fewestAllAlong } = weighed
  const here = first.worth - fewest.worth
  const isSameClub = first.candidate.shot === fewest.candidate.shot
  const isSame = isSameClub && first.candidate.heading === fewest.candidate.heading
  const gain = first.worth - fewestAllAlong.worth
  const changes =
    !isSame && here >= negligible ? (isSameClub ? 'line' : 'club') : gain >= negligible ? 'later' : 'nothing'
  const [mean, spread] = meanAndSpread(first.scores)
  const [fewestMean, fewestSpread] = meanAndSpread(fewestAllAlong.scores)
  return {
    aim: objective.aim,
    played: objective.played,
    received: objective.received,
    value: first.worth,
    fewest_strokes: {
      club: fewest.candidate.shot.club,
      shape: fewest.candidate.shot.shape,
      aim: aimOf(situation, fewest.candidate),
      value: fewestAllAlong.worth,
    },
    gain,
    gain_here: here,
    changes,
    manner: changes === 'nothing' ? null : spread > fewestSpread ? 'attack' : 'protect',
    strokes_given_up: Math.max(0, mean - fewestMean),
    match: objective.opponent
      ? holeChances(withRest(first.scores), objective.opponent, objective.received)
      : null,
    notes: objective.notes,
  }
}

/** Mean and standard deviation of a score; what is longer than the list counts as its last. */
function meanAndSpread(scores: Float64Array): [mean: number, spread: number] {
  const whole = withRest(scores)
  const mean = whole.reduce((sum, chance, score) => sum + chance * score, 0)
  return [mean, Math.sqrt(whole.reduce((sum, chance, score) => sum + chance * (score - mean) ** 2, 0))]
}

/** The last entry holds whatever is longer. */
function withRest(scores: Float64Array): number[] {
  const known = [...scores.subarray(0, MOST_STROKES)]
  return [...known, Math.max(0, 1 - known.reduce((sum, chance) => sum + chance, 0))]
}

/** By strokes from here, as an option of a plan has them. */
function scoresFromHere(scores: Float64Array, played: number): PlanOption['scores'] {
  return Object.fromEntries(
    withRest(scores).flatMap((chance, score) => (chance > 1e-15 ? [[String(score - played), chance]] : [])),
  )
}

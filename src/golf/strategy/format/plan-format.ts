import type { Candidate, Situation, StrokeEvaluation } from '../evaluate-stroke.ts'
import { limitsOf, PLANNED_STROKES } from '../format-settings.ts'
import { formatWords } from '../format-words.ts'
import type { HoleModel } from '../hole-model.ts'
import type { HoleProblem } from '../hole-problem.ts'
import type { Objective } from '../objective.ts'
import type { FormatPart, PlanOption } from '../plan.ts'
import { aimOf, type ClubDoubts } from '../plan-options.ts'
import type { ScoreChances } from '../score-distribution.ts'
import { AIM_COSTS_DEGREES } from '../settings.ts'
import type { ShotTable } from '../shot-table.ts'
import { doubtOfFormat } from './doubt-of-format.ts'
import { evaluateFormat, type FormatCandidate } from './evaluate-format.ts'
import { formatPart, withRest } from './format-part.ts'
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
  /** The best shot of every place for the stroke after this one; that for the fewest strokes where nothing matters any more. */
  bestShot(state: number): ShotTable | null
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
    bestShot: (state) => levels.bestShot(played + 1, state) ?? problem.bestShot(state),
    part(options) {
      const { fewest, fewestAllAlong } = weighed
      const { shot, heading } = fewest.candidate
      const isSameShot = first.candidate.shot === shot
      const part = formatPart(
        {
          first,
          fewest: { ...fewest, club: shot.club, shape: shot.shape, aim: aimOf(situation, fewest.candidate) },
          fewestAllAlong,
          differs: !isSameShot ? 'club' : first.candidate.heading === heading ? null : 'line',
          interval: { low: doubt?.low ?? first.worth, high: doubt?.high ?? first.worth },
        },
        objective,
        limits.tooClose,
      )
      return { ...part, sentence: formatWords(objective, part, options[0] as PlanOption) }
    },
  }
}

function isBesideLine(one: Candidate, best: Candidate): boolean {
  const degrees = (Math.abs(one.heading - best.heading) * 180) / Math.PI
  return one.shot === best.shot && degrees <= AIM_COSTS_DEGREES + 1e-9
}

/** By strokes from here, as an option of a plan has them. */
function scoresFromHere(scores: Float64Array, played: number): PlanOption['scores'] {
  return Object.fromEntries(
    withRest(scores).flatMap((chance, score) => (chance > 1e-15 ? [[String(score - played), chance]] : [])),
  )
}

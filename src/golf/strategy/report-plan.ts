import { Failure } from '#faults/failure.ts'
import { cautionsOf } from './cautions.ts'
import type { DoubtOfDraws } from './doubt-of-draws.ts'
import type { Candidate, Situation, StrokeEvaluation } from './evaluate-stroke.ts'
import type { FormatPlan } from './format/plan-format.ts'
import { limitsOf } from './format-settings.ts'
import { worthWords } from './format-words.ts'
import type { HoleModel } from './hole-model.ts'
import { hazardWords, type MainHazard, mainHazard } from './main-hazard.ts'
import { nextShots, type PlanAfter } from './next-shots.ts'
import type { Objective } from './objective.ts'
import type { Flip, FormatPart, Plan, PlanOption } from './plan.ts'
import type { PlanQuestion } from './plan-hole.ts'
import { planOptions } from './plan-options.ts'
import { type PlanFacts, planSentence, type SentenceLine } from './plan-sentence.ts'
import { pinPlays } from './plays-to-pin.ts'
import type { ScoreChances } from './score-distribution.ts'
import { sentenceLine } from './sentence-line.ts'
import { verdictOf } from './verdict.ts'

/** One stroke worked out, to be put in words and figures. */
export interface WorkedStroke {
  readonly question: PlanQuestion
  readonly model: HoleModel
  readonly situation: Situation
  readonly evaluation: StrokeEvaluation
  /** Each club on its best line, the plan's own first. */
  readonly best: readonly Candidate[]
  readonly values: Float64Array
  readonly chances: ScoreChances
  readonly after: PlanAfter
  readonly doubt: DoubtOfDraws | null
  readonly format: FormatPlan | null
  readonly flipsOf: (contenders: readonly Candidate[], hazard: MainHazard | null) => Flip[]
  readonly method: Plan['method']
}

/** How many options are compared over flips: what is further behind never becomes the best. */
const CONTENDERS = 8

/** The plan of a stroke that is worked out. Throws a Failure when no club is played, or not the one that is asked for. */
export function reportPlan(worked: WorkedStroke): Plan {
  const { question, model, situation, evaluation, best, values, doubt, format, method } = worked
  const { hole, player, day } = question
  const chosen = chooseClub(best, question.club, situation)
  const contenders = contendersOf(best, chosen)
  const byStrokes = planOptions(
    model,
    situation,
    evaluation,
    best,
    values,
    worked.chances,
    format?.doubts ?? doubt?.clubs ?? new Map(),
  )
  const options = format ? byStrokes.map(format.optionFor) : byStrokes
  const part = format?.part(options) ?? null
  const hazard = mainHazard(model, contenders.slice(0, 3))
  const facts = {
    verdict: verdictOf(options, method.draws, question.objective && limitsOf(question.objective.name)),
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
    flips: worked.flipsOf(contenders, hazard),
    avoid: hazard && { what: hazardWords(hazard), side: hazard.side },
    // biome-ignore lint/suspicious/noThenProperty: `then` is promised by plan/1, and no plan is ever awaited.
    then: nextShots(model, format ?? worked.after, chosen),
    format: part,
    sentence: sentenceOf(question, facts, part, sentenceLine(hole, situation), hazard),
    cautions: cautionsOf(hole, day, player.guesses, method.converged),
    guesses: [...player.guesses],
    method,
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

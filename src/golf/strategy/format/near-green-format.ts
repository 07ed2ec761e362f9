import { limitsOf } from '../format-settings.ts'
import { formatWords, worthWords } from '../format-words.ts'
import { nearGreenSentence } from '../near-green-sentence.ts'
import { type Objective, worthOf } from '../objective.ts'
import type { Plan, PlanOption } from '../plan.ts'
import type { LengthUnits } from '../plan-sentence.ts'
import { MOST_STROKES } from '../settings.ts'
import { verdictOf } from '../verdict.ts'
import { fewestFirst, formatPart } from './format-part.ts'
import type { Prospect } from './levels.ts'

const NOTE =
  'Near the green each club keeps the shot that costs the fewest strokes, and is weighed by its scores; how sure that is was not worked out.'

/** A plan near the green, made for the fewest strokes, with its clubs weighed by what their scores are worth. */
export function nearGreenFormat(plan: Plan, objective: Objective, units: LengthUnits): Plan {
  const limits = limitsOf(objective.name)
  const rows = plan.options.map((option) => ({ option, ...prospectOf(option, objective) }))
  const [fewest] = rows
  if (!fewest) return plan
  const best = fewestFirst(
    [...rows].sort((a, b) => b.worth - a.worth),
    (row) => row === fewest,
    limits.tooClose,
  )
  const first = best[0] ?? fewest
  const options = best.map(({ option, worth }): PlanOption => {
    const cost = Math.max(0, first.worth - worth)
    return { ...option, worth, cost, cost_low: cost, cost_high: cost, aimCosts: [] }
  })
  const { club, shape, aim } = fewest.option
  const noted = { ...objective, notes: [...objective.notes, NOTE] }
  const part = formatPart(
    {
      first,
      fewest: { ...fewest, club, shape, aim },
      fewestAllAlong: fewest,
      differs: first === fewest ? null : 'club',
      interval: { low: first.worth, high: first.worth },
    },
    noted,
    limits.tooClose,
  )
  const sentence = formatWords(objective, part, first.option)
  const overruled = plan.overruled && {
    club: plan.overruled.club,
    cost: options.find((option) => option.club === plan.overruled?.club)?.cost ?? 0,
  }
  const facts = { verdict: verdictOf(options, 0, limits), options, overruled }
  const costWords = (cost: number): string => worthWords(objective, cost)
  return {
    ...plan,
    ...facts,
    situation: { ...plan.situation, objective: objective.name },
    format: { ...part, sentence },
    sentence: `${sentence} ${nearGreenSentence(facts, units, costWords)}`,
  }
}

function prospectOf({ scores }: PlanOption, objective: Objective): Prospect {
  const whole = new Float64Array(MOST_STROKES + 1)
  let worth = 0
  for (const [more, chance] of Object.entries(scores)) {
    const score = objective.played + Number(more)
    worth += chance * worthOf(objective, score)
    const at = Math.min(MOST_STROKES, score)
    whole[at] = (whole[at] as number) + chance
  }
  return { worth, scores: whole }
}

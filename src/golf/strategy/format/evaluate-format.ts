import type { Candidate, StrokeEvaluation } from '../evaluate-stroke.ts'
import type { HoleModel } from '../hole-model.ts'
import { type Objective, worthOf } from '../objective.ts'
import { type ScoreChances, scoresOfStroke } from '../score-distribution.ts'
import { MOST_STROKES } from '../settings.ts'
import { fewestFirst } from './format-part.ts'
import type { Levels, Prospect } from './levels.ts'

/** A club on its best line for a format, and what it is worth with the best plan for the format after it. */
export interface FormatCandidate extends Prospect {
  readonly candidate: Candidate
}

/** The clubs of one stroke for a format. */
export interface FormatEvaluation {
  /** One row a club on its best line, the plan first. */
  readonly best: readonly FormatCandidate[]
  /** What playing again from the same place is worth, two strokes later. */
  readonly again: Prospect
  /** The stroke of the plan for fewest strokes with the best plan for the format after it. */
  readonly fewest: FormatCandidate
  /** Scores and worth of the plan for fewest strokes all along. */
  readonly fewestAllAlong: Prospect
  /** Worth of any line of the same shot as a row of {@link best}. */
  worthOf(candidate: Candidate): number
}

/**
 * Weighs every candidate of a stroke for a format. Where the plan for fewest strokes is worth as much to within
 * `negligible`, its club and its line stand: a difference that nobody could notice changes nothing.
 */
export function evaluateFormat(
  model: HoleModel,
  levels: Levels,
  objective: Objective,
  evaluation: StrokeEvaluation,
  chances: ScoreChances,
  values: Float64Array,
  negligible: number,
): FormatEvaluation {
  const candidates = [...evaluation.candidates].sort((a, b) => a.strokes - b.strokes)
  const [fewestStroke] = candidates as [Candidate, ...Candidate[]]
  const { played } = objective
  const fromHere = scoresOfStroke(model, fewestStroke.ends, chances, values, evaluation.value, null)
  const meanAfter = prospectsOfFewest(objective, fromHere)
  const bestFrom = prospectsFrom(levels, candidates, meanAfter)
  const again = bestFrom(played + 2)
  const worth = (one: Candidate): number => levels.worthOfStroke(one.ends, played + 1, again.worth)
  const full = (candidate: Candidate): FormatCandidate => ({
    candidate,
    ...levels.prospectOfStroke(candidate.ends, played + 1, again),
  })
  const rows = lineOfEachClub(candidates, worth, negligible)
    .map(full)
    .sort((a, b) => b.worth - a.worth)
  const fewest = full(fewestStroke)
  const { club } = fewestStroke.shot
  const best = fewestFirst(rows, ({ candidate }) => candidate.shot.club === club, negligible)
  return { best, again, fewest, fewestAllAlong: meanAfter(played), worthOf: worth }
}

/** The best line of each club, or its line for fewest strokes where that is as good. */
function lineOfEachClub(
  candidates: readonly Candidate[],
  worth: (one: Candidate) => number,
  negligible: number,
): Candidate[] {
  const byClub = new Map<string, { readonly first: Candidate; best: Candidate; most: number }>()
  for (const candidate of candidates) {
    const own = worth(candidate)
    const known = byClub.get(candidate.shot.club)
    if (!known) byClub.set(candidate.shot.club, { first: candidate, best: candidate, most: own })
    else if (own > known.most) Object.assign(known, { best: candidate, most: own })
  }
  return [...byClub.values()].map(({ first, best, most }) =>
    worth(first) >= most - negligible ? first : best,
  )
}

/** What one place is worth by strokes used with the plan for the fewest strokes: `fromHere[k]` is its chance of `k` more. */
export function prospectsOfFewest(
  objective: Pick<Objective, 'worths'>,
  fromHere: readonly number[],
): (used: number) => Prospect {
  return (used) => {
    const scores = shifted(fromHere, used)
    return {
      scores,
      worth: fromHere.reduce((sum, chance, more) => sum + chance * worthOf(objective, used + more), 0),
    }
  }
}

/**
 * What one place is worth by strokes used with the best of the candidates, which are all strokes from there; ties go to the
 * first. `fewest` takes over where every score is worth the same.
 */
export function prospectsFrom(
  levels: Levels,
  candidates: readonly Candidate[],
  fewest: (used: number) => Prospect,
): (used: number) => Prospect {
  const known: Prospect[] = []
  const bestFrom = (used: number): Prospect => {
    const before = known[used]
    if (before) return before
    if (used + 1 >= levels.settledFrom) return fewest(used)
    const again = bestFrom(used + 2)
    const best = candidates
      .map(({ ends }) => ({ ends, worth: levels.worthOfStroke(ends, used + 1, again.worth) }))
      .reduce((most, one) => (one.worth > most.worth ? one : most))
    const prospect = levels.prospectOfStroke(best.ends, used + 1, again)
    known[used] = prospect
    return prospect
  }
  return bestFrom
}

/** Scores from here as scores of the whole hole when so many strokes are used. */
function shifted(fromHere: readonly number[], used: number): Float64Array {
  const scores = new Float64Array(MOST_STROKES + 1)
  for (const [strokes, chance] of fromHere.entries()) {
    const score = Math.min(MOST_STROKES, used + strokes)
    scores[score] = (scores[score] as number) + chance
  }
  return scores
}

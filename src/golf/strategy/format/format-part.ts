import { holeChances, type Objective } from '../objective.ts'
import type { FormatPart, PlanOption } from '../plan.ts'
import { MOST_STROKES } from '../settings.ts'
import type { Prospect } from './levels.ts'

/** What a plan for an objective is, and the plan for the fewest strokes beside it. */
export interface Compared {
  readonly first: Prospect
  /** The stroke of the plan for the fewest strokes with the best plan for the objective after it. */
  readonly fewest: Prospect & Pick<PlanOption, 'club' | 'shape' | 'aim'>
  /** The plan for the fewest strokes all along. */
  readonly fewestAllAlong: Prospect
  /** What of the first stroke differs. */
  readonly differs: 'club' | 'line' | null
  readonly interval: { readonly low: number; readonly high: number }
}

/** What planning for an objective changes; under `negligible` a gain is none. */
export function formatPart(
  { first, fewest, fewestAllAlong, differs, interval }: Compared,
  objective: Objective,
  negligible: number,
): Omit<FormatPart, 'sentence'> {
  const here = first.worth - fewest.worth
  const gain = first.worth - fewestAllAlong.worth
  const changes = differs !== null && here >= negligible ? differs : gain >= negligible ? 'later' : 'nothing'
  const [mean, spread] = meanAndSpread(first.scores)
  const [fewestMean, fewestSpread] = meanAndSpread(fewestAllAlong.scores)
  const { club, shape, aim } = fewest
  return {
    aim: objective.aim,
    played: objective.played,
    received: objective.received,
    value: first.worth,
    low: Math.min(first.worth, interval.low),
    high: Math.max(first.worth, interval.high),
    fewest_strokes: { club, shape, aim, value: fewestAllAlong.worth },
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
export function withRest(scores: Float64Array): number[] {
  const known = [...scores.subarray(0, MOST_STROKES)]
  return [...known, Math.max(0, 1 - known.reduce((sum, chance) => sum + chance, 0))]
}

/** The row of the fewest strokes goes first where it is worth as much as the best to within `negligible`; rows come best first. */
export function fewestFirst<Row extends { readonly worth: number }>(
  rows: readonly Row[],
  isFewest: (row: Row) => boolean,
  negligible: number,
): readonly Row[] {
  const own = rows.find(isFewest)
  return own && own.worth >= (rows[0]?.worth ?? 0) - negligible
    ? [own, ...rows.filter((row) => row !== own)]
    : rows
}

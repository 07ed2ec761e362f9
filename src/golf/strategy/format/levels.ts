import type { CellOutcomes } from '../cell-outcomes.ts'
import { SETTLED_WORTH } from '../format-settings.ts'
import type { HoleModel } from '../hole-model.ts'
import { outcomePlace } from '../outcome.ts'
import type { ScoreChances } from '../score-distribution.ts'
import { MOST_STROKES } from '../settings.ts'
import type { ShotTable } from '../shot-table.ts'
import { reliefChoice } from './relief-choice.ts'

/** Worth and chance of each score of one place after some number of strokes. */
export interface Prospect {
  readonly worth: number
  /** By the strokes of the whole hole, up to {@link MOST_STROKES}. */
  readonly scores: Float64Array
}

/** What every place is worth after each number of strokes, penalties counted, by the best plan for a format. */
export interface Levels {
  /** From so many strokes on every score is worth the same. */
  readonly settledFrom: number
  /** Worth of lying at a place with so many strokes used. */
  worth(used: number, place: number): number
  /** Chance that the hole takes `score` strokes in all from there, by the plan of that level. */
  scoreChance(used: number, place: number, score: number): number
  /** The best shot from a state with so many strokes used; `null` where none was looked for. */
  bestShot(used: number, state: number): ShotTable | null
  /** Worth of a stroke whose ends are known, which makes `used` strokes; `again`: what playing again from there is worth, two strokes later. */
  worthOfStroke(stroke: CellOutcomes, used: number, again: number): number
  /** The same with the chance of each score. */
  prospectOfStroke(stroke: CellOutcomes, used: number, again: Prospect): Prospect
}

/** A stroke with what it is worth. */
export interface WeighedStroke {
  readonly table: ShotTable
  readonly outcomes: CellOutcomes
  readonly worth: number
}

/** Finds the best stroke from a state: `worthOf` weighs a candidate, and ties go to the first. */
export type ImproveState = (
  state: number,
  worthOf: (outcomes: CellOutcomes) => number,
) => WeighedStroke | null

/** Makes ready for a level: `after` is what every place is worth after the stroke, `later` after one stroke more. */
export type ImproveLevel = (after: Float64Array, later: Float64Array) => ImproveState

/** For which scores and which levels the best plan is looked for. */
export interface LevelsQuestion {
  /** Worth of so many strokes in all; the last entry is that of all longer scores. */
  readonly worths: readonly number[]
  /** The fewest strokes used that are asked about. */
  readonly first: number
  /** With more strokes used than this the plan for the fewest strokes is played; absent = never. */
  readonly last?: number
}

/**
 * The best plan for a format by strokes used, backwards from where nothing matters any more down to `first`. A stroke
 * leads only to later levels (at rest one on; relief one and its penalty on; stroke and distance two on, from the same
 * place), so each level is one pass over the strokes and the answer is exact for the strokes that `improve` weighs. Near
 * the green the chances of the short game stand as they are. `chances`: those of the plan for the fewest strokes.
 */
export function solveLevels(
  model: HoleModel,
  chances: ScoreChances,
  { worths, first, last = Number.POSITIVE_INFINITY }: LevelsQuestion,
  improve: ImproveLevel,
): Levels {
  const { places, states, costs } = model
  const settledFrom = settled(worths)
  const worthOfScore = (score: number): number => worths[Math.min(score, worths.length - 1)] as number
  const settledWorth = worthOfScore(settledFrom)
  const byUsed: Level[] = []
  const reliefs = reliefChoice(model)

  const nothingMatters = new Float64Array(places.count).fill(settledWorth)
  const worthsAt = (used: number): Float64Array =>
    (used + 1 < settledFrom ? byUsed[used]?.worth : undefined) ?? nothingMatters
  const worth = (used: number, place: number): number => worthsAt(used)[place] as number
  const scoreChance = (used: number, place: number, score: number): number => {
    if (score <= used) return 0
    const own = places.isShortGame[place] === 1 ? undefined : byUsed[used]?.scores[score]
    return (own ?? chances[score - used])?.[place] ?? 0
  }
  /** Walks over what a stroke may lead to; place −1 is where it was played from. */
  const follow = (
    stroke: CellOutcomes,
    used: number,
    again: number,
    visit: (chance: number, after: number, place: number) => void,
  ): void => {
    for (let end = 0; end < stroke.outcome.length; end++) {
      const outcome = stroke.outcome[end] as number
      const weight = stroke.weight[end] as number
      if (costs.isSpecial[outcome] === 0) {
        visit(weight, used, outcome)
        continue
      }
      const played = costs.played[outcome] as number
      if (played > 0) visit(weight * played, used, outcomePlace(places, outcome))
      let back = costs.returned[outcome] as number
      const relieved = costs.relieved[outcome] as number
      if (relieved > 0) {
        const drop = reliefs.best(outcome, used, worth)
        if (drop.worth >= again) visit(weight * relieved, used + drop.penalty, drop.place)
        else back += relieved
      }
      if (back > 0) visit(weight * back, used + 1, -1)
    }
  }
  const worthOfStroke = (stroke: CellOutcomes, used: number, again: number): number => {
    let sum = 0
    follow(stroke, used, again, (chance, after, place) => {
      sum += chance * (place < 0 ? again : worth(after, place))
    })
    return sum
  }
  const prospectOfStroke = (stroke: CellOutcomes, used: number, again: Prospect): Prospect => {
    const scores = new Float64Array(MOST_STROKES + 1)
    let sum = 0
    follow(stroke, used, again.worth, (chance, after, place) => {
      sum += chance * (place < 0 ? again.worth : worth(after, place))
      for (let score = after + 1; score <= MOST_STROKES; score++)
        scores[score] =
          (scores[score] as number) +
          chance * (place < 0 ? (again.scores[score] as number) : scoreChance(after, place, score))
    })
    return { worth: sum, scores }
  }

  for (let used = settledFrom - 2; used >= first; used--) {
    const here = new Float64Array(places.count).fill(settledWorth)
    const isPlanned = used <= last
    for (let place = 0; place < places.count; place++) {
      if (isPlanned && places.isShortGame[place] === 0) continue
      let sum = 0
      for (let strokes = 1; strokes <= MOST_STROKES; strokes++)
        sum += ((chances[strokes] as Float64Array)[place] as number) * worthOfScore(used + strokes)
      here[place] = sum
    }
    const level: Level = { worth: here, scores: [], shots: new Map() }
    byUsed[used] = level
    // No full stroke ends the hole: two strokes on every score is worth the same.
    if (!isPlanned || used + 2 >= settledFrom) continue
    const scores = Array.from({ length: MOST_STROKES + 1 }, () => new Float64Array(places.count))
    const improveState = improve(worthsAt(used + 1), worthsAt(used + 2))
    for (const state of states.order) {
      const again = worth(used + 2, state)
      const best = improveState(state, (outcomes) => worthOfStroke(outcomes, used + 1, again))
      if (best === null) continue
      here[state] = best.worth
      level.shots.set(state, best.table)
      const prospect = prospectOfStroke(best.outcomes, used + 1, {
        worth: again,
        scores: Float64Array.from(scores.keys(), (score) => scoreChance(used + 2, state, score)),
      })
      for (const [score, chance] of prospect.scores.entries()) (scores[score] as Float64Array)[state] = chance
    }
    level.scores.push(...scores)
  }
  const bestShot = (used: number, state: number): ShotTable | null => byUsed[used]?.shots.get(state) ?? null
  return { settledFrom, worth, scoreChance, bestShot, worthOfStroke, prospectOfStroke }
}

/** One number of strokes used: worth of every place and, of states that were planned, the chances of scores and the shot. */
interface Level {
  readonly worth: Float64Array
  readonly scores: Float64Array[]
  readonly shots: Map<number, ShotTable>
}

/** The least score from which on all are worth the same, or near enough. */
function settled(worths: readonly number[]): number {
  const last = worths.at(-1) as number
  let score = worths.length - 1
  while (score > 0 && Math.abs((worths[score - 1] as number) - last) <= SETTLED_WORTH) score--
  return score
}

import { shortGameShares } from '#golf/player/short-game-shares.ts'
import { type CellOutcomes, cellOutcomes } from './cell-outcomes.ts'
import type { HoleModel } from './hole-model.ts'
import type { HoleProblem } from './hole-problem.ts'
import { lieOfGround } from './lie-of-ground.ts'
import { outcomePlace } from './outcome.ts'
import { groundOf } from './places.ts'
import { MOST_STROKES } from './settings.ts'
import { returnedShare } from './stroke-cost.ts'
import type { StrokeEnds } from './stroke-ends.ts'

/**
 * Chance of holing out in exactly `k` more strokes from every place, under the plan of a solved problem:
 * `chances[k][place]`. Worked backwards over `k`; penalties count as strokes.
 */
export type ScoreChances = readonly Float64Array[]

/** Chances that are worked out anew for some states only, and what they are elsewhere. */
export interface PartlyKnown {
  readonly states: Int32Array
  /** Taken over where the full game is played; not written to. */
  readonly before: ScoreChances
}

/** Chances of every score from every place. `values` are those of the solve. */
export function scoreChances(
  model: HoleModel,
  problem: Pick<HoleProblem, 'bestShot'>,
  values: Float64Array,
  known?: PartlyKnown,
): ScoreChances {
  const { places } = model
  const states = known?.states ?? model.states.order
  model.costs.valuesMoved()
  const chances = Array.from({ length: MOST_STROKES + 1 }, (_, strokes) => {
    const row = new Float64Array(places.count)
    if (known) for (const state of model.states.order) row[state] = known.before[strokes]?.[state] as number
    return row
  })
  shortGameInto(chances, model, values)
  const outcomesOf = cellOutcomes(model)
  const played = Array.from(states, (state) => {
    model.lookUp()
    const table = problem.bestShot(state)
    return table === null ? null : outcomesOf(table, state)
  })
  for (let strokes = 1; strokes <= MOST_STROKES; strokes++)
    for (const [index, state] of states.entries()) {
      const ends = played[index] as CellOutcomes | null
      if (ends === null) continue
      model.lookUp()
      const again = strokes >= 2 ? ((chances[strokes - 2] as Float64Array)[state] as number) : 0
      const here = values[state] as number
      ;(chances[strokes] as Float64Array)[state] = chanceOf(
        model,
        ends,
        strokes,
        chances,
        values,
        here,
        again,
      )
    }
  return chances
}

/**
 * Chance of each score, by strokes 1 to {@link MOST_STROKES}, of one shot played from a situation and the plan after
 * it. `again` holds the same chances for the best shot from there, which follows a stroke that goes back; leave it
 * out for the best shot itself. The last entry holds whatever is longer.
 */
export function scoresOfStroke(
  model: HoleModel,
  ends: StrokeEnds,
  chances: ScoreChances,
  values: Float64Array,
  here: number,
  again: readonly number[] | null,
): number[] {
  model.costs.valuesMoved()
  const scores: number[] = [0]
  for (let strokes = 1; strokes < MOST_STROKES; strokes++)
    scores.push(chanceOf(model, ends, strokes, chances, values, here, (again ?? scores)[strokes - 2] ?? 0))
  scores.push(Math.max(0, 1 - scores.reduce((sum, chance) => sum + chance, 0)))
  return scores
}

function chanceOf(
  model: HoleModel,
  ends: CellOutcomes,
  strokes: number,
  chances: ScoreChances,
  values: Float64Array,
  here: number,
  again: number,
): number {
  const { places, costs } = model
  const after = (used: number, place: number): number =>
    strokes >= used ? ((chances[strokes - used] as Float64Array)[place] as number) : 0
  let chance = 0
  for (let end = 0; end < ends.outcome.length; end++) {
    const outcome = ends.outcome[end] as number
    const weight = ends.weight[end] as number
    if (costs.isSpecial[outcome] === 0) {
      chance += weight * after(1, outcome)
      continue
    }
    const back = returnedShare(costs, outcome, values, here)
    const played = costs.played[outcome] as number
    const dropped = 1 - played - back
    chance += weight * (back * again + played * after(1, outcomePlace(places, outcome)))
    if (dropped < 1e-12) continue
    const drop = costs.drop[outcome] as number
    const penalty = Math.round((costs.relief[outcome] as number) - (values[drop] as number))
    chance += weight * dropped * after(1 + penalty, drop)
  }
  return chance
}

/**
 * Chances of the short game, worked out on a ladder of distances for each lie and interpolated, as the values are. Where
 * the green adds to the value, they are those that have the value as their mean.
 */
function shortGameInto(chances: Float64Array[], model: HoleModel, values: Float64Array): void {
  const { places, player, nearGreen } = model
  const tables = new Map<string, Float64Array>()
  for (let place = 0; place < places.count; place++) {
    if (places.isShortGame[place] === 0) continue
    model.lookUp()
    const lie = lieOfGround(groundOf(places, place))
    if (lie === null) continue
    if (nearGreen !== null && nearGreen.strokes[place] !== 0) {
      const shares = shortGameShares(player, lie, places.toPin[place] as number, {
        mean: values[place] as number,
        one: nearGreen.one[place] as number,
        two: nearGreen.two[place] as number,
      })
      for (let strokes = 1; strokes <= Math.min(MOST_STROKES, shares.length); strokes++)
        (chances[strokes] as Float64Array)[place] = shares[strokes - 1] as number
      continue
    }
    const at = (places.toPin[place] as number) / LADDER_METRES
    const below = Math.floor(at)
    for (const [rung, share] of [
      [below, 1 - (at - below)],
      [below + 1, at - below],
    ] as const) {
      const key = `${lie} ${rung}`
      const shares = tables.get(key) ?? shortGameShares(player, lie, rung * LADDER_METRES)
      tables.set(key, shares)
      for (let strokes = 1; strokes <= Math.min(MOST_STROKES, shares.length); strokes++) {
        const row = chances[strokes] as Float64Array
        row[place] = (row[place] as number) + share * (shares[strokes - 1] as number)
      }
    }
  }
}

const LADDER_METRES = 0.5

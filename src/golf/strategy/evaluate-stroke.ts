import type { Lie, Sit } from '#golf/player/player.ts'
import { type Stance, stanceEffect } from '#golf/player/stance.ts'
import type { HoleModel } from './hole-model.ts'
import { placeAt } from './places.ts'
import { type ShotTable, shotTable } from './shot-table.ts'
import { isAllowed, type Shot } from './shots.ts'
import { type Strikes, strikesOf } from './strikes.ts'
import { SURELY_BACK, strokeShares } from './stroke-cost.ts'
import { type StrokeEnds, strokeEnds } from './stroke-ends.ts'

/** Where a stroke is played from. */
export interface Situation {
  readonly x: number
  readonly y: number
  readonly lie: Lie
  /** How the ball sits, where the player has seen it; a lie that knows no such thing is taken as it is. */
  readonly sit?: Sit | undefined
  /** Slopes under the feet; level when absent. They hold for this stroke only. */
  readonly stance?: Stance | undefined
}

/** One club on one line, and what it costs to play it once and the best plan after it. */
export interface Candidate {
  readonly shot: Shot
  readonly heading: number
  readonly table: ShotTable
  readonly ends: StrokeEnds
  readonly strokes: number
}

/** The candidates of one stroke and the value of the best. */
export interface StrokeEvaluation {
  readonly value: number
  readonly candidates: readonly Candidate[]
}

export interface StrokeQuestion {
  readonly situation: Situation
  /** Each shot with the headings to try, radians. */
  readonly tries: readonly { readonly shot: Shot; readonly headings: readonly number[] }[]
  readonly quadrature: { readonly good: number; readonly mishit: number }
}

/** One club on one line, and what may become of its balls. */
export type TriedStroke = Omit<Candidate, 'strokes'>

/** Costs of every shot and line from one exact place, given the values of all places. */
export function evaluateStroke(
  model: HoleModel,
  values: Float64Array,
  question: StrokeQuestion,
): StrokeEvaluation {
  return weighTried(model, values, question.situation, triedStrokes(model, question))
}

/** Lays out every shot and line from one exact place. */
export function triedStrokes(
  model: HoleModel,
  { situation, tries, quadrature }: StrokeQuestion,
): readonly TriedStroke[] {
  const strikes = strikesOf(quadrature)
  return tries
    .filter(({ shot }) => isAllowed(shot, situation.lie, model.player, situation.sit))
    .filter(
      (one, _, allowed) =>
        isUsedOn(situation, one.shot, model) || !allowed.some(({ shot }) => isUsedOn(situation, shot, model)),
    )
    .flatMap(({ shot, headings }) =>
      headings.map((heading) => {
        const table = tableFor(model, situation, shot, heading, strikes)
        return { shot, heading, table, ends: strokeEnds(model, table, situation.x, situation.y) }
      }),
    )
}

/**
 * What strokes laid out from one place cost, given the values of all places. A stroke that goes back is replayed by the
 * best plan from the same place, so the value of the place stands on both sides: it is found first, and is infinite when
 * every stroke surely goes back.
 */
export function weighTried(
  model: HoleModel,
  values: Float64Array,
  situation: Situation,
  tried: readonly TriedStroke[],
): StrokeEvaluation {
  let value = values[placeAt(model.places, situation.x, situation.y)] as number
  model.costs.valuesMoved()
  // Which reliefs are dearer than going back depends on the value, so the shares are taken again until it rests.
  for (let pass = 0; pass < 3; pass++) {
    const shares = tried.map(({ ends }) => strokeShares(model.costs, ends, values, value))
    const next = Math.min(...shares.map(alone))
    const isAtRest = Math.abs(next - value) < 1e-9
    value = next
    if (!isAtRest && pass < 2) continue
    return {
      value,
      candidates: tried.map((one, index) => ({
        ...one,
        strokes: strokesOf(shares[index] as StrokeShares, value),
      })),
    }
  }
  return { value, candidates: [] }
}

/** Whether a club is used on the slope under the feet; where none is, all are. */
function isUsedOn({ stance }: Situation, shot: Shot, { player }: HoleModel): boolean {
  return !stance || stanceEffect(stance, shot.loftDegrees, player.hand).allowed
}

type StrokeShares = ReturnType<typeof strokeShares>

/** What a stroke costs that is played again as often as it goes back. */
function alone({ sum, back }: StrokeShares): number {
  return back < SURELY_BACK ? (1 + sum + back) / (1 - back) : Number.POSITIVE_INFINITY
}

/** What a stroke costs that is played once, and the best one after it when it goes back. */
function strokesOf({ sum, back }: StrokeShares, value: number): number {
  return back > 0 ? 1 + sum + back * (1 + value) : 1 + sum
}

/** The pattern of a shot from a situation along a heading. */
export function tableFor(
  model: HoleModel,
  situation: Situation,
  shot: Shot,
  heading: number,
  strikes: Strikes,
): ShotTable {
  return shotTable({
    shot,
    lie: situation.lie,
    sit: situation.sit,
    stance: situation.stance,
    heading,
    player: model.player,
    flights: model.flights,
    today: model.today,
    strikes,
    rest: model.rest,
    places: model.places,
    growth: model.canopy,
  })
}

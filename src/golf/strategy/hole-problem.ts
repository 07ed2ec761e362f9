import type { Lie } from '#golf/player/player.ts'
import { type KernelFor, weighKernel } from '#numbers/kernels/weigh-kernel.ts'
import type { ShortestPathProblem } from '#numbers/solver/shortest-path-problem.ts'
import { actionCount, actionHeading, actionLie, actionShot } from './actions.ts'
import type { HoleModel } from './hole-model.ts'
import { keptHere } from './kept-actions.ts'
import { lineGroups, reachOf } from './line-groups.ts'
import { headingOf } from './lines-of-play.ts'
import { KEPT_ACTIONS, KEPT_WITHIN_STROKES, SCREENED_STROKES, SOLVE_QUADRATURE } from './settings.ts'
import { shortGameEndsInto } from './short-game-ends.ts'
import { type ShotTable, shotTable } from './shot-table.ts'
import { type Shot, shotsOf } from './shots.ts'
import { type StrikePattern, strikePattern } from './strike-pattern.ts'
import { strikesOf } from './strikes.ts'
import { costOfRow, type StrokeRow, strokeRows } from './stroke-rows.ts'
import { type WeighedHole, weighedHole } from './weigh/weighed-hole.ts'

/** The shortest path of one hole: states are the cells from which a full stroke is played. */
export interface HoleProblem extends ShortestPathProblem {
  readonly shots: readonly Shot[]
  /** The best action of a state after a solve, or `null` at ends and where no ball can lie. */
  bestShot(state: number): ShotTable | null
  /** The numbers of the kept actions, best first, to carry over into a neighbouring problem with the same shots. */
  readonly kept: Int32Array
  /** Gathers at once what settling tries from every state. It takes less memory than state by state. */
  gather(): void
  /** Strokes that settling tries from a state, gathered. */
  rowsFrom(state: number): readonly StrokeRow[]
  /** From now on only these states are settled, nearest to the hole first. */
  settleOnly(some: Int32Array): void
  /** (State, action) pairs that an improvement weighs, and bytes of their memory; 0 before the first. */
  readonly size: () => { readonly pairs: number; readonly bytes: number }
}

export interface HoleProblemOptions {
  readonly quadrature?: { readonly good: number; readonly mishit: number }
  /** Kept actions of a neighbouring problem with the same places and the same order of shots. Not written to. */
  readonly kept?: Int32Array
  /** How many of the kept actions are tried; all when absent. */
  readonly tried?: number
  /** The shots, where they are not simply the player's. */
  readonly shots?: readonly Shot[]
  /** What weighs the actions, where it is not the fastest that the machine can run: for tests and measures. */
  readonly kernel?: KernelFor
  /** Lines to each side of the pin, degrees. */
  readonly aboutPinDegrees?: number
  /** What goes back is a partner's to play again, at the present value of the state: {@link costOfRow}. For improving only. */
  readonly isByTurns?: boolean
}

/** More than anything on a hole costs, strokes. */
const ANY_STROKES = 1e6

/** Sets out a hole as a shortest path: cost 1 a stroke and 1 a penalty; it ends with the value of the short game. */
export function holeProblem(model: HoleModel, options: HoleProblemOptions = {}): HoleProblem {
  const { places, states, costs, player } = model
  const shots = options.shots ?? shotsOf(player)
  const strikes = strikesOf(options.quadrature ?? SOLVE_QUADRATURE)
  const tables = new Array<ShotTable | undefined>(actionCount(shots.length))
  const patterns = new Map<Lie, (StrikePattern | undefined)[]>()
  const kept = options.kept
    ? keptHere(model, options.kept)
    : new Int32Array(places.coarseCount * KEPT_ACTIONS).fill(-1)
  const found = new Int32Array(places.coarseCount * KEPT_ACTIONS).fill(-1)
  const keptCosts = new Float32Array(places.coarseCount * KEPT_ACTIONS)
  const bestAction = new Int32Array(places.coarseCount).fill(-1)
  const tried = options.tried ?? KEPT_ACTIONS
  const rowOf = strokeRows(model)
  /** By state: the actions that settling tries, gathered. */
  const rows = new Array<readonly KeptRow[] | undefined>(places.coarseCount)
  let weighed: WeighedHole | null = null
  let settled = states.order

  function makeTable(shot: number, lie: Lie, line: number): ShotTable {
    const of = {
      shot: shots[shot] as Shot,
      lie,
      player,
      today: model.today,
      strikes,
    }
    const ofLie = patterns.get(lie) ?? []
    patterns.set(lie, ofLie)
    const pattern = ofLie[shot] ?? strikePattern(of)
    ofLie[shot] = pattern
    return shotTable({
      ...of,
      pattern,
      heading: headingOf(line),
      flights: model.flights,
      rest: model.rest,
      places,
      growth: model.slants,
    })
  }

  function tableOf(action: number): ShotTable {
    const known = tables[action]
    if (known) return known
    const made = makeTable(actionShot(action), actionLie(action), actionHeading(action))
    tables[action] = made
    return made
  }

  function weighedActions(): WeighedHole {
    weighed ??= weighedHole(model, {
      shots,
      groups: lineGroups(model, options.aboutPinDegrees),
      reach: reachOf(model, shots),
      tableOf: makeTable,
      strikeCount: strikes.count,
      kernelFor: options.kernel ?? weighKernel,
      // The value of a state is the partner's, which says nothing of what is dear for this player.
      keptWithin: options.isByTurns ? ANY_STROKES : KEPT_WITHIN_STROKES,
    })
    return weighed
  }

  /** The least cost over the cheapest actions of a state in double precision; those further behind cannot be the best. */
  function decide(state: number, values: Float64Array): number {
    model.lookUp()
    const first = state * KEPT_ACTIONS
    const most = (keptCosts[first] as number) + (options.isByTurns ? ANY_STROKES : SCREENED_STROKES)
    let best = Number.POSITIVE_INFINITY
    let chosen: KeptRow | null = null
    for (let slot = first; slot < first + KEPT_ACTIONS && (keptCosts[slot] as number) <= most; slot++) {
      const action = kept[slot] as number
      if (action < 0) break
      const known = rows[state]?.find((one) => one.action === action)
      const one = known ?? { action, row: rowOf(tableOf(action), state) }
      const cost = costOfRow(costs, one.row, values, values[state] as number, options.isByTurns)
      if (cost >= best) continue
      best = cost
      chosen = one
    }
    bestAction[state] = chosen === null ? -1 : chosen.action
    rows[state] = chosen === null ? [] : [chosen]
    return best
  }

  /** Puts the cheapest actions found before those kept so far: fewer are weighed in later sweeps than are kept. */
  function keepFound(): void {
    for (const state of states.order) {
      const first = state * KEPT_ACTIONS
      const next = new Set<number>(found.subarray(first, first + KEPT_ACTIONS))
      next.delete(-1)
      for (let slot = first; slot < first + KEPT_ACTIONS && next.size < KEPT_ACTIONS; slot++)
        if ((kept[slot] as number) >= 0) next.add(kept[slot] as number)
      let slot = first
      for (const action of next) kept[slot++] = action
    }
  }

  /** What settling tries from a state when nothing was improved: the actions kept by a neighbouring problem. */
  function keptRows(state: number): readonly KeptRow[] {
    const known = rows[state]
    if (known) return known
    const made = keptFrom(state).map((action) => ({ action, row: rowOf(tableOf(action), state) }))
    rows[state] = made
    return made
  }

  function keptFrom(state: number): number[] {
    const actions = new Set(kept.subarray(state * KEPT_ACTIONS, state * KEPT_ACTIONS + tried))
    actions.delete(-1)
    return [...actions]
  }

  /** Gathers what settling tries from every state, action by action: no table of a shot is held longer than its own rows take. */
  function gatherKept(): void {
    const statesOf = new Map<number, { readonly state: number; readonly at: number }[]>()
    for (const state of states.order) {
      const actions = keptFrom(state)
      rows[state] = new Array(actions.length)
      for (const [at, action] of actions.entries()) {
        const known = statesOf.get(action) ?? []
        statesOf.set(action, known)
        known.push({ state, at })
      }
    }
    for (const [action, from] of statesOf) {
      const table = makeTable(actionShot(action), actionLie(action), actionHeading(action))
      for (const { state, at } of from) (rows[state] as KeptRow[])[at] = { action, row: rowOf(table, state) }
    }
  }

  return {
    shots,
    kept,
    gather: gatherKept,
    rowsFrom: (state) => keptRows(state).map(({ row }) => row),
    settleOnly(some) {
      settled = some
    },
    size: () => ({ pairs: weighed?.pairCount ?? 0, bytes: weighed?.bytes ?? 0 }),
    startValues() {
      const values = new Float64Array(places.count)
      // Near enough for a first sweep: two strokes and a half at the green's edge and one more each 170 m.
      for (let place = 0; place < places.count; place++)
        values[place] = 2.5 + (places.toPin[place] as number) / 170
      shortGameEndsInto(values, places, player, model.nearGreen)
      return values
    },
    improve(values) {
      costs.valuesMoved()
      const all = weighedActions()
      all.weighInto(values, keptCosts, found)
      keepFound()
      const next = Float64Array.from(states.order, (state) => decide(state, values))
      let largest = 0
      for (const [index, state] of states.order.entries()) {
        const value = next[index] as number
        largest = Math.max(largest, changeOf(value, values[state] as number))
        values[state] = value
      }
      return largest
    },
    settle(values) {
      costs.valuesMoved()
      let largest = 0
      for (const state of settled) {
        const here = values[state] as number
        let best = Number.POSITIVE_INFINITY
        for (const { action, row } of keptRows(state)) {
          const cost = costOfRow(costs, row, values, here)
          if (cost >= best) continue
          best = cost
          bestAction[state] = action
        }
        largest = Math.max(largest, changeOf(best, here))
        values[state] = best
      }
      return largest
    },
    bestShot(state) {
      const action = bestAction[state] ?? -1
      return action >= 0 ? tableOf(action) : null
    },
  }
}

interface KeptRow {
  readonly action: number
  readonly row: StrokeRow
}

/** How far a value moved; one that stays infinite, because no stroke from there ever ends the hole, did not move. */
function changeOf(value: number, was: number): number {
  return value === was ? 0 : Math.abs(value - was)
}

import type { ShortestPathProblem } from '#numbers/solver/shortest-path-problem.ts'
import { actionCount, actionHeading, actionLie, actionOf, actionShot } from './actions.ts'
import { centreToday, type HoleModel } from './hole-model.ts'
import { keptHere } from './kept-actions.ts'
import { lineGroups, reachOf } from './line-groups.ts'
import { headingOf } from './lines-of-play.ts'
import { KEPT_ACTIONS, PARTIAL_SWING_METRES, SOLVE_QUADRATURE } from './settings.ts'
import { shortGameEndsInto } from './short-game-ends.ts'
import { type ShotTable, shotTable } from './shot-table.ts'
import { isAllowed, isLow, isPartial, type Shot, shotsOf } from './shots.ts'
import { isOnHole } from './states.ts'
import { strikesOf } from './strikes.ts'
import { costFromCell } from './stroke-cost.ts'

/** The shortest path of one hole: states are the cells from which a full stroke is played. */
export interface HoleProblem extends ShortestPathProblem {
  readonly shots: readonly Shot[]
  /** The best action of a state after a solve, or `null` at ends and where no ball can lie. */
  bestShot(state: number): ShotTable | null
  /** The numbers of the kept actions, best first, to carry over into a neighbouring problem with the same shots. */
  readonly kept: Int32Array
}

export interface HoleProblemOptions {
  readonly quadrature?: { readonly good: number; readonly mishit: number }
  /** Kept actions of a neighbouring problem with the same places and the same order of shots. Not written to. */
  readonly kept?: Int32Array
  /** How many of the kept actions are tried; all when absent. */
  readonly tried?: number
  /** The shots, where they are not simply the player's. */
  readonly shots?: readonly Shot[]
}

/** Sets out a hole as a shortest path: cost 1 a stroke and 1 a penalty; it ends with the value of the short game. */
export function holeProblem(model: HoleModel, options: HoleProblemOptions = {}): HoleProblem {
  const { places, states, costs, player } = model
  const shots = options.shots ?? shotsOf(player)
  const strikes = strikesOf(options.quadrature ?? SOLVE_QUADRATURE)
  const tables = new Array<ShotTable | undefined>(actionCount(shots.length))
  const kept = options.kept
    ? keptHere(model, options.kept)
    : new Int32Array(places.coarseCount * KEPT_ACTIONS).fill(-1)
  const keptCosts = new Float64Array(places.coarseCount * KEPT_ACTIONS)
  const bestAction = new Int32Array(places.coarseCount).fill(-1)
  const groups = options.kept ? [] : lineGroups(model)
  const tried = options.tried ?? KEPT_ACTIONS
  const reach = reachOf(model, shots)
  /** Values from which the last improvement worked out its costs. */
  let improvedFrom: Float64Array | null = null

  function tableOf(action: number): ShotTable {
    const known = tables[action]
    if (known) return known
    const made = shotTable({
      shot: shots[actionShot(action)] as Shot,
      lie: actionLie(action),
      heading: headingOf(actionHeading(action)),
      player,
      flights: model.flights,
      today: model.today,
      strikes,
      rest: model.rest,
      canopy: model.canopy,
      cellMetres: places.coarse.resolution,
    })
    tables[action] = made
    return made
  }

  /** Puts an action among the few best of a state, in order of cost. */
  function keep(state: number, action: number, cost: number): void {
    const first = state * KEPT_ACTIONS
    let slot = first + KEPT_ACTIONS - 1
    if (cost >= (keptCosts[slot] as number)) return
    for (; slot > first && (keptCosts[slot - 1] as number) > cost; slot--) {
      keptCosts[slot] = keptCosts[slot - 1] as number
      kept[slot] = kept[slot - 1] as number
    }
    keptCosts[slot] = cost
    kept[slot] = action
  }

  function forget(state: number): void {
    const first = state * KEPT_ACTIONS
    kept.fill(-1, first, first + KEPT_ACTIONS)
    keptCosts.fill(Number.POSITIVE_INFINITY, first, first + KEPT_ACTIONS)
  }

  /** The least cost over the kept actions of a state, and the action that has it. */
  function costOfKept(state: number, values: Float64Array): number {
    let best = Number.POSITIVE_INFINITY
    for (let slot = state * KEPT_ACTIONS; slot < state * KEPT_ACTIONS + tried; slot++) {
      const action = kept[slot] as number
      if (action < 0) break
      const cost = costFromCell(model, tableOf(action), state, values, values[state] as number)
      if (cost >= best) continue
      best = cost
      bestAction[state] = action
    }
    return best
  }

  /**
   * 1 where no action outside the kept ones can be the best: each of those cost at least as much as the last kept one
   * did, and no cost has fallen since by more than the value that fell most.
   */
  function surelyKept(values: Float64Array): Uint8Array {
    const isSure = new Uint8Array(places.coarseCount)
    if (!improvedFrom) return isSure
    let fall = 0
    for (let place = 0; place < values.length; place++) {
      const fell = (improvedFrom[place] as number) - (values[place] as number)
      // Not `Math.max`: a place from which no stroke ever ends stays infinite, and its fall is not a number.
      if (fell > fall) fall = fell
    }
    for (const state of states.order) {
      const bound = keptCosts[(state + 1) * KEPT_ACTIONS - 1] as number
      if (bound === Number.POSITIVE_INFINITY || bound - fall <= costOfKept(state, values)) continue
      isSure[state] = 1
      // The bound was worked out from older values than the next one will be compared with.
      keptCosts[(state + 1) * KEPT_ACTIONS - 1] = bound - fall
    }
    return isSure
  }

  return {
    shots,
    kept,
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
      const isSure = surelyKept(values)
      for (const state of states.order) if (isSure[state] === 0) forget(state)
      // Shot by shot and line by line over neighbouring cells, not cell by cell over actions: what they read lies side
      // by side, and neighbouring lines read the same rest tables.
      for (const [index, shot] of shots.entries())
        for (const group of groups) {
          if (!isAllowed(shot, group.lie, player)) continue
          const action = actionOf(index, group.lie, group.line)
          const table = tableOf(action)
          // What the day leaves of it: into the wind a longer club is played on the same hole.
          const { heading, total } = centreToday(model, shot, table.heading)
          const partialReach = shot.stock.totalMetres + PARTIAL_SWING_METRES
          for (const state of group.states) {
            if (isSure[state] === 1 || total > (reach[state] as number)) continue
            if (isLow(shot) && states.isHampered[state] === 0) continue
            if (isPartial(shot) && (places.toPin[state] as number) > partialReach) continue
            const x = places.x[state] as number
            const y = places.y[state] as number
            if (!isOnHole(model, x, y, heading, total)) continue
            const here = values[state] as number
            keep(state, action, costFromCell(model, table, state, values, here))
          }
        }
      let largest = 0
      const next = Float64Array.from(states.order, (state) =>
        isSure[state] === 1 ? costOfKept(state, values) : (keptCosts[state * KEPT_ACTIONS] as number),
      )
      improvedFrom = Float64Array.from(values)
      for (const [index, state] of states.order.entries()) {
        const value = next[index] as number
        largest = Math.max(largest, changeOf(value, values[state] as number))
        values[state] = value
        if (isSure[state] === 0) bestAction[state] = kept[state * KEPT_ACTIONS] as number
      }
      return largest
    },
    settle(values) {
      costs.valuesMoved()
      let largest = 0
      for (const state of states.order) {
        const here = values[state] as number
        const best = costOfKept(state, values)
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

/** How far a value moved; one that stays infinite, because no stroke from there ever ends the hole, did not move. */
function changeOf(value: number, was: number): number {
  return value === was ? 0 : Math.abs(value - was)
}

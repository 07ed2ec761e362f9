import { flightChange } from '#golf/ball/conditions.ts'
import { LIES, type Lie } from '#golf/player/player.ts'
import type { ShortestPathProblem } from '#numbers/solver/shortest-path-problem.ts'
import type { HoleModel } from './hole-model.ts'
import { lieOfGround } from './lie-of-ground.ts'
import { HEADINGS, headingOf, linesOfPlay } from './lines-of-play.ts'
import { groundOf } from './places.ts'
import { KEPT_ACTIONS, OVERCLUB_METRES, SOLVE_QUADRATURE } from './settings.ts'
import { shortGameEndsInto } from './short-game-ends.ts'
import { type ShotTable, shotTable } from './shot-table.ts'
import { isAllowed, type Shot, shotsOf } from './shots.ts'
import { type Strikes, strikesOf } from './strikes.ts'
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
  /** Kept actions of a neighbouring problem with the same places and the same shots. */
  readonly kept?: Int32Array
}

/** States in a hole: what is fixed of each while solving. */
interface Choices {
  readonly lines: readonly number[]
  readonly shots: readonly number[]
  readonly lie: Lie
}

/** Sets out a hole as a shortest path: cost 1 a stroke and 1 a penalty; it ends with the value of the short game. */
export function holeProblem(model: HoleModel, options: HoleProblemOptions = {}): HoleProblem {
  const { places, states, costs, player } = model
  const shots = shotsOf(player)
  const strikes: Strikes = strikesOf(options.quadrature ?? SOLVE_QUADRATURE)
  const allowed = new Map<Lie, number[]>(
    LIES.map((lie) => [lie, shots.flatMap((shot, index) => (isAllowed(shot, lie, player) ? [index] : []))]),
  )
  const tables = new Array<ShotTable | undefined>(shots.length * LIES.length * HEADINGS)
  const choices = new Array<Choices | undefined>(places.coarseCount)
  const kept = options.kept
    ? Int32Array.from(options.kept)
    : new Int32Array(places.coarseCount * KEPT_ACTIONS).fill(-1)
  const bestAction = new Int32Array(places.coarseCount).fill(-1)
  const keptCosts = new Float64Array(KEPT_ACTIONS)

  function tableOf(action: number): ShotTable {
    const known = tables[action]
    if (known) return known
    const shot = Math.floor(action / (LIES.length * HEADINGS))
    const lie = Math.floor(action / HEADINGS) % LIES.length
    const made = shotTable({
      shot: shots[shot] as Shot,
      lie: LIES[lie] as Lie,
      heading: headingOf(action % HEADINGS),
      player,
      conditions: model.conditions,
      firmness: model.firmness,
      strikes,
      rest: model.rest,
      cellMetres: places.coarse.resolution,
    })
    tables[action] = made
    return made
  }

  function choicesOf(state: number): Choices {
    const known = choices[state]
    if (known) return known
    const lie = lieOfGround(groundOf(places, state)) as Lie
    const pin = states.pinDirection[state] as number
    const reach =
      ((places.toPin[state] as number) + OVERCLUB_METRES) / flightChange(model.conditions, pin).carryShare
    const usable = allowed.get(lie) as number[]
    const near = usable.filter((index) => (shots[index] as Shot).stock.totalMetres <= reach)
    const made: Choices = {
      lie,
      lines: linesOfPlay(pin, states.bendDirection[state] as number, lie === 'trees' || lie === 'scrub'),
      shots: near.length > 0 ? near : usable,
    }
    choices[state] = made
    return made
  }

  return {
    valueCount: places.count,
    order: states.order,
    shots,
    kept,
    startValues() {
      const values = new Float64Array(places.count)
      // Near enough for a first sweep: two strokes from the green's edge and one more each 170 m.
      for (let place = 0; place < places.count; place++)
        values[place] = 2.5 + (places.toPin[place] as number) / 170
      shortGameEndsInto(values, places, player)
      return values
    },
    beforeSweep() {
      costs.valuesMoved()
    },
    bestOfAll(state, values) {
      const { lie, lines, shots: usable } = choicesOf(state)
      const here = values[state] as number
      const lieIndex = LIES.indexOf(lie)
      const first = state * KEPT_ACTIONS
      let count = 0
      for (const shot of usable)
        for (const line of lines) {
          const action = (shot * LIES.length + lieIndex) * HEADINGS + line
          const cost = costFromCell(places, costs, tableOf(action), state, values, here)
          if (count === KEPT_ACTIONS && cost >= (keptCosts[count - 1] as number)) continue
          let slot = count < KEPT_ACTIONS ? count++ : count - 1
          for (; slot > 0 && (keptCosts[slot - 1] as number) > cost; slot--) {
            keptCosts[slot] = keptCosts[slot - 1] as number
            kept[first + slot] = kept[first + slot - 1] as number
          }
          keptCosts[slot] = cost
          kept[first + slot] = action
        }
      for (let slot = count; slot < KEPT_ACTIONS; slot++) kept[first + slot] = -1
      bestAction[state] = kept[first] as number
      return keptCosts[0] as number
    },
    bestKept(state, values) {
      const here = values[state] as number
      let best = Number.POSITIVE_INFINITY
      for (let slot = state * KEPT_ACTIONS; slot < (state + 1) * KEPT_ACTIONS; slot++) {
        const action = kept[slot] as number
        if (action < 0) break
        const cost = costFromCell(places, costs, tableOf(action), state, values, here)
        if (cost >= best) continue
        best = cost
        bestAction[state] = action
      }
      return best
    },
    bestShot(state) {
      const action = bestAction[state] as number
      return action >= 0 ? tableOf(action) : null
    },
  }
}

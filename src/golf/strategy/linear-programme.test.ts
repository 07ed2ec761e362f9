import loadHighs from 'highs'
import { describe, expect, it } from 'vitest'
import { lieEffect } from '#golf/player/lie-effects.ts'
import type { Lie } from '#golf/player/player.ts'
import { cellIndex } from '#numbers/raster/raster.ts'
import { solveShortestPath } from '#numbers/solver/solve-shortest-path.ts'
import { type HoleModel, holeGround, holeModel } from './hole-model.ts'
import { holeProblem } from './hole-problem.ts'
import { CALM_DAY } from './invented-hole.fixture.ts'
import { lieOfGround } from './lie-of-ground.ts'
import { headingOf, linesOfPlay } from './lines-of-play.ts'
import { groundOf } from './places.ts'
import { LINE_STEP_DEGREES, MOST_OFF_LINE_METRES, OVERCLUB_METRES, PARTIAL_SWING_METRES } from './settings.ts'
import { type ShotTable, shotTable } from './shot-table.ts'
import { shotsOf } from './shots.ts'
import { smallHole, threeClubs } from './small-hole.fixture.ts'
import { fatesOf, kindsMet } from './spelled-out-stroke.fixture.ts'
import { type Strikes, strikesOf } from './strikes.ts'

// The values of a Markov decision process are the largest that no action undercuts: maximise the sum of V subject to
// V(s) ≤ cost of every action (Puterman, Markov Decision Processes, 1994, sections 6.9 and 7.2.8). The programme is
// written out here action by action and solved by the HiGHS simplex (Huangfu & Hall, Math. Prog. Comp. 10, 2018).

const QUADRATURE = { good: 12, mishit: 6 }

describe('the values of a hole', () => {
  it('are those of a linear programme over every action, solved by an independent library, within 1e-6', async () => {
    const model = holeModel(holeGround(smallHole(101.3, 24.9), 8), threeClubs(), CALM_DAY)
    const problem = holeProblem(model, { quadrature: QUADRATURE })
    const { values, converged } = solveShortestPath(problem, { tolerance: 1e-10 })
    expect(converged).toBe(true)
    const states = [...model.states.order]
    expect(states.length).toBeGreaterThan(20)
    expect(states.length).toBeLessThanOrEqual(120)

    expect(kindsMet(model, values, (state) => problem.bestShot(state))).toEqual(
      new Set(['lies', 'back', 'relief taken', 'relief declined']),
    )
    const { text, actions, choices } = programmeOf(model, values)
    expect(actions).toBeGreaterThan(20 * states.length)
    expect(choices).toBeGreaterThan(10)
    const highs = await loadHighs()
    const solution = highs.solve(text, {
      primal_feasibility_tolerance: 1e-9,
      dual_feasibility_tolerance: 1e-9,
    })
    expect(solution.Status).toBe('Optimal')
    let largest = 0
    for (const state of states)
      largest = Math.max(
        largest,
        Math.abs(primalOf(solution.Columns, `v${state}`) - (values[state] as number)),
      )
    expect(largest).toBeLessThan(1e-6)
  })
})

/** The programme in LP text format. Only short-game values are taken from `ends`. */
function programmeOf(
  model: HoleModel,
  ends: Float64Array,
): { readonly text: string; readonly actions: number; readonly choices: number } {
  const isState = new Set(model.states.order)
  const strikes = strikesOf(QUADRATURE)
  const tables = new Map<string, ShotTable>()
  const rows: string[] = []
  const reliefs = new Set<string>()
  const follow = (place: number, chance: number, terms: Terms): void => {
    if (isState.has(place)) terms.add(`v${place}`, chance)
    else terms.constant += chance * (ends[place] as number)
  }
  /** The relief that a stroke from `state` takes after an outcome: as dear as the cheapest way out. */
  const reliefVariable = (
    state: number,
    outcome: number,
    drops: readonly { readonly penalty: number; readonly place: number }[],
  ): string => {
    const name = `r${outcome}_${state}`
    if (reliefs.has(name)) return name
    reliefs.add(name)
    rows.push(
      row(
        [
          [name, 1],
          [`v${state}`, -1],
        ],
        1,
      ),
    )
    for (const { penalty, place } of drops) {
      const terms = new Terms()
      terms.constant = penalty
      follow(place, 1, terms)
      rows.push(terms.atMost(name))
    }
    return name
  }
  let actions = 0
  for (const state of model.states.order)
    for (const table of actionsOf(model, state, strikes, tables)) {
      actions += 1
      const terms = new Terms()
      terms.constant = 1
      for (const fate of fatesOf(model, table, state)) {
        if (fate.kind === 'lies') follow(fate.place, fate.chance, terms)
        else if (fate.kind === 'relief')
          terms.add(reliefVariable(state, fate.outcome, fate.drops), fate.chance)
        else {
          terms.constant += fate.chance
          follow(state, fate.chance, terms)
        }
      }
      rows.push(terms.atMost(`v${state}`))
    }
  const objective = [...model.states.order].map((state) => `v${state}`).join(' + ')
  return {
    text: `Maximize\n obj: ${objective}\nSubject To\n${rows.join('\n')}\nEnd\n`,
    actions,
    choices: reliefs.size,
  }
}

/** A sum of variables and a constant. */
class Terms {
  constant = 0
  readonly #factors = new Map<string, number>()

  add(variable: string, factor: number): void {
    this.#factors.set(variable, (this.#factors.get(variable) ?? 0) + factor)
  }

  /** The row `variable ≤ this sum`. */
  atMost(variable: string): string {
    const factors = new Map([...this.#factors].map(([name, factor]) => [name, -factor]))
    factors.set(variable, (factors.get(variable) ?? 0) + 1)
    return row([...factors], this.constant)
  }
}

function row(factors: readonly (readonly [string, number])[], most: number): string {
  const sum = factors.map(([name, factor]) => `${factor < 0 ? '-' : '+'} ${Math.abs(factor)} ${name}`)
  return ` ${sum.join(' ')} <= ${most}`
}

/** Every shot and line that may be played from a state, found anew from the rules in the settings. */
function actionsOf(
  model: HoleModel,
  state: number,
  strikes: Strikes,
  tables: Map<string, ShotTable>,
): ShotTable[] {
  const { player, places, states } = model
  const lie = lieOfGround(groundOf(places, state)) as Lie
  const pin = Math.atan2(
    model.hole.pin[0] - (places.x[state] as number),
    model.hole.pin[1] - (places.y[state] as number),
  )
  const away = places.toPin[state] as number
  const isHampered = states.isHampered[state] === 1
  const allowed = shotsOf(player).filter(
    (shot) => lieEffect(lie, shot.stock.name, player).allowed && (isHampered || !LOW.has(shot.shape)),
  )
  const shortest = Math.min(
    ...allowed.filter((shot) => !LOW.has(shot.shape)).map((shot) => shot.stock.totalMetres),
  )
  const reach = Math.max(away + OVERCLUB_METRES, 1.5 * shortest)
  return allowed
    .filter((shot) => shot.stock.totalMetres <= reach)
    .filter((shot) => !PARTIAL.has(shot.shape) || away <= shot.stock.totalMetres + PARTIAL_SWING_METRES)
    .flatMap((shot) =>
      linesOfPlay(pin, states.bendDirection[state] as number, isHampered).flatMap((line) => {
        if (!isPlayable(model, state, headingOf(line), shot.stock.totalMetres)) return []
        const key = `${shot.club} ${shot.shape} ${lie} ${line}`
        const table =
          tables.get(key) ??
          shotTable({
            shot,
            lie,
            heading: headingOf(line),
            player,
            flights: model.flights,
            today: model.today,
            strikes,
            rest: model.rest,
            growth: model.slants,
            places,
          })
        tables.set(key, table)
        return table
      }),
    )
}

const LOW: ReadonlySet<string> = new Set(['punch', 'chip-out'])
const PARTIAL: ReadonlySet<string> = new Set(['three-quarter', 'half'])

/** Whether a line keeps to this straight hole, measured at the middles of cells: near its line, no further off than the ball, or at the pin and past it. */
function isPlayable(model: HoleModel, state: number, heading: number, total: number): boolean {
  const { pin } = model.hole
  const { x, y, coarse, toPin } = model.places
  const off = (cell: number): number => {
    const along = Math.min(Math.max(y[cell] as number, 0), pin[1])
    return Math.hypot(x[cell] as number, (y[cell] as number) - along)
  }
  const inside = (at: number, origin: number, count: number): number =>
    Math.min(Math.max(at, origin), origin + (count - 1) * coarse.resolution)
  const fromX = x[state] as number
  const fromY = y[state] as number
  const finish = cellIndex(
    coarse,
    inside(fromX + total * Math.sin(heading), coarse.originX, coarse.columns),
    inside(fromY + total * Math.cos(heading), coarse.originY, coarse.rows),
  )
  if (off(finish) <= Math.max(MOST_OFF_LINE_METRES, off(state))) return true
  const pinHeading = Math.atan2(pin[0] - fromX, pin[1] - fromY)
  const stepRadians = (LINE_STEP_DEGREES * Math.PI) / 180
  return total >= (toPin[state] as number) && Math.abs(heading - pinHeading) <= stepRadians / 2
}

function primalOf(columns: Readonly<Record<string, object>>, name: string): number {
  const column = columns[name]
  if (!column || !('Primal' in column)) throw new Error(`the programme has no ${name}`)
  return Number(column.Primal)
}

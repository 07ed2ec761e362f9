import loadHighs from 'highs'
import { beforeAll, describe, expect, it } from 'vitest'
import { solveShortestPath } from '#numbers/solver/solve-shortest-path.ts'
import { type actionLie, actionOf } from '../actions.ts'
import { type HoleModel, holeGround, holeModel } from '../hole-model.ts'
import { holeProblem } from '../hole-problem.ts'
import { CALM_DAY } from '../invented-hole.fixture.ts'
import { lieOfGround } from '../lie-of-ground.ts'
import { linesOfPlay } from '../lines-of-play.ts'
import { groundOf } from '../places.ts'
import { type ScoreChances, scoreChances } from '../score-distribution.ts'
import { MOST_STROKES } from '../settings.ts'
import type { ShotTable } from '../shot-table.ts'
import { isAllowed, isLow, type Shot, shotsOf } from '../shots.ts'
import { smallHole, threeClubs } from '../small-hole.fixture.ts'
import { solveHole } from '../solve-hole.ts'
import { fatesOf } from '../spelled-out-stroke.fixture.ts'
import { type CellStrokes, cellStrokes } from './cell-strokes.ts'
import { formatStrokes } from './format-strokes.ts'
import { type ImproveState, type Levels, solveLevels, type WeighedStroke } from './levels.ts'

// Played for at most so many strokes, a hole whose state also counts strokes is a Markov decision process that ends: its
// values are the least that no action exceeds (Puterman, Markov Decision Processes, 1994, 6.9). The programme is written
// out here level by level from strokes spelled out, and solved by the HiGHS simplex (Huangfu & Hall 2018).

const QUADRATURE = { good: 12, mishit: 6 }
const MOST = 4
/** Lines tried, in steps of 2°: few enough for a programme, wide enough to avoid the trees and the pond. */
const LINES = [-6, -2, 0, 3] as const

describe('solveLevels', () => {
  let model: HoleModel
  let chances: ScoreChances
  let values: Float64Array
  let shots: readonly Shot[]
  let improve: ImproveState
  beforeAll(() => {
    model = holeModel(holeGround(smallHole(101.3, 24.9), 8), threeClubs(), CALM_DAY)
    const solved = solveHole(model, QUADRATURE)
    values = solved.values
    chances = scoreChances(model, solved.problem, values)
    shots = shotsOf(model.player)
    const strokes = cellStrokes(model, shots, QUADRATURE)
    improve = (state, worthOf) =>
      actionsFrom(model, shots, state)
        .map((action) => weighed(strokes, state, action, worthOf))
        .reduce((best, one) => (one.worth > best.worth ? one : best))
  })

  it('is worth what a linear programme over every stroke and every relief says, within 1e-6', async () => {
    const worths = [1, 1, 1, 1, 1, 0]
    const levels = solveLevels(model, chances, { worths, first: 0 }, () => improve)
    const { text, rows } = programmeOf(model, shots, chances)
    expect(rows).toBeGreaterThan(1000)
    const highs = await loadHighs()
    const solution = highs.solve(text, {
      primal_feasibility_tolerance: 1e-9,
      dual_feasibility_tolerance: 1e-9,
    })
    expect(solution.Status).toBe('Optimal')
    let largest = 0
    let between = 0
    for (let used = 0; used <= MOST - 2; used++)
      for (const state of model.states.order) {
        const worth = levels.worth(used, state)
        const column = solution.Columns[`w${used}_${state}`] as { readonly Primal: number }
        largest = Math.max(largest, Math.abs(column.Primal - worth))
        if (worth > 0.05 && worth < 0.95) between += 1
      }
    expect(largest).toBeLessThan(1e-6)
    expect(between).toBeGreaterThan(20)
  })

  it('finds with the strokes picked for each level what weighing every stroke on every line finds', () => {
    const all = cellStrokes(model, shots, QUADRATURE)
    const { problem } = solveHole(model, QUADRATURE)
    const everything: ImproveState = (state, worthOf) =>
      everyAction(model, shots, state)
        .map((action) => weighed(all, state, action, worthOf))
        .reduce((best, one) => (one.worth > best.worth ? one : best))
    const question = { worths: [1, 1, 1, 1, 1, 0], first: 1 }
    const every = solveLevels(model, chances, question, () => everything)
    const quadrature = { all: QUADRATURE, best: QUADRATURE }
    const picked = solveLevels(model, chances, question, formatStrokes(model, problem, quadrature))
    let largest = 0
    for (let used = 1; used <= MOST - 2; used++)
      for (const state of model.states.order)
        largest = Math.max(largest, every.worth(used, state) - picked.worth(used, state))
    expect(largest).toBeLessThan(1e-3)
  })

  it('gives scores that are worth what the level says, and add up to 1', () => {
    const worths = [9, 7, 5, 3, 2, 1, 0]
    const levels = solveLevels(model, chances, { worths, first: 0 }, () => improve)
    const strokes = cellStrokes(model, shots, QUADRATURE)
    for (const state of model.states.order) {
      const [sum, worth] = expected(levels, 1, state, worths)
      // What takes more than 15 strokes is worth nothing and not listed.
      expect(sum).toBeGreaterThan(0.99)
      expect(sum).toBeLessThanOrEqual(1 + 1e-9)
      expect(worth).toBeCloseTo(levels.worth(1, state), 9)
      const table = levels.bestShot(1, state) as ShotTable
      const played = strokes.outcomes(state, table)
      expect(levels.worthOfStroke(played, 2, levels.worth(3, state))).toBeCloseTo(levels.worth(1, state), 9)
    }
  })

  it('finds with a worth of minus the strokes what the solve for fewest strokes finds', () => {
    const worths = Array.from({ length: 3 * MOST_STROKES }, (_, strokes) => -strokes)
    // The ends of the full game as the chances have them: values and chances interpolate between different distances.
    const start = Float64Array.from(values)
    for (let place = 0; place < start.length; place++)
      if (model.places.isShortGame[place] === 1)
        start[place] = chances.reduce((sum, row, strokes) => sum + strokes * (row[place] as number), 0)
    const problem = holeProblem(model, { quadrature: QUADRATURE })
    const fewest = solveShortestPath(problem, { start, tolerance: 1e-10 })
    expect(fewest.converged).toBe(true)
    const strokes = cellStrokes(model, problem.shots, QUADRATURE)
    const own: ImproveState = (state, worthOf) => {
      const table = problem.bestShot(state) as ShotTable
      const outcomes = strokes.outcomes(state, table)
      return { table, outcomes, worth: worthOf(outcomes) }
    }
    const levels = solveLevels(model, chances, { worths, first: 0 }, () => own)
    for (const state of model.states.order)
      expect(-levels.worth(0, state)).toBeCloseTo(fewest.values[state] as number, 6)
  })
})

function weighed(
  strokes: CellStrokes,
  state: number,
  action: number,
  worthOf: Parameters<ImproveState>[1],
): WeighedStroke {
  const table = strokes.tableOf(action)
  const outcomes = strokes.outcomes(state, table)
  return { table, outcomes, worth: worthOf(outcomes) }
}

function expected(levels: Levels, used: number, state: number, worths: readonly number[]): [number, number] {
  let sum = 0
  let worth = 0
  for (let score = 1; score <= MOST_STROKES; score++) {
    const chance = levels.scoreChance(used, state, score)
    sum += chance
    worth += chance * (worths[Math.min(score, worths.length - 1)] as number)
  }
  return [sum, worth]
}

function lieOf(model: HoleModel, state: number): ReturnType<typeof actionLie> {
  return lieOfGround(groundOf(model.places, state)) as ReturnType<typeof actionLie>
}

/** Every club of the player on a few lines. */
function actionsFrom(model: HoleModel, shots: readonly Shot[], state: number): number[] {
  const lie = lieOf(model, state)
  const pin = Math.round(((model.states.pinDirection[state] as number) * 180) / Math.PI / 2)
  return shots.flatMap((shot, index) =>
    isLow(shot) || !isAllowed(shot, lie, model.player)
      ? []
      : LINES.map((line) => actionOf(index, lie, (pin + line + 180) % 180)),
  )
}

/** Every shot on every line that is tried from a state. */
function everyAction(model: HoleModel, shots: readonly Shot[], state: number): number[] {
  const { pinDirection, bendDirection, isHampered } = model.states
  const lie = lieOf(model, state)
  const hampered = isHampered[state] === 1
  const lines = linesOfPlay(pinDirection[state] as number, bendDirection[state] as number, hampered)
  return shots.flatMap((shot, index) =>
    (isLow(shot) && !hampered) || !isAllowed(shot, lie, model.player)
      ? []
      : lines.map((line) => actionOf(index, lie, line)),
  )
}

/** The programme in LP text format: `w<used>_<state>` is at least the worth of every stroke, `r…` that of every drop. */
function programmeOf(
  model: HoleModel,
  shots: readonly Shot[],
  chances: ScoreChances,
): { readonly text: string; readonly rows: number } {
  const isState = new Set(model.states.order)
  const { tableOf } = cellStrokes(model, shots, QUADRATURE)
  const rows: string[] = []
  const variables = new Set<string>()
  /** Adds the worth of a place with so many strokes used: a variable, a known chance, or nothing any more. */
  const follow = (terms: Map<string, number>, used: number, place: number, chance: number): void => {
    if (used >= MOST) return
    const name = isState.has(place) ? (used <= MOST - 2 ? `w${used}_${place}` : '') : 'one'
    if (name === '') return
    let factor = chance
    if (name === 'one') {
      let atMost = 0
      for (let more = 1; used + more <= MOST; more++) atMost += chances[more]?.[place] ?? 0
      factor = chance * atMost
    }
    terms.set(name, (terms.get(name) ?? 0) + factor)
  }
  const atLeast = (name: string, terms: Map<string, number>): void => {
    variables.add(name)
    const constant = terms.get('one') ?? 0
    const own = 1 - (terms.get(name) ?? 0)
    const others = [...terms].filter(([other]) => other !== 'one' && other !== name)
    rows.push(
      ` ${own} ${name} ${others.map(([other, factor]) => `- ${factor} ${other}`).join(' ')} >= ${constant}`,
    )
  }
  for (let used = 0; used <= MOST - 2; used++)
    for (const state of model.states.order)
      for (const action of actionsFrom(model, shots, state)) {
        const terms = new Map<string, number>()
        for (const fate of fatesOf(model, tableOf(action), state)) {
          if (fate.kind === 'lies') follow(terms, used + 1, fate.place, fate.chance)
          else if (fate.kind === 'back') follow(terms, used + 2, state, fate.chance)
          else {
            const name = `r${used}_${state}_${fate.outcome}`
            if (!variables.has(name)) {
              const back = new Map<string, number>()
              follow(back, used + 2, state, 1)
              atLeast(name, back)
              for (const { penalty, place } of fate.drops) {
                const drop = new Map<string, number>()
                follow(drop, used + 1 + penalty, place, 1)
                atLeast(name, drop)
              }
            }
            terms.set(name, (terms.get(name) ?? 0) + fate.chance)
          }
        }
        atLeast(`w${used}_${state}`, terms)
      }
  return {
    text: `Minimize\n obj: ${[...variables].join(' + ')}\nSubject To\n${rows.join('\n')}\nEnd\n`,
    rows: rows.length,
  }
}

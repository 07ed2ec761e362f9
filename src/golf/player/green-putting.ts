import { TABLE_ROLL_STEP } from '#golf/ball/green-settings.ts'
import { rollPast, type Slopes } from '#golf/ball/simulate-roll.ts'
import { aimPuttInto, strokesOf } from './aim-putt.ts'
import {
  GREEN_ANGLES,
  GREEN_RINGS_METRES,
  MOST_SLOPE_STROKES,
  PUTT_PAST_METRES,
} from './near-green-settings.ts'
import type { Player, Putting } from './player.ts'
import {
  nodeCount,
  nodePlace,
  type PolarGrid,
  type PolarPlace,
  placeInto,
  valueAtPlace,
} from './polar-grid.ts'
import { emptyScatter, type PuttScatter, scatterInto } from './putt-scatter.ts'
import { type PuttingValues, puttingValues } from './putting-values.ts'
import { levelRollChart, type RollChart, rollChart } from './roll-chart.ts'

/** What the slopes of a green add to the putting table, by place: 0 everywhere on a level green. */
export interface GreenPutting {
  /** Putts to add to the table's expected putts. */
  strokesAt(x: number, y: number): number
  /** To add to the table's chances of one and of two putts. */
  sharesAt(x: number, y: number): readonly [one: number, two: number]
  /** Expected putts from a place: the table and what the slopes add. */
  puttsAt(x: number, y: number): number
  /** Nodes that were worked out. */
  readonly nodes: number
}

export interface GreenQuestion {
  readonly slopes: Slopes
  readonly hole: readonly [x: number, y: number]
  /** Of the level green, m/s². */
  readonly slowing: number
  /** How far from the hole a ball is putted at most, metres. */
  readonly reachMetres: number
  /** Called before every node; what it throws ends the work. */
  readonly lookUp?: (() => void) | undefined
}

/** A green's rolls, for any player who putts on it. */
export interface GreenRolls extends GreenQuestion {
  readonly grid: PolarGrid
  /** By node; `null` at the hole and where no ball can be holed. */
  readonly charts: readonly (RollChart | null)[]
}

/** Rolls balls from every node of a polar grid about the hole: what putting there depends on, whoever putts. */
export function greenRolls(question: GreenQuestion): GreenRolls {
  const inside = GREEN_RINGS_METRES.filter((ring) => ring < question.reachMetres).length
  const rings = Float64Array.of(0, ...GREEN_RINGS_METRES.slice(0, inside + 1))
  const grid: PolarGrid = { hole: question.hole, rings, angles: GREEN_ANGLES }
  const charts = Array.from({ length: nodeCount(grid) }, (_, node) => {
    question.lookUp?.()
    return node < GREEN_ANGLES
      ? null
      : rollChart(nodePlace(grid, node), question.hole, question.slopes, question.slowing)
  })
  return { ...question, grid, charts }
}

/** Where the balls of the chosen putt from a node go, on the grid. */
interface ChosenPutt {
  readonly holed: number
  readonly weight: Float64Array
  readonly metres: Float64Array
  readonly places: PolarPlace
  readonly strokesFirst: number
}

const SETTLING_SWEEPS = 80
const SETTLED = 1e-12

/**
 * Putting on an actual green by value iteration over the nodes: from each the pace and the aim with the fewest expected
 * putts, and what misses is putted from where it stops. Worked out is the difference to a level green of the same speed by
 * the same quadrature, to be added to the putting table; so a level green keeps the table exactly.
 */
export function greenPutting(player: Pick<Player, 'putting'>, rolls: GreenRolls): GreenPutting {
  const { grid, charts, slowing } = rolls
  const table = puttingValues(player)
  const level = levelPutts(player.putting, table, grid, slowing)
  const count = nodeCount(grid)
  const strokes = new Float64Array(count)
  const one = new Float64Array(count)
  const two = new Float64Array(count)
  const scatter = emptyScatter()
  const corner: PolarPlace = { nodes: new Int32Array(4), weights: new Float64Array(4) }
  const valueAt = (x: number, y: number): number => {
    placeInto(corner, 0, grid, x, y)
    return table.expected(distanceTo(grid, x, y)) + valueAtPlace(corner, 0, strokes)
  }
  const putts: ChosenPutt[] = []
  // Ring by ring outwards: what a putt leaves is mostly nearer the hole, and there the slopes' cost is known. From the ring
  // itself on it is taken to be as on the last one, so that no node's choice hangs on which side is worked out first.
  for (let first = grid.angles; first < count; first += grid.angles) {
    for (let node = first; node < count; node += 1) strokes[node] = strokes[node - grid.angles] ?? 0
    const next = Float64Array.from({ length: grid.angles }, (_, angle) => {
      rolls.lookUp?.()
      const node = first + angle
      const chart = charts[node] ?? null
      if (chart === null) tapInto(scatter, rolls, nodePlace(grid, node))
      else aimPuttInto(scatter, chart, player.putting, slowing, valueAt)
      putts[node] = chosenPutt(scatter, grid, table)
      const added = strokesOf(scatter, valueAt) - (level[ringOf(grid, node)]?.strokes ?? 1)
      return Math.min(MOST_SLOPE_STROKES, added)
    })
    strokes.set(next, first)
  }
  settle(strokes, putts, level, grid)
  for (let node = grid.angles; node < count; node += 1)
    one[node] = (putts[node]?.holed ?? 1) - (level[ringOf(grid, node)]?.holed ?? 1)
  for (let node = grid.angles; node < count; node += 1) {
    const putt = putts[node]
    if (putt === undefined) continue
    let twoHere = 0
    for (let ball = 0; ball < putt.weight.length; ball += 1)
      twoHere +=
        (putt.weight[ball] ?? 0) *
        (table.shares(putt.metres[ball] ?? 0)[0] + valueAtPlace(putt.places, 4 * ball, one))
    two[node] = twoHere - (level[ringOf(grid, node)]?.two ?? 0)
  }
  const at = (field: Float64Array, x: number, y: number): number => {
    placeInto(corner, 0, grid, x, y)
    return valueAtPlace(corner, 0, field)
  }
  return {
    strokesAt: (x, y) => at(strokes, x, y),
    puttsAt: (x, y) => Math.max(1, valueAt(x, y)),
    sharesAt: (x, y) => [at(one, x, y), at(two, x, y)],
    nodes: count - grid.angles,
  }
}

/** A level putt from each ring by the same quadrature. */
interface LevelPutt {
  readonly strokes: number
  readonly holed: number
  readonly two: number
}

function levelPutts(
  putting: Putting,
  table: PuttingValues,
  grid: PolarGrid,
  slowing: number,
): readonly LevelPutt[] {
  const scatter = emptyScatter()
  const furthest = grid.rings.at(-1) ?? 0
  const sumOver = (value: (metres: number) => number): number => {
    let sum = 0
    for (let ball = 0; ball < scatter.count; ball += 1)
      sum +=
        (scatter.weight[ball] ?? 0) *
        value(Math.min(furthest, Math.hypot(scatter.x[ball] ?? 0, scatter.y[ball] ?? 0)))
    return sum
  }
  return Array.from(grid.rings, (radius) => {
    if (radius === 0) return { strokes: 1, holed: 1, two: 0 }
    const chart = levelRollChart(radius, slowing)
    let best: LevelPutt = { strokes: Number.POSITIVE_INFINITY, holed: 0, two: 0 }
    for (const past of PUTT_PAST_METRES) {
      scatterInto(scatter, chart, putting, { past, slower: 0 }, slowing)
      const strokes = 1 + sumOver(table.expected)
      if (strokes < best.strokes)
        best = { strokes, holed: scatter.holed, two: sumOver((metres) => table.shares(metres)[0]) }
    }
    return best
  })
}

/** What is putted where no ball can be holed: a touch towards the hole, and the next from where it stops. */
function tapInto(scatter: PuttScatter, rolls: GreenRolls, from: readonly [number, number]): void {
  const { hole, slopes, slowing } = rolls
  const headingRadians = Math.atan2(hole[0] - from[0], hole[1] - from[1])
  const roll = rollPast(
    { x: from[0], y: from[1], headingRadians, speed: TAP_SPEED },
    slopes,
    slowing,
    hole,
    TABLE_ROLL_STEP,
  )
  scatter.holed = 0
  scatter.count = 1
  scatter.x[0] = roll.x
  scatter.y[0] = roll.y
  scatter.weight[0] = 1
}

const TAP_SPEED = 0.1

function chosenPutt(scatter: PuttScatter, grid: PolarGrid, table: PuttingValues): ChosenPutt {
  const { count } = scatter
  const places: PolarPlace = { nodes: new Int32Array(4 * count), weights: new Float64Array(4 * count) }
  const metres = new Float64Array(count)
  let strokesFirst = 1
  for (let ball = 0; ball < count; ball += 1) {
    const [x, y] = [scatter.x[ball] ?? 0, scatter.y[ball] ?? 0]
    placeInto(places, 4 * ball, grid, x, y)
    metres[ball] = distanceTo(grid, x, y)
    strokesFirst += (scatter.weight[ball] ?? 0) * table.expected(metres[ball] ?? 0)
  }
  return { holed: scatter.holed, weight: scatter.weight.slice(0, count), metres, places, strokesFirst }
}

/** Lets the differences settle under the chosen putts: each is what its misses bring from where they stop. */
function settle(
  strokes: Float64Array,
  putts: readonly ChosenPutt[],
  level: readonly LevelPutt[],
  grid: PolarGrid,
): void {
  let moved = Number.POSITIVE_INFINITY
  for (let sweep = 0; sweep < SETTLING_SWEEPS && moved > SETTLED; sweep += 1) {
    moved = 0
    for (let node = grid.angles; node < strokes.length; node += 1) {
      const putt = putts[node]
      if (putt === undefined) continue
      let next = putt.strokesFirst - (level[ringOf(grid, node)]?.strokes ?? 1)
      for (let ball = 0; ball < putt.weight.length; ball += 1)
        next += (putt.weight[ball] ?? 0) * valueAtPlace(putt.places, 4 * ball, strokes)
      next = Math.min(MOST_SLOPE_STROKES, next)
      moved = Math.max(moved, Math.abs(next - (strokes[node] ?? 0)))
      strokes[node] = next
    }
  }
}

function ringOf(grid: PolarGrid, node: number): number {
  return Math.floor(node / grid.angles)
}

/** Metres from the hole, as far as the grid goes: what would roll on beyond it is stopped by the grass around the green. */
function distanceTo(grid: PolarGrid, x: number, y: number): number {
  const right = x - grid.hole[0]
  const ahead = y - grid.hole[1]
  return Math.min(Math.sqrt(right * right + ahead * ahead), grid.rings.at(-1) ?? 0)
}

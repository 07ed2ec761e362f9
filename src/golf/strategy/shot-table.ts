import type { FlightChange, Flights } from '#golf/ball/flights.ts'
import { type GreenRuns, greenRunsToday, runToday } from '#golf/ball/run-today.ts'
import { LEAST_MISHIT_GREEN_SHARE } from '#golf/ball/surface-settings.ts'
import type { GroundToday } from '#golf/ball/turf.ts'
import { lieEffect } from '#golf/player/lie-effects.ts'
import type { Lie, Player, Sit } from '#golf/player/player.ts'
import { MISHIT_DIRECTION_FACTOR } from '#golf/player/settings.ts'
import { LEVEL_STANCE, type Stance, stanceEffect } from '#golf/player/stance.ts'
import { splitNormalQuantile } from '#numbers/statistics/split-normal.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import type { Canopy } from './canopy.ts'
import type { Outcome } from './outcome.ts'
import type { Places } from './places.ts'
import type { RestTable, RestTables } from './rest-tables.ts'
import { LEAST_MISHIT_CARRY_SHARE, MISHIT_HEIGHT_SHARE, RUN_STEP_METRES } from './settings.ts'
import { isLow, type Shot } from './shots.ts'
import { type StrikePaths, strikePaths } from './strike-paths.ts'
import type { Strikes } from './strikes.ts'

/** One shot from one lie along one heading: where each strike lands, seen from the ball, and what becomes of it there. */
export interface ShotTable {
  readonly shot: Shot
  /** What the day and the slope under the feet do to it. */
  readonly change: FlightChange
  /** How far the slope under the feet turns the start, radians, right positive. */
  readonly turn: number
  /** Finish of the pattern's centre without wind, radians clockwise from the y axis. */
  readonly heading: number
  /** Landing, metres from the ball in the hole frame. */
  readonly dx: Float64Array
  readonly dy: Float64Array
  /** The same in whole coarse cells, for a ball in the middle of its cell. */
  readonly cellDx: Int32Array
  readonly cellDy: Int32Array
  /** Good strikes come first. */
  readonly goodCount: number
  /** Place of each strike in the distribution of direction, 0 = furthest left. */
  readonly directionShare: Float64Array
  /** Chance of each strike; they add up to 1. */
  readonly weight: Float64Array
  /** By place where the ball lands off the green, and by number on the green. */
  readonly rest: readonly RestTable[]
  readonly restOnGreen: readonly RestTable[]
  /** How the strikes fly past trees; `null` on a hole without any. */
  readonly paths: StrikePaths | null
}

export interface ShotTableInput {
  readonly shot: Shot
  readonly lie: Lie
  /** How the ball sits, where the player has seen it, and the slopes under the feet. */
  readonly sit?: Sit | undefined
  readonly stance?: Stance | undefined
  readonly heading: number
  readonly player: Player
  readonly flights: Flights
  readonly today: GroundToday
  readonly strikes: Strikes
  readonly rest: RestTables
  readonly canopy: Canopy
  readonly cellMetres: number
}

/**
 * Lays a shot's pattern along a heading. Good strikes have the club's own spread to each side; a mishit is shorter
 * and wider. The run follows the ball's own direction, turned on by its curve.
 */
export function shotTable(input: ShotTableInput): ShotTable {
  const { shot, heading, strikes } = input
  const { stock } = shot
  const { sit, stance, today } = input
  const effect = lieEffect(input.lie, shot.stock.name, input.player, { sit, rough: today.rough })
  const slope = stance ? stanceEffect(stance, shot.loftDegrees, input.player.hand) : LEVEL_STANCE
  const change = input.flights.changeFor(
    shot.loftDegrees,
    stock.carryMetres,
    heading,
    slope.launch,
    isLow(shot),
  )
  const mishitShare = Math.min(stock.mishitShare * effect.mishit * slope.mishit, 0.9)
  const stockRun = Math.max(0, stock.totalMetres - stock.carryMetres)
  const run = runToday(stockRun, change, effect.spin) * today.firmness
  const sd = degreesToRadians(stock.directionSdDegrees) * effect.direction * slope.direction
  const curve = Math.atan(stock.curveShare)
  // Runs are followed in whole steps; what is left of one, less than half a step either way, is laid on the carry.
  const runLeft = run - RUN_STEP_METRES * Math.round(run / RUN_STEP_METRES)
  const onGreen = greenRunsToday(stockRun, change, today, effect.spin, input.rest.isGreenSloped)
  const goodOnGreen = eachRun(onGreen, (metres) => metres - runLeft)
  const mishitOnGreen = eachRun(
    onGreen,
    (metres) => Math.max(metres, LEAST_MISHIT_GREEN_SHARE * run) - runLeft,
  )
  const count = strikes.count
  const table = {
    shot,
    change,
    turn: slope.turn,
    heading,
    goodCount: strikes.goodCount,
    directionShare: strikes.directionShare,
    dx: new Float64Array(count),
    dy: new Float64Array(count),
    cellDx: new Int32Array(count),
    cellDy: new Int32Array(count),
    weight: new Float64Array(count),
    rest: new Array<RestTable>(count),
    restOnGreen: new Array<RestTable>(count),
  }
  const falls: RestTable[] = []
  const heightShare = new Float64Array(count)
  for (let k = 0; k < count; k++) {
    const isGood = k < strikes.goodCount
    const spread = isGood ? sd : sd * MISHIT_DIRECTION_FACTOR
    const share = strikes.directionShare[k] as number
    const direction =
      heading + slope.turn + splitNormalQuantile(share, spread * stock.leftShare, spread * stock.rightShare)
    const deviate = strikes.carryDeviate[k] as number
    const carryShare = isGood
      ? 1 + stock.carrySdShare * effect.distance * slope.distance * deviate
      : stock.mishitCarryShare + stock.mishitCarrySdShare * deviate
    const carry = stock.carryMetres * effect.carry * Math.max(carryShare, LEAST_MISHIT_CARRY_SHARE)
    const forward = carry * change.carryShare + runLeft
    const drift = carry * change.driftShare
    const dx = forward * Math.sin(direction) + drift * Math.cos(heading)
    const dy = forward * Math.cos(direction) - drift * Math.sin(heading)
    table.dx[k] = dx
    table.dy[k] = dy
    table.cellDx[k] = Math.round(dx / input.cellMetres)
    table.cellDy[k] = Math.round(dy / input.cellMetres)
    table.weight[k] = isGood
      ? (1 - mishitShare) / strikes.goodCount
      : mishitShare / (count - strikes.goodCount)
    table.rest[k] = input.rest.tableFor(run, direction + curve)
    table.restOnGreen[k] = input.rest.greenTableFor(isGood ? goodOnGreen : mishitOnGreen, direction + curve)
    if (input.canopy.isEmpty) continue
    falls.push(input.rest.tableFor(0, direction + curve))
    heightShare[k] = isGood ? 1 : MISHIT_HEIGHT_SHARE
  }
  if (input.canopy.isEmpty) return { ...table, paths: null }
  const heights = input.flights.heightsFor(
    shot.loftDegrees,
    stock.carryMetres,
    heading,
    slope.launch,
    isLow(shot),
  )
  const { dx, dy } = table
  return { ...table, paths: strikePaths({ canopy: input.canopy, heights, heightShare, dx, dy, falls }) }
}

function eachRun(runs: GreenRuns, change: (metres: number) => number): GreenRuns {
  return { falling: change(runs.falling), level: change(runs.level), rising: change(runs.rising) }
}

/** What becomes of strike `k` that lands in a place: an outcome number. */
export function outcomeAt(places: Places, table: ShotTable, k: number, landing: number): Outcome {
  const onGreen = places.greenIndex[landing] as number
  return (
    onGreen < 0 ? (table.rest[k] as RestTable)[landing] : (table.restOnGreen[k] as RestTable)[onGreen]
  ) as number
}

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
import { fineOffsets, type Places } from './places.ts'
import { type RestTable, restAt } from './rest-table.ts'
import type { RestTables } from './rest-tables.ts'
import {
  LEAST_MISHIT_CARRY_SHARE,
  LEAST_SLANT_SHARE,
  MISHIT_HEIGHT_SHARE,
  RUN_STEP_METRES,
} from './settings.ts'
import { isLow, type Shot } from './shots.ts'
import { type Slant, slantOf } from './slant.ts'
import type { SlantTable } from './slant-table.ts'
import type { SlantTables } from './slant-tables.ts'
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
  /**
   * The same for a ball in the middle of a coarse cell: in whole coarse cells, and in fine cells over those of the cell's
   * own number. Every cell's ball is moved by the same whole numbers.
   */
  readonly cellDx: Int32Array
  readonly cellDy: Int32Array
  readonly fineDx: Int32Array
  readonly fineDy: Int32Array
  /** Good strikes come first. */
  readonly goodCount: number
  /** Place of each strike in the distribution of direction, 0 = furthest left. */
  readonly directionShare: Float64Array
  /** Chance of each strike; they add up to 1. */
  readonly weight: Float64Array
  /** By place where the ball lands off the green, and by number on the green. */
  readonly rest: readonly RestTable[]
  readonly restOnGreen: readonly RestTable[]
  /** How the strikes fly past trees from the very ball; `null` on a hole without any, and where the solve asks. */
  readonly paths: StrikePaths | null
  /** What may catch each strike on its way up and on its way down, as the solve sees it; `null` where nothing can. */
  readonly up: readonly (SlantTable | null)[]
  readonly down: readonly (SlantTable | null)[]
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
  readonly places: Places
  /** The strikes laid out before, for many headings of one shot and lie. */
  readonly pattern?: StrikePattern
  /** What stands over the hole: ray by ray for one stroke, or by slants for a solve. */
  readonly growth: Canopy | SlantTables
}

/** The strikes of a shot from a lie, whatever its heading: off the line in radians, right positive, and carry in metres. */
export interface StrikePattern {
  readonly offLine: Float64Array
  readonly carry: Float64Array
  readonly mishitShare: number
}

/** Lays out the strikes of a shot: good ones have the club's own spread to each side; a mishit is shorter and wider. */
export function strikePattern(
  input: Pick<ShotTableInput, 'shot' | 'lie' | 'sit' | 'stance' | 'player' | 'today' | 'strikes'>,
): StrikePattern {
  const { shot, sit, stance, strikes, today } = input
  const { stock } = shot
  const effect = lieEffect(input.lie, stock.name, input.player, { sit, rough: today.rough })
  const slope = stance ? stanceEffect(stance, shot.loftDegrees, input.player.hand) : LEVEL_STANCE
  const sd = degreesToRadians(stock.directionSdDegrees) * effect.direction * slope.direction
  const offLine = new Float64Array(strikes.count)
  const carry = new Float64Array(strikes.count)
  for (let k = 0; k < strikes.count; k++) {
    const isGood = k < strikes.goodCount
    const spread = isGood ? sd : sd * MISHIT_DIRECTION_FACTOR
    const share = strikes.directionShare[k] as number
    offLine[k] = slope.turn + splitNormalQuantile(share, spread * stock.leftShare, spread * stock.rightShare)
    const deviate = strikes.carryDeviate[k] as number
    const carryShare = isGood
      ? 1 + stock.carrySdShare * effect.distance * slope.distance * deviate
      : stock.mishitCarryShare + stock.mishitCarrySdShare * deviate
    carry[k] = stock.carryMetres * effect.carry * Math.max(carryShare, LEAST_MISHIT_CARRY_SHARE)
  }
  return { offLine, carry, mishitShare: Math.min(stock.mishitShare * effect.mishit * slope.mishit, 0.9) }
}

/**
 * Lays a shot's pattern along a heading. The run follows the ball's own direction, turned on by its curve.
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
  const stockRun = Math.max(0, stock.totalMetres - stock.carryMetres)
  const run = runToday(stockRun, change, effect.spin) * today.firmness
  const pattern = input.pattern ?? strikePattern(input)
  const { mishitShare } = pattern
  const curve = Math.atan(stock.curveShare)
  // Runs are followed in whole steps; what is left of one, less than half a step either way, is laid on the carry.
  const runLeft = run - RUN_STEP_METRES * Math.round(run / RUN_STEP_METRES)
  const onGreen = greenRunsToday(stockRun, change, today, effect.spin, input.rest.isGreenSloped)
  const goodOnGreen = input.rest.greenTablesFor(eachRun(onGreen, (metres) => metres - runLeft))
  const mishitOnGreen = input.rest.greenTablesFor(
    eachRun(onGreen, (metres) => Math.max(metres, LEAST_MISHIT_GREEN_SHARE * run) - runLeft),
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
    fineDx: new Int32Array(count),
    fineDy: new Int32Array(count),
    weight: new Float64Array(count),
    rest: new Array<RestTable>(count),
    restOnGreen: new Array<RestTable>(count),
  }
  const { growth, places } = input
  const lattice = fineOffsets(places)
  const falls: RestTable[] = []
  const heightShare = new Float64Array(count)
  const carries = new Float64Array(count)
  const downHeading = new Float64Array(count)
  for (let k = 0; k < count; k++) {
    const isGood = k < strikes.goodCount
    const direction = heading + (pattern.offLine[k] as number)
    const carry = pattern.carry[k] as number
    const forward = carry * change.carryShare + runLeft
    const drift = carry * change.driftShare
    const dx = forward * Math.sin(direction) + drift * Math.cos(heading)
    const dy = forward * Math.cos(direction) - drift * Math.sin(heading)
    table.dx[k] = dx
    table.dy[k] = dy
    const fineDx = Math.round(dx / places.fine.resolution + lattice.offX)
    const fineDy = Math.round(dy / places.fine.resolution + lattice.offY)
    table.fineDx[k] = fineDx
    table.fineDy[k] = fineDy
    table.cellDx[k] = Math.floor((fineDx + lattice.toCellX) / places.finePerCoarse)
    table.cellDy[k] = Math.floor((fineDy + lattice.toCellY) / places.finePerCoarse)
    table.weight[k] = isGood
      ? (1 - mishitShare) / strikes.goodCount
      : mishitShare / (count - strikes.goodCount)
    table.rest[k] = input.rest.tableFor(run, direction + curve)
    table.restOnGreen[k] = (isGood ? goodOnGreen : mishitOnGreen)(direction + curve)
    falls.push(input.rest.tableFor(0, direction + curve))
    heightShare[k] = isGood ? 1 : MISHIT_HEIGHT_SHARE
    carries[k] = carry
    downHeading[k] = direction + curve
  }
  const open = new Array<null>(count).fill(null)
  if ('tallest' in growth ? growth.tallest === 0 : growth.isEmpty)
    return { ...table, paths: null, up: open, down: open }
  const heights = input.flights.heightsFor(
    shot.loftDegrees,
    stock.carryMetres,
    heading,
    slope.launch,
    isLow(shot),
  )
  const { dx, dy } = table
  if (!('tallest' in growth))
    return {
      ...table,
      paths: strikePaths({ heights, heightShare, dx, dy, falls }),
      up: open,
      down: open,
    }
  // Good strikes leave and come down alike, and so do mishits of the club's usual length and more; shorter ones run.
  const slants = (isDown: boolean): (SlantTable | null)[] => {
    const [good, mishit] = [
      { heightShare: 1, carryMetres: stock.carryMetres * change.carryShare },
      {
        heightShare: MISHIT_HEIGHT_SHARE,
        carryMetres: stock.carryMetres * stock.mishitCarryShare * change.carryShare,
      },
    ].map(({ heightShare: share, carryMetres }) =>
      slantOf({ heights, heightShare: share, carryMetres }, isDown, growth.tallest),
    ) as [Slant | null, Slant | null]
    const shortest = LEAST_SLANT_SHARE * stock.carryMetres * stock.mishitCarryShare
    return Array.from({ length: count }, (_, k) => {
      const isGood = k < strikes.goodCount
      const slant = isGood ? good : (carries[k] as number) < shortest ? null : mishit
      const heading = isDown ? (downHeading[k] as number) : Math.atan2(dx[k] as number, dy[k] as number)
      return slant === null ? null : growth.tableFor(slant, heading)
    })
  }
  return { ...table, paths: null, up: slants(false), down: slants(true) }
}

function eachRun(runs: GreenRuns, change: (metres: number) => number): GreenRuns {
  return { falling: change(runs.falling), level: change(runs.level), rising: change(runs.rising) }
}

/** What becomes of strike `k` that lands in a place: an outcome number. */
export function outcomeAt(places: Places, table: ShotTable, k: number, landing: number): Outcome {
  const onGreen = places.greenIndex[landing] as number
  return onGreen < 0
    ? restAt(places, table.rest[k] as RestTable, landing)
    : restAt(places, table.restOnGreen[k] as RestTable, onGreen)
}

import type { FlightChange, Flights } from '#golf/ball/flights.ts'
import { type GreenRuns, greenRunsToday, runToday } from '#golf/ball/run-today.ts'
import { LEAST_MISHIT_GREEN_SHARE } from '#golf/ball/surface-settings.ts'
import type { GroundToday } from '#golf/ball/turf.ts'
import type { Lie, Player, Sit } from '#golf/player/player.ts'
import type { Stance } from '#golf/player/stance.ts'
import type { Canopy } from './canopy.ts'
import type { Outcome } from './outcome.ts'
import { fineOffsets, type Places } from './places.ts'
import { type RestTable, restAt } from './rest-table.ts'
import type { RestTables } from './rest-tables.ts'
import { LEAST_SLANT_SHARE, MISHIT_HEIGHT_SHARE, RUN_STEP_METRES } from './settings.ts'
import { isLow, type Shot } from './shots.ts'
import { slantOf } from './slant.ts'
import type { SlantTable } from './slant-table.ts'
import type { SlantTables } from './slant-tables.ts'
import { type StrikePaths, strikePaths } from './strike-paths.ts'
import { type StrikePattern, strikePattern } from './strike-pattern.ts'
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

/**
 * Lays a shot's pattern along a heading. The run follows the ball's own direction, turned on by its curve.
 */
export function shotTable(input: ShotTableInput): ShotTable {
  const { shot, heading, strikes, growth, places, rest, today } = input
  const { stock } = shot
  const pattern = input.pattern ?? strikePattern(input)
  const change = input.flights.changeFor(
    shot.loftDegrees,
    stock.carryMetres,
    heading,
    pattern.launch,
    isLow(shot),
  )
  const stockRun = Math.max(0, stock.totalMetres - stock.carryMetres)
  const run = runToday(stockRun, change, pattern.spin) * today.firmness
  const curve = Math.atan(stock.curveShare)
  // Runs are followed in whole steps; what is left of one, less than half a step either way, is laid on the carry.
  const runLeft = run - RUN_STEP_METRES * Math.round(run / RUN_STEP_METRES)
  const onGreen = greenRunsToday(stockRun, change, today, pattern.spin, rest.isGreenSloped)
  const goodOnGreen = rest.greenTablesFor(eachRun(onGreen, (metres) => metres - runLeft))
  const mishitOnGreen = rest.greenTablesFor(
    eachRun(onGreen, (metres) => Math.max(metres, LEAST_MISHIT_GREEN_SHARE * run) - runLeft),
  )
  const restOf = rest.tablesFor(run)
  const { goodCount } = strikes
  const count = pattern.carry.length
  const table = {
    ...strikeMoves(count),
    shot,
    change,
    turn: pattern.turn,
    heading,
    goodCount,
    directionShare: strikes.directionShare,
    weight: pattern.weight,
    rest: new Array<RestTable>(count),
    restOnGreen: new Array<RestTable>(count),
  }
  const lattice = fineOffsets(places)
  const [sin, cos] = [Math.sin(heading), Math.cos(heading)]
  for (let k = 0; k < count; k++) {
    const carry = pattern.carry[k] as number
    const forward = carry * change.carryShare + runLeft
    const drift = carry * change.driftShare
    const [offSine, offCosine] = [pattern.offSine[k] as number, pattern.offCosine[k] as number]
    const dx = forward * (sin * offCosine + cos * offSine) + drift * cos
    const dy = forward * (cos * offCosine - sin * offSine) - drift * sin
    table.dx[k] = dx
    table.dy[k] = dy
    const fineDx = Math.round(dx / places.fine.resolution + lattice.offX)
    const fineDy = Math.round(dy / places.fine.resolution + lattice.offY)
    table.fineDx[k] = fineDx
    table.fineDy[k] = fineDy
    table.cellDx[k] = Math.floor((fineDx + lattice.toCellX) / places.finePerCoarse)
    table.cellDy[k] = Math.floor((fineDy + lattice.toCellY) / places.finePerCoarse)
    const running = heading + (pattern.offLine[k] as number) + curve
    table.rest[k] = restOf(running)
    table.restOnGreen[k] = (k < goodCount ? goodOnGreen : mishitOnGreen)(running)
  }
  const isOpen = 'tallest' in growth ? growth.tallest === 0 : growth.isEmpty
  if (isOpen) return { ...table, paths: null, up: nothing(count), down: nothing(count) }
  const heights = input.flights.heightsFor(
    shot.loftDegrees,
    stock.carryMetres,
    heading,
    pattern.launch,
    isLow(shot),
  )
  if ('tallest' in growth)
    return { ...table, paths: null, ...slantsOf(growth, { ...table, pattern, heights, curve }) }
  const fallsTo = rest.tablesFor(0)
  const paths = strikePaths({
    heights,
    heightShare: Float64Array.from(table.dx, (_, k) => (k < goodCount ? 1 : MISHIT_HEIGHT_SHARE)),
    dx: table.dx,
    dy: table.dy,
    falls: Array.from(pattern.offLine, (offLine) => fallsTo(heading + offLine + curve)),
  })
  return { ...table, paths, up: nothing(count), down: nothing(count) }
}

/** The numbers of a table in one piece of memory: tables are made by the ten thousand. */
function strikeMoves(
  count: number,
): Pick<ShotTable, 'dx' | 'dy' | 'cellDx' | 'cellDy' | 'fineDx' | 'fineDy'> {
  const memory = new ArrayBuffer(32 * count)
  const whole = (number: number): Int32Array => new Int32Array(memory, (16 + 4 * number) * count, count)
  return {
    dx: new Float64Array(memory, 0, count),
    dy: new Float64Array(memory, 8 * count, count),
    cellDx: whole(0),
    cellDy: whole(1),
    fineDx: whole(2),
    fineDy: whole(3),
  }
}

/** By number of strikes: nothing that may catch any. */
const nothings = new Map<number, readonly null[]>()

function nothing(count: number): readonly null[] {
  const known = nothings.get(count) ?? new Array<null>(count).fill(null)
  nothings.set(count, known)
  return known
}

/** What catches balls on one slant, by heading. */
type Along = ReturnType<SlantTables['tablesFor']>

/** What may catch each strike. Good strikes leave and come down alike, and so do mishits of the club's usual length and more; shorter ones run. */
function slantsOf(
  growth: SlantTables,
  table: Pick<ShotTable, 'shot' | 'change' | 'heading' | 'goodCount' | 'dx' | 'dy'> & {
    readonly pattern: StrikePattern
    readonly heights: Float64Array
    readonly curve: number
  },
): Pick<ShotTable, 'up' | 'down'> {
  const { shot, change, heading, goodCount, dx, dy, pattern, heights, curve } = table
  const { stock } = shot
  const usual = stock.carryMetres * change.carryShare
  const shortest = LEAST_SLANT_SHARE * stock.carryMetres * stock.mishitCarryShare
  const along = (isDown: boolean): [Along | null, Along | null] => {
    const of = (heightShare: number, carryMetres: number): Along | null => {
      const slant = slantOf({ heights, heightShare, carryMetres }, isDown, growth.tallest)
      return slant === null ? null : growth.tablesFor(slant)
    }
    return [of(1, usual), of(MISHIT_HEIGHT_SHARE, usual * stock.mishitCarryShare)]
  }
  const [goodUp, mishitUp] = along(false)
  const [goodDown, mishitDown] = along(true)
  const count = dx.length
  const up = new Array<SlantTable | null>(count)
  const down = new Array<SlantTable | null>(count)
  for (let k = 0; k < count; k++) {
    const isRun = k >= goodCount && (pattern.carry[k] as number) < shortest
    const rising = k < goodCount ? goodUp : isRun ? null : mishitUp
    const falling = k < goodCount ? goodDown : isRun ? null : mishitDown
    up[k] = rising === null ? null : rising(Math.atan2(dx[k] as number, dy[k] as number))
    down[k] = falling === null ? null : falling(heading + (pattern.offLine[k] as number) + curve)
  }
  return { up, down }
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

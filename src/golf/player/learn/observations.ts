import { radiansToDegrees } from '#numbers/units/units.ts'
import { lieEffect } from '../lie-effects.ts'
import type { Club, Lie, Player } from '../player.ts'
import { RUN_NOISE } from '../settings.ts'
import type { ShotRecord, StruckWay } from '../shot-record.ts'
import { LEAST_SEASON_SPREAD, MISHIT_RUN_FACTOR } from './learn-settings.ts'
import { LEARNED_LIES, type LieOfShots } from './lie-of-shots.ts'
import { dayNumber, recencyWeight, seasonWave } from './season.ts'

/** Shots as the model of a strike sees them, one column a fact, with what the lie did divided out; NaN where unknown. */
export interface ShotColumns {
  readonly count: number
  /** Carry along the shot's own direction, metres; NaN where only the total is known. */
  readonly carry: Float64Array
  /** Total less carry where both are known, metres. */
  readonly run: Float64Array
  /** Total along the shot's direction, metres, where the carry is not known. */
  readonly total: Float64Array
  /** Degrees off the intended line, right positive. */
  readonly direction: Float64Array
  /** How much each counts, 0 to 1. */
  readonly weight: Float64Array
  /** Place in the year's wave, around the mean of all shots. */
  readonly season: Float64Array
  /** Number of the lie in {@link ClubObservations}. */
  readonly lie: Uint8Array
  /** What the player says: 1 good, 2 mishit, 0 nothing. */
  readonly said: Uint8Array
  /** What each may have been, where carry and total are not known; else `null`. */
  readonly ways: readonly (WayColumns | null)[]
}

/** What one shot may have been, a column a fact: carry with what the lie was thought to do divided out; see `StruckWay`. */
export interface WayColumns {
  readonly carry: Float64Array
  readonly perRun: Float64Array
  /** NaN where the line is not known. */
  readonly direction: Float64Array
  readonly ifGood: Float64Array
  readonly ifMishit: Float64Array
}

/** All shots with one club. */
export interface ClubObservations {
  readonly lies: readonly LieOfShots[]
  readonly shots: ShotColumns
  /** Spread of single runs of good strikes and of mishits, metres. */
  readonly runSd: number
  readonly mishitRunSd: number
}

/** Why a shot was not learned from. */
export type Unused = 'club' | 'distance'

export interface Observed {
  /** In the order of the player's clubs. */
  readonly clubs: readonly ClubObservations[]
  readonly unused: readonly { readonly index: number; readonly why: Unused }[]
  /** Whether the shots are spread over the year enough to tell the season. */
  readonly hasSeasons: boolean
}

/**
 * Sorts shots by club and divides out what the lie did. A shot from a lie nobody wrote down counts as from the
 * reference lie; one without a day as from today. `today` is a day number; absent: the day of the newest shot.
 */
export function observe(player: Player, shots: readonly ShotRecord[], today?: number): Observed {
  const days = shots.map((shot) => dayNumber(shot.date))
  const now = today ?? days.reduce<number>((newest, day) => Math.max(newest, day ?? -Infinity), -Infinity)
  const weights = days.map((day) => (day === null ? 1 : recencyWeight(day, now)))
  const waves = days.map((day) => (day === null ? null : seasonWave(day)))
  const { mean, sd } = spreadOf(waves, weights)
  const baskets = player.clubs.map((club): Basket => ({ club, lies: [], shots: [], numbers: new Map() }))
  const places = new Map(player.clubs.map((club, index) => [club.name, index]))
  const unused: { index: number; why: Unused }[] = []
  shots.forEach((shot, index) => {
    const basket = baskets[places.get(shot.club) ?? -1]
    if (basket === undefined) {
      unused.push({ index, why: 'club' })
      return
    }
    const lie = lieNumber(basket, shot.lie, player)
    const seen = measured(shot, (basket.lies[lie] as LieOfShots).carry)
    if (seen === null) {
      unused.push({ index, why: 'distance' })
      return
    }
    const wave = waves[index] ?? null
    const season = wave === null || sd < LEAST_SEASON_SPREAD ? 0 : wave - mean
    basket.shots.push({
      ...seen,
      weight: weights[index] as number,
      season,
      lie,
      said: SAID[shot.strike ?? ''],
    })
  })
  return { clubs: baskets.map(clubObservations), unused, hasSeasons: sd >= LEAST_SEASON_SPREAD }
}

const SAID = { '': 0, good: 1, mishit: 2 } as const

type ShotRow = Readonly<Record<Exclude<keyof ShotColumns, 'count' | 'ways'>, number>> & {
  readonly ways: WayColumns | null
}

interface Basket {
  readonly club: Club
  readonly lies: LieOfShots[]
  readonly shots: ShotRow[]
  readonly numbers: Map<Lie | null, number>
}

function clubObservations({ club, lies, shots }: Basket): ClubObservations {
  const run = club.totalMetres - club.carryMetres
  const runSd = Math.max(RUN_NOISE.leastMetres, RUN_NOISE.share * run)
  const column = (name: Exclude<keyof ShotRow, 'ways'>): Float64Array =>
    Float64Array.from(shots, (shot) => shot[name])
  const columns = {
    count: shots.length,
    carry: column('carry'),
    run: column('run'),
    total: column('total'),
    direction: column('direction'),
    weight: column('weight'),
    season: column('season'),
    lie: Uint8Array.from(shots, (shot) => shot.lie),
    said: Uint8Array.from(shots, (shot) => shot.said),
    ways: shots.map((shot) => shot.ways),
  }
  return { lies, shots: columns, runSd, mishitRunSd: MISHIT_RUN_FACTOR * runSd }
}

function lieNumber(basket: Basket, lie: Lie | null, player: Player): number {
  const known = basket.numbers.get(lie)
  if (known !== undefined) return known
  basket.lies.push(lie === null ? REFERENCE : lieOfShots(lie, basket.club.name, player))
  basket.numbers.set(lie, basket.lies.length - 1)
  return basket.lies.length - 1
}

const REFERENCE: LieOfShots = { carry: 1, direction: 1, distance: 1, mishit: 1, place: -1 }

function lieOfShots(lie: Lie, club: string, player: Player): LieOfShots {
  const { carry, direction, distance, mishit } = lieEffect(lie, club, player)
  const place = (LEARNED_LIES as readonly Lie[]).indexOf(lie)
  return { carry, direction, distance, mishit, place }
}

/** Distances and direction of a shot as from the reference lie; `null` when it has no distance. */
function measured(
  { carryMetres, totalMetres, offlineMetres, ways }: ShotRecord,
  carryFactor: number,
): Pick<ShotRow, 'carry' | 'run' | 'total' | 'direction' | 'ways'> | null {
  if (ways !== undefined)
    return ways.length === 0 ? null : { ...NOTHING, ways: wayColumns(ways, carryFactor) }
  const along = carryMetres ?? totalMetres
  if (along === null || !(along > 0)) return null
  const length = Math.hypot(along, offlineMetres ?? 0)
  return {
    carry: carryMetres === null ? Number.NaN : length / carryFactor,
    run: carryMetres === null || totalMetres === null ? Number.NaN : totalMetres - carryMetres,
    total: carryMetres === null ? length : Number.NaN,
    direction: offlineMetres === null ? Number.NaN : radiansToDegrees(Math.atan2(offlineMetres, along)),
    ways: null,
  }
}

const NOTHING = { carry: Number.NaN, run: Number.NaN, total: Number.NaN, direction: Number.NaN }

function wayColumns(ways: readonly StruckWay[], carryFactor: number): WayColumns {
  return {
    carry: Float64Array.from(ways, ({ carryMetres }) => carryMetres / carryFactor),
    perRun: Float64Array.from(ways, ({ carryPerRun }) => carryPerRun / carryFactor),
    direction: Float64Array.from(ways, ({ directionDegrees }) => directionDegrees ?? Number.NaN),
    ifGood: Float64Array.from(ways, ({ ifGood }) => ifGood),
    ifMishit: Float64Array.from(ways, ({ ifMishit }) => ifMishit),
  }
}

function spreadOf(
  values: readonly (number | null)[],
  weights: readonly number[],
): { readonly mean: number; readonly sd: number } {
  let [all, sum, square] = [0, 0, 0]
  values.forEach((value, index) => {
    const weight = weights[index] as number
    if (value === null) return
    all += weight
    sum += weight * value
    square += weight * value * value
  })
  if (all === 0) return { mean: 0, sd: 0 }
  return { mean: sum / all, sd: Math.sqrt(Math.max(0, square / all - (sum / all) ** 2)) }
}

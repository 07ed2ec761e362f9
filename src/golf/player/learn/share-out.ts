import { normalCdf, normalQuantile } from '#numbers/statistics/normal.ts'
import { MISHIT_DIRECTION_FACTOR } from '../settings.ts'
import { STRAY, STRAY_RUN, TOPPED_CARRY_SHARE } from './learn-settings.ts'
import type { LieEffects } from './lie-of-shots.ts'
import type { ClubObservations, WayColumns } from './observations.ts'
import { mishitFrom, type SideShares } from './pattern-likelihood.ts'
import { AT } from './pattern-prior.ts'
import { type StrikesNow, shareOutWaysInto } from './share-out-ways.ts'
import { addCarry, addLies, clearStrikes, type StrikeSums, type Strikes } from './strike-sums.ts'

/** What is held of a club while its shots are shared out. */
export interface ClubPattern {
  readonly numbers: Float64Array
  /** Place of the club in `numbers`. */
  readonly at: number
  readonly run: number
  /** The same before any shot: strokes of a round were followed with it. */
  readonly firstRun: number
  /** How far carry swings with the year, as a share. */
  readonly swing: number
  readonly shares: SideShares
  /** Stock carry before any shot, metres: what strays and topped balls are measured by. */
  readonly firstCarry: number
  /** 1, or 0 where every shot is known to be one of this club and every run a plain one. */
  readonly strayFactor: 0 | 1
}

/**
 * Takes each shot for a good strike, a mishit or neither, by chance in proportion to how likely each is, fills in what
 * was not written down (the run under a total, how short a topped ball was) in the same way, and adds all up in `sums`.
 */
export function shareOutInto(
  sums: StrikeSums,
  { shots, runSd, mishitRunSd }: ClubObservations,
  effects: readonly LieEffects[],
  pattern: ClubPattern,
  uniform: () => number,
): void {
  clearStrikes(sums)
  const { numbers, at, swing, shares, firstCarry } = pattern
  const strayRunShare = STRAY_RUN.share * pattern.strayFactor
  const carry = Math.exp(numbers[at + AT.carry] as number)
  const carrySd = carry * Math.exp(numbers[at + AT.carrySd] as number)
  const mishitCarry = Math.exp(numbers[at + AT.mishitCarry] as number)
  const mishitSd = carry * Math.exp(numbers[at + AT.mishitCarrySd] as number)
  const directionSd = Math.exp(numbers[at + AT.directionSd] as number)
  const side = Math.exp(numbers[at + AT.side] as number)
  const left = shares.left * side
  const right = shares.right / side
  const mishitShare = 1 / (1 + Math.exp(-(numbers[at + AT.mishit] as number)))
  const topped = TOPPED_CARRY_SHARE * firstCarry
  const strayCarry = 1 / (STRAY.mostCarryShare * firstCarry)

  const strayRunDensity = strayRunShare / STRAY_RUN.metres
  const spread = directionSd * (left + right)
  const asNow: StrikesNow = {
    ...{ carry, carrySd, mishitCarry, mishitSd, mishitShare, left, right, swing },
    directionSd,
    longerRun: pattern.run - pattern.firstRun,
    strayDensity: STRAY.share * pattern.strayFactor * (strayCarry / STRAY.degrees),
    strayOfCarry: STRAY.share * pattern.strayFactor * strayCarry,
  }
  for (let k = 0; k < shots.count; k++) {
    const ways = shots.ways[k] as WayColumns | null
    if (ways !== null) {
      shareOutWaysInto(sums, shots, k, ways, effects, asNow, uniform)
      continue
    }
    const lieOfShot = shots.lie[k] as number
    const lie = effects[lieOfShot] as LieEffects
    const season = shots.season[k] as number
    const weight = shots.weight[k] as number
    const said = shots.said[k] as number
    const written = (shots.carry[k] as number) / lie.own
    const direction = shots.direction[k] as number
    const run = shots.run[k] as number
    const goodMean = carry * (1 + swing * season)
    const goodSd = carrySd * lie.distance
    const mishitMean = carry * (mishitCarry + swing * season)
    const toppedHere = topped / lie.own
    const isTopped = written < toppedHere
    const isTotal = Number.isNaN(written)
    const mishit = mishitFrom(mishitShare, lie.mishit)

    let good = isTopped || said === SAID_MISHIT ? 0 : 1 - mishit
    let poor = said === SAID_GOOD ? 0 : mishit
    let stray = STRAY.share * pattern.strayFactor * strayCarry * (isTopped ? topped : 1)
    // Exponents of the carry's and the direction's normal curves are added before they are raised.
    let goodExponent = 0
    let poorExponent = 0
    if (isTopped) poor *= normalCdf((toppedHere - mishitMean) / mishitSd)
    else {
      // Where only the total is known, carry and run both err.
      const seen = isTotal ? ((shots.total[k] as number) - pattern.run) / lie.carry : written
      const goodCarrySd = isTotal ? Math.hypot(goodSd, runSd / lie.carry) : goodSd
      const poorCarrySd = isTotal ? Math.hypot(mishitSd, mishitRunSd / lie.carry) : mishitSd
      goodExponent = ((seen - goodMean) / goodCarrySd) ** 2
      poorExponent = ((seen - mishitMean) / poorCarrySd) ** 2
      good /= goodCarrySd * ROOT_TWO_PI
      poor /= poorCarrySd * ROOT_TWO_PI
    }
    const hasDirection = !Number.isNaN(direction)
    if (hasDirection) {
      const squared = (direction / lie.direction) ** 2
      const deviate = squared / (directionSd * (direction < 0 ? left : right)) ** 2
      const height = TWO_OVER_ROOT_TWO_PI / (spread * lie.direction)
      goodExponent += deviate
      poorExponent += deviate / MISHIT_WIDE
      good *= height
      poor *= height / MISHIT_DIRECTION_FACTOR
      stray /= STRAY.degrees
    }
    good *= Math.exp(-0.5 * goodExponent)
    poor *= Math.exp(-0.5 * poorExponent)
    const hasRun = !Number.isNaN(run)
    let goodRun = 1
    let poorRun = 1
    if (hasRun) {
      goodRun = runDensity(run - pattern.run, runSd, strayRunShare)
      poorRun = runDensity(run - pattern.run, mishitRunSd, strayRunShare)
      good *= goodRun
      poor *= poorRun
      stray /= STRAY_RUN.metres
    }

    const place = uniform() * (good + poor + stray)
    if (place >= good + poor) {
      sums.strays += weight
      continue
    }
    const isGood = place < good
    const ownRunSd = isGood ? runSd : mishitRunSd
    const isPlainRun =
      hasRun && (strayRunDensity === 0 || uniform() * (isGood ? goodRun : poorRun) >= strayRunDensity)
    let carried = written
    let ran = run
    if (isTotal) {
      const sd = (isGood ? goodSd : mishitSd) * lie.carry
      const mean = (isGood ? goodMean : mishitMean) * lie.carry
      ran = runUnder(shots.total[k] as number, { mean, sd }, { mean: pattern.run, sd: ownRunSd }, uniform())
      carried = ((shots.total[k] as number) - ran) / lie.carry
    } else if (isTopped) {
      const below = normalCdf((toppedHere - mishitMean) / mishitSd)
      carried = mishitMean + mishitSd * normalQuantile(inside(uniform() * below))
    }
    const ofLie = sums.lies[lieOfShot] as Strikes
    addCarry(isGood ? ofLie.good : ofLie.mishit, carried * lie.own, season, weight)
    if (hasDirection) {
      const scaled = weight * (isGood ? direction ** 2 : direction ** 2 / MISHIT_WIDE)
      ofLie.directions += weight
      if (direction < 0) ofLie.left += scaled
      else ofLie.right += scaled
    }
    if (isPlainRun || isTotal) {
      sums.runPrecision += weight / ownRunSd ** 2
      sums.runSum += (weight * ran) / ownRunSd ** 2
    }
  }
  addLies(sums, effects)
}

const SAID_GOOD = 1
const SAID_MISHIT = 2
const MISHIT_WIDE = MISHIT_DIRECTION_FACTOR ** 2
const ROOT_TWO_PI = Math.sqrt(2 * Math.PI)
const TWO_OVER_ROOT_TWO_PI = 2 / ROOT_TWO_PI

interface Normal {
  readonly mean: number
  readonly sd: number
}

/** A run drawn where only the sum of carry and run is known: each takes of the surplus the part of its own variance. */
function runUnder(total: number, carry: Normal, run: Normal, share: number): number {
  const part = run.sd ** 2 / (run.sd ** 2 + carry.sd ** 2)
  const surplus = total - carry.mean - run.mean
  return run.mean + part * surplus + carry.sd * Math.sqrt(part) * normalQuantile(inside(share))
}

function runDensity(off: number, sd: number, strayShare: number): number {
  return (1 - strayShare) * normalDensity(off, sd) + strayShare / STRAY_RUN.metres
}

function normalDensity(off: number, sd: number): number {
  const z = off / sd
  return Math.exp(-0.5 * z * z) / (sd * ROOT_TWO_PI)
}

/** A uniform number that a quantile can be asked for. */
function inside(share: number): number {
  return Math.min(1 - 1e-15, Math.max(1e-300, share))
}

import { MISHIT_DIRECTION_FACTOR } from '../settings.ts'
import type { LieEffects } from './lie-of-shots.ts'
import type { ShotColumns, WayColumns } from './observations.ts'
import { mishitFrom } from './pattern-likelihood.ts'
import { addCarry, type StrikeSums, type Strikes } from './strike-sums.ts'

/** What is held of a club's strikes: metres, shares and degrees. */
export interface StrikesNow {
  readonly carry: number
  readonly carrySd: number
  readonly mishitCarry: number
  readonly mishitSd: number
  readonly mishitShare: number
  readonly directionSd: number
  readonly left: number
  readonly right: number
  readonly swing: number
  /** Metres that the stock run is longer than it was before any shot. */
  readonly longerRun: number
  /** Chance of a stray by the metre and degree, and by the metre where no direction is known. */
  readonly strayDensity: number
  readonly strayOfCarry: number
}

/**
 * Takes a stroke of which only the end is known for one of the ways in which it may have been struck, good or mishit, by
 * chance in proportion to how likely each is: the same sharing out, with one more thing filled in. What it says of the
 * run is left out, since a rest on a hole does not tell carry and run apart.
 */
export function shareOutWaysInto(
  sums: StrikeSums,
  shots: ShotColumns,
  k: number,
  ways: WayColumns,
  effects: readonly LieEffects[],
  now: StrikesNow,
  uniform: () => number,
): void {
  const lie = effects[shots.lie[k] as number] as LieEffects
  const season = shots.season[k] as number
  const weight = shots.weight[k] as number
  const count = ways.carry.length
  const chances = room(2 * count)
  const goodMean = now.carry * (1 + now.swing * season)
  const goodSd = now.carrySd * lie.distance
  const mishitMean = now.carry * (now.mishitCarry + now.swing * season)
  const mishit = mishitFrom(now.mishitShare, lie.mishit)
  // Heights of the curves; constants that all share are left out but for the strays.
  const directionHeight = 2 / (now.directionSd * (now.left + now.right) * lie.direction)
  const goodHeight = ((1 - mishit) * directionHeight) / goodSd / TWO_PI
  const mishitHeight = ((mishit / MISHIT_DIRECTION_FACTOR) * directionHeight) / now.mishitSd / TWO_PI
  const lineless = TWO_PI / (directionHeight * ROOT_TWO_PI)
  let all = 0
  let stray = 0
  for (let way = 0; way < count; way++) {
    const carry = carryOf(ways, way, lie, now)
    const direction = ways.direction[way] as number
    const ifGood = ways.ifGood[way] as number
    const ifMishit = ways.ifMishit[way] as number
    const hasLine = !Number.isNaN(direction)
    const side = now.directionSd * lie.direction * (direction < 0 ? now.left : now.right)
    const deviate = hasLine ? (direction / side) ** 2 : 0
    const goodOff = ((carry - goodMean) / goodSd) ** 2
    const mishitOff = ((carry - mishitMean) / now.mishitSd) ** 2
    const scale = hasLine ? 1 : lineless
    const good = scale * ifGood * goodHeight * Math.exp(-0.5 * (goodOff + deviate))
    const factor = hasLine ? 1 : MISHIT_DIRECTION_FACTOR
    const poor =
      scale * factor * ifMishit * mishitHeight * Math.exp(-0.5 * (mishitOff + deviate / MISHIT_WIDE))
    chances[2 * way] = good
    chances[2 * way + 1] = poor
    all += good + poor
    stray += ((ifGood + ifMishit) / 2) * (hasLine ? now.strayDensity : now.strayOfCarry)
  }
  let left = uniform() * (all + stray)
  let picked = -1
  for (let at = 0; at < 2 * count && left >= 0; at++) {
    left -= chances[at] as number
    if (left < 0) picked = at
  }
  if (picked < 0) {
    sums.strays += weight
    return
  }
  const way = picked >> 1
  const isGood = picked % 2 === 0
  const ofLie = sums.lies[shots.lie[k] as number] as Strikes
  addCarry(isGood ? ofLie.good : ofLie.mishit, carryOf(ways, way, lie, now) * lie.own, season, weight)
  const direction = ways.direction[way] as number
  if (Number.isNaN(direction)) return
  const scaled = weight * (isGood ? direction ** 2 : direction ** 2 / MISHIT_WIDE)
  ofLie.directions += weight
  if (direction < 0) ofLie.left += scaled
  else ofLie.right += scaled
}

function carryOf(ways: WayColumns, way: number, { own }: LieEffects, { longerRun }: StrikesNow): number {
  return ((ways.carry[way] as number) - (ways.perRun[way] as number) * longerRun) / own
}

let chancesRoom = new Float64Array(256)

/** Scratch that grows: sharing out is done over and over. */
function room(size: number): Float64Array {
  if (chancesRoom.length < size) chancesRoom = new Float64Array(2 * size)
  return chancesRoom
}

const MISHIT_WIDE = MISHIT_DIRECTION_FACTOR ** 2
const TWO_PI = 2 * Math.PI
const ROOT_TWO_PI = Math.sqrt(TWO_PI)

import { type LieEffect, lieEffect } from '#golf/player/lie-effects.ts'
import { MISHIT_DIRECTION_FACTOR } from '#golf/player/settings.ts'
import { LEVEL_STANCE, type StanceEffect, stanceEffect } from '#golf/player/stance.ts'
import { splitNormalQuantile } from '#numbers/statistics/split-normal.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import { LEAST_MISHIT_CARRY_SHARE } from './settings.ts'
import type { ShotTableInput } from './shot-table.ts'

/** Where the strikes of a shot from a lie go, whatever its heading. */
export interface StruckStrikes {
  /** Off the line, radians, right positive. */
  readonly offLine: Float64Array
  /** Metres. */
  readonly carry: Float64Array
  readonly mishitShare: number
}

/** The strikes of a shot from a lie with what all its headings share: it is laid out once for all of them. */
export interface StrikePattern extends StruckStrikes {
  readonly offSine: Float64Array
  readonly offCosine: Float64Array
  /** Chance of each strike; they add up to 1. */
  readonly weight: Float64Array
  /** Backspin of a landing as a share of the stock shot's. */
  readonly spin: number
  /** What the slope under the feet adds to the launch, and how far it turns the start to the right, radians. */
  readonly launch: number
  readonly turn: number
}

type PatternInput = Pick<ShotTableInput, 'shot' | 'lie' | 'sit' | 'stance' | 'player' | 'today' | 'strikes'>

/**
 * Lays out the strikes of a shot: good ones have the club's own spread to each side; a mishit is shorter and wider. A club
 * that is never mishit has good ones only: nothing times the cost of a place from which no ball gets home is no number.
 */
export function strikePattern(input: PatternInput): StrikePattern {
  const { shot, strikes } = input
  const { stock } = shot
  const { effect, slope } = shared(input)
  const sd = degreesToRadians(stock.directionSdDegrees) * effect.direction * slope.direction
  const mishitShare = Math.min(stock.mishitShare * effect.mishit * slope.mishit, 0.9)
  const count = mishitShare > 0 ? strikes.count : strikes.goodCount
  const offLine = new Float64Array(count)
  const carry = new Float64Array(count)
  for (let k = 0; k < count; k++) {
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
  return laid({ offLine, carry, mishitShare }, strikes.goodCount, effect.spin, slope)
}

/** The pattern of strikes that go where they are said to. */
export function patternOf(input: PatternInput, struck: StruckStrikes): StrikePattern {
  const { effect, slope } = shared(input)
  return laid(struck, input.strikes.goodCount, effect.spin, slope)
}

/** What the lie and the slope under the feet do to all strikes. */
function shared({ shot, lie, sit, stance, player, today }: PatternInput): {
  readonly effect: LieEffect
  readonly slope: StanceEffect
} {
  return {
    effect: lieEffect(lie, shot.stock.name, player, { sit, rough: today.rough }),
    slope: stance ? stanceEffect(stance, shot.loftDegrees, player.hand) : LEVEL_STANCE,
  }
}

function laid(
  struck: StruckStrikes,
  goodCount: number,
  spin: number,
  { launch, turn }: Pick<StanceEffect, 'launch' | 'turn'>,
): StrikePattern {
  const { offLine, mishitShare } = struck
  const weight = new Float64Array(offLine.length)
  weight.fill((1 - mishitShare) / goodCount, 0, goodCount)
  weight.fill(mishitShare / (offLine.length - goodCount), goodCount)
  return {
    ...struck,
    offSine: offLine.map(Math.sin),
    offCosine: offLine.map(Math.cos),
    weight,
    spin,
    launch,
    turn,
  }
}

import { lieEffect } from '#golf/player/lie-effects.ts'
import { MISHIT_DIRECTION_FACTOR } from '#golf/player/settings.ts'
import { LEVEL_STANCE, stanceEffect } from '#golf/player/stance.ts'
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

/** Lays out the strikes of a shot: good ones have the club's own spread to each side; a mishit is shorter and wider. */
export function strikePattern(input: PatternInput): StrikePattern {
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
  const mishitShare = Math.min(stock.mishitShare * effect.mishit * slope.mishit, 0.9)
  return patternOf(input, { offLine, carry, mishitShare })
}

/** The pattern of strikes that go where they are said to. */
export function patternOf(input: PatternInput, struck: StruckStrikes): StrikePattern {
  const { shot, sit, stance, strikes, today } = input
  const { mishitShare, offLine } = struck
  const slope = stance ? stanceEffect(stance, shot.loftDegrees, input.player.hand) : LEVEL_STANCE
  const weight = new Float64Array(strikes.count)
  weight.fill((1 - mishitShare) / strikes.goodCount, 0, strikes.goodCount)
  weight.fill(mishitShare / (strikes.count - strikes.goodCount), strikes.goodCount)
  return {
    ...struck,
    offSine: offLine.map(Math.sin),
    offCosine: offLine.map(Math.cos),
    weight,
    spin: lieEffect(input.lie, shot.stock.name, input.player, { sit, rough: today.rough }).spin,
    launch: slope.launch,
    turn: slope.turn,
  }
}

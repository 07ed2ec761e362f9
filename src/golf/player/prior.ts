import { monotoneCubic } from '#numbers/statistics/monotone-cubic.ts'
import { metresToYards, yardsToMetres } from '#numbers/units/units.ts'
import type { ClubKind } from './club-names.ts'
import { interpolateKnots } from './interpolate-knots.ts'
import type { Club, Player } from './player.ts'
import {
  ADULT_AGE,
  BOGEY_HANDICAP,
  BOGEY_HANDICAP_WOMEN,
  CARRY_SD_BY_LOFT,
  CARRY_SD_SHARE,
  DIRECTION_BY_LOFT_BOGEY,
  DIRECTION_BY_LOFT_SCRATCH,
  DRIVE_DIRECTION_SD_DEGREES,
  DRIVE_TOTAL_YARDS_MEN,
  DRIVE_TOTAL_YARDS_WOMEN,
  HANDICAP_RANGE,
  JUNIOR_LENGTH_BOYS,
  JUNIOR_LENGTH_GIRLS,
  LADDER_EXPONENT_RANGE,
  LADDER_REFERENCE_CARRY_METRES,
  LADDER_SQUEEZE_PER_HALVING,
  type LoftKnot,
  MEN_SHARE_WHEN_UNSTATED,
  MISHIT_BY_LOFT,
  MISHIT_CARRY_SD_SHARE,
  MISHIT_CARRY_SHARE,
  MISHIT_CARRY_SHARE_RANGE,
  MISHIT_DIRECTION_FACTOR,
  MISHIT_SHARE,
  MISHIT_SHARE_RANGE,
  RUN_MOST_SHARE,
  RUN_YARDS_BY_LOFT,
  WOMEN_CARRY_SD_BY_LOFT,
  WOMEN_DIRECTION_BY_LOFT,
} from './settings.ts'

/** The numbers of a club's pattern that the prior gives without knowing its carry. */
export type PriorPattern = Pick<
  Club,
  | 'directionSdDegrees'
  | 'leftShare'
  | 'rightShare'
  | 'curveShare'
  | 'carrySdShare'
  | 'mishitShare'
  | 'mishitCarryShare'
  | 'mishitCarrySdShare'
>

/** Pattern of a club expected of an unknown player of this handicap index: no curve, no big-miss side. */
export function priorPattern(kind: ClubKind, handicapIndex: number, sex: Player['sex']): PriorPattern {
  const handicap = skillHandicap(handicapIndex, sex)
  const loft = kind.loftDegrees
  const mishitShare = clamp(
    lineAt(MISHIT_SHARE, handicap) * interpolateKnots(MISHIT_BY_LOFT, loft),
    MISHIT_SHARE_RANGE,
  )
  const towardsBogey = smoothStep(handicap / BOGEY_HANDICAP)
  const byLoft =
    (1 - towardsBogey) * interpolateKnots(DIRECTION_BY_LOFT_SCRATCH, loft) +
    towardsBogey * interpolateKnots(DIRECTION_BY_LOFT_BOGEY, loft)
  return {
    directionSdDegrees:
      goodStrikeDirectionSd(lineAt(DRIVE_DIRECTION_SD_DEGREES, handicap), mishitShare) *
      byLoft *
      forWomen(WOMEN_DIRECTION_BY_LOFT, loft, sex),
    leftShare: 1,
    rightShare: 1,
    curveShare: 0,
    carrySdShare:
      lineAt(CARRY_SD_SHARE, handicap) *
      interpolateKnots(CARRY_SD_BY_LOFT, loft) *
      forWomen(WOMEN_CARRY_SD_BY_LOFT, loft, sex),
    mishitShare,
    mishitCarryShare: clamp(lineAt(MISHIT_CARRY_SHARE, handicap), MISHIT_CARRY_SHARE_RANGE),
    mishitCarrySdShare: lineAt(MISHIT_CARRY_SD_SHARE, handicap),
  }
}

/** The man's handicap index of the same skill: a woman's index is larger because her holes play longer for her. */
export function skillHandicap(handicapIndex: number, sex: Player['sex']): number {
  const handicap = clamp(handicapIndex, HANDICAP_RANGE)
  return sex === 'female' && handicap > 0 ? (handicap * BOGEY_HANDICAP) / BOGEY_HANDICAP_WOMEN : handicap
}

/** Who a prior is about, beside the handicap index. */
export type Who = Pick<Player, 'sex' | 'age'>

/**
 * Expected mean total of all drives, metres, mishits included, by the published bands; under 18 the part of it that
 * the age allows. Unstated sex: the men's and the women's line weighted by how many golfers are men.
 */
export function priorDriveTotal(handicapIndex: number, who: Who): number {
  const menShare = menShareOf(who.sex)
  return (
    juniorShare(who, menShare) *
    yardsToMetres(
      menShare * monotoneCubic(DRIVE_TOTAL_YARDS_MEN, handicapIndex) +
        (1 - menShare) * monotoneCubic(DRIVE_TOTAL_YARDS_WOMEN, handicapIndex),
    )
  )
}

function juniorShare({ age }: Who, menShare: number): number {
  if (age === undefined || age >= ADULT_AGE) return 1
  return (
    menShare * monotoneCubic(JUNIOR_LENGTH_BOYS, age) +
    (1 - menShare) * monotoneCubic(JUNIOR_LENGTH_GIRLS, age)
  )
}

function menShareOf(sex: Player['sex']): number {
  return sex === 'male' ? 1 : sex === 'female' ? 0 : MEN_SHARE_WHEN_UNSTATED
}

/** A factor on men's numbers, in the part in which the player is a woman. */
function forWomen(factor: readonly LoftKnot[], loft: number, sex: Player['sex']): number {
  const menShare = menShareOf(sex)
  return menShare + (1 - menShare) * interpolateKnots(factor, loft)
}

/**
 * Stock carry of the driver, metres: what good strikes must carry so that all drives, mishits among them, average
 * the published total.
 */
export function priorDriverCarry(driver: ClubKind, handicapIndex: number, who: Who): number {
  const { mishitShare, mishitCarryShare } = priorPattern(driver, handicapIndex, who.sex)
  const meanTotal = priorDriveTotal(handicapIndex, who)
  // Run depends on the carry where it is capped: a few rounds settle it.
  let carry = meanTotal
  for (let round = 0; round < 20; round += 1) {
    carry = (meanTotal - priorRun(driver, carry)) / (1 - mishitShare * (1 - mishitCarryShare))
  }
  return carry
}

/** Run of a stock shot of this carry on a level normal fairway, metres. */
export function priorRun(kind: ClubKind, carryMetres: number): number {
  const yards = Math.min(
    interpolateKnots(RUN_YARDS_BY_LOFT, kind.loftDegrees),
    RUN_MOST_SHARE * metresToYards(carryMetres),
  )
  return yardsToMetres(yards)
}

/** Carry of a club, metres, for a player whose driver carries `driverCarryMetres`: the ladder, squeezed for a slow swing. */
export function ladderCarry(kind: ClubKind, driverCarryMetres: number): number {
  const halvings = Math.log2(LADDER_REFERENCE_CARRY_METRES / driverCarryMetres)
  const exponent = clamp(1 - LADDER_SQUEEZE_PER_HALVING * halvings, LADDER_EXPONENT_RANGE)
  return driverCarryMetres * kind.carryShare ** exponent
}

/** Driver carry, metres, at which this club of the ladder carries `carryMetres`; found by bisection. */
export function driverCarryFromClub(kind: ClubKind, carryMetres: number): number {
  let low = carryMetres * 0.5
  let high = carryMetres * 8
  for (let step = 0; step < 80; step += 1) {
    const middle = (low + high) / 2
    if (ladderCarry(kind, middle) < carryMetres) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/** Handicap index at which the prior's driver carries this far, metres, found by bisection; ends of the range beyond it. */
export function handicapFromDriverCarry(driver: ClubKind, driverCarryMetres: number, who: Who): number {
  let [low, high] = HANDICAP_RANGE
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2
    if (priorDriverCarry(driver, middle, who) > driverCarryMetres) low = middle
    else high = middle
  }
  return Math.round(low * 10) / 10
}

/** Published spreads are of all shots; the good strike's is smaller because mishits are wider. */
function goodStrikeDirectionSd(allShotsSd: number, mishitShare: number): number {
  return allShotsSd / Math.sqrt(1 + mishitShare * (MISHIT_DIRECTION_FACTOR ** 2 - 1))
}

function lineAt(line: { readonly atScratch: number; readonly perStroke: number }, handicap: number): number {
  return line.atScratch + line.perStroke * handicap
}

function clamp(value: number, [low, high]: readonly [number, number]): number {
  return Math.min(high, Math.max(low, value))
}

/** From 0 to 1 with a level start and a level end, so that no number kinks where its line begins or ends. */
function smoothStep(share: number): number {
  const held = clamp(share, [0, 1])
  return held * held * (3 - 2 * held)
}

import { REFERENCE_DAY } from '#golf/course/day.ts'
import type { Club, Lie, Player } from '#golf/player/player.ts'
import { STROKE_QUADRATURE } from './settings.ts'
import { type Shot, shotsOf } from './shots.ts'
import { strikePattern } from './strike-pattern.ts'
import { strikesOf } from './strikes.ts'

/** Where one club's balls come down on a level range without wind. */
export interface BagPattern {
  readonly club: Club
  /** Landings, metres right of the line and along it, with chances that add up to 1; good strikes come first. */
  readonly x: Float64Array
  readonly y: Float64Array
  readonly weight: Float64Array
  readonly goodCount: number
}

/** Patterns of a player's whole swings from the fairway, longest club first. */
export function bagPatterns(player: Player): readonly BagPattern[] {
  return (
    shotsOf(player)
      .filter(({ shape }) => shape === 'stock')
      // The big clubs are stroked from a tee, and what is drawn is the club and not the lie.
      .map((shot) => patternOf(shot, 'tee', player))
  )
}

/** The pattern of one club from a lie; to where balls stop when `isTotal`. `null` for a club the player does not have. */
export function clubPattern(player: Player, club: string, lie: Lie, isTotal: boolean): BagPattern | null {
  const shot = shotsOf(player).find((one) => one.club === club && one.shape === 'stock')
  if (shot === undefined) return null
  const run = Math.max(0, shot.stock.totalMetres - shot.stock.carryMetres)
  return patternOf(shot, lie, player, isTotal ? run : 0)
}

function patternOf(shot: Shot, lie: Lie, player: Player, runMetres = 0): BagPattern {
  const strikes = strikesOf(STROKE_QUADRATURE)
  const { firmness, greenSpeedFeet, rough } = REFERENCE_DAY
  const today = { firmness, greenSpeedFeet, rough }
  const { offSine, offCosine, carry, weight } = strikePattern({ shot, lie, player, today, strikes })
  const length = carry.map((metres) => metres + runMetres)
  return {
    club: shot.stock,
    x: length.map((metres, k) => metres * (offSine[k] as number)),
    y: length.map((metres, k) => metres * (offCosine[k] as number)),
    weight,
    goodCount: strikes.goodCount,
  }
}

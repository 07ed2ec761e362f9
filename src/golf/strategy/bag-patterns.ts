import { REFERENCE_DAY } from '#golf/course/day.ts'
import type { Club, Player } from '#golf/player/player.ts'
import { STROKE_QUADRATURE } from './settings.ts'
import { strikePattern } from './shot-table.ts'
import { shotsOf } from './shots.ts'
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
  const strikes = strikesOf(STROKE_QUADRATURE)
  const { firmness, greenSpeedFeet, rough } = REFERENCE_DAY
  return shotsOf(player)
    .filter(({ shape }) => shape === 'stock')
    .map((shot) => {
      const pattern = strikePattern({
        shot,
        // The big clubs are stroked from a tee, and what is drawn is the club and not the lie.
        lie: 'tee',
        player,
        today: { firmness, greenSpeedFeet, rough },
        strikes,
      })
      const { offLine, carry, mishitShare } = pattern
      const mishits = strikes.count - strikes.goodCount
      return {
        club: shot.stock,
        x: carry.map((metres, k) => metres * Math.sin(offLine[k] as number)),
        y: carry.map((metres, k) => metres * Math.cos(offLine[k] as number)),
        weight: carry.map((_, k) =>
          k < strikes.goodCount ? (1 - mishitShare) / strikes.goodCount : mishitShare / mishits,
        ),
        goodCount: strikes.goodCount,
      }
    })
}

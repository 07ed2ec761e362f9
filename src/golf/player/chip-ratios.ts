import { greenSlowing } from '#golf/ball/green-slowing.ts'
import { LADDER_GREEN_SPEED_FEET } from './short-game-settings.ts'
import { type ShortShotPlayer, shortShots } from './short-shots.ts'

/** How a chip with one club divides its way. */
export interface ChipRatio {
  readonly club: string
  /** Roll for each metre of carry. */
  readonly rollPerCarry: number
}

/**
 * The chips of a player from mown grass that land on a level green of this speed, most roll first. A ball begins to roll as
 * fast as on the ladder's green and is slowed by this one, so the roll grows with the reading of the ramp.
 */
export function chipRatios(player: ShortShotPlayer, greenSpeedFeet: number): ChipRatio[] {
  const today = greenSlowing(LADDER_GREEN_SPEED_FEET) / greenSlowing(greenSpeedFeet)
  return shortShots(player, 'fairway')
    .filter(({ kind }) => kind === 'chip')
    .map(({ club, rollPerCarry }) => ({ club, rollPerCarry: rollPerCarry * today }))
}

import { greenSlowing } from '#golf/ball/green-slowing.ts'
import { simulateRoll } from '#golf/ball/simulate-roll.ts'
import { clubKind } from './club-names.ts'
import type { Lie, Player } from './player.ts'
import { LADDER_GREEN_SPEED_FEET, LADDER_PAST_METRES } from './short-game-settings.ts'
import { shortShots } from './short-shots.ts'

/** A chip with its landing spot given: what a teacher asks beside the green. */
export interface LandingQuestion {
  /** From the ball to the landing spot, and from there to the hole, metres. */
  readonly carryMetres: number
  readonly rollMetres: number
  /** Rise of the green from the landing spot to the hole, metres in a hundred; downhill is negative. */
  readonly risePercent: number
  readonly greenSpeedFeet: number
  /** Absent = fairway. */
  readonly lie?: Lie
}

/** What one club does from that landing spot. */
export interface LandedClub {
  readonly club: string
  readonly loftDegrees: number
  readonly rollMetres: number
  /** Where it stops against the hole, metres past it. */
  readonly pastMetres: number
}

/**
 * The chips of a player that land on this spot, the one that stops nearest to a little past the hole first. The speed at
 * which a ball begins to roll is the ladder's, whatever the green; slope and speed of the green do the rest. So with the
 * landing spot unchanged an uphill or slow green asks for less loft, and a downhill or fast one for more (common practice).
 * Empty when the player chips with no club from the lie.
 */
export function clubForLanding(
  player: Pick<Player, 'clubs' | 'putting' | 'shortGame'>,
  question: LandingQuestion,
): LandedClub[] {
  const { carryMetres, rollMetres, risePercent, greenSpeedFeet, lie = 'fairway' } = question
  const slope = { gradientAt: (): readonly [number, number] => [0, risePercent / 100] }
  return shortShots(player, lie)
    .filter(({ kind }) => kind === 'chip')
    .map(({ club, rollPerCarry }): LandedClub => {
      const speed = Math.sqrt(2 * greenSlowing(LADDER_GREEN_SPEED_FEET) * rollPerCarry * carryMetres)
      const start = { x: 0, y: 0, headingRadians: 0, speed }
      const rolls = simulateRoll(start, slope, greenSlowing(greenSpeedFeet)).y
      return {
        club,
        loftDegrees: clubKind(club)?.loftDegrees ?? 0,
        rollMetres: rolls,
        pastMetres: rolls - rollMetres,
      }
    })
    .sort((a, b) => Math.abs(a.pastMetres - LADDER_PAST_METRES) - Math.abs(b.pastMetres - LADDER_PAST_METRES))
}

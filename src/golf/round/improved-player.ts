import { clubKind } from '#golf/player/club-names.ts'
import type { Club, Player } from '#golf/player/player.ts'
import { puttingDistance } from '#golf/player/putting-distance.ts'
import { puttingValues } from '#golf/player/putting-values.ts'
import { shortGameValue } from '#golf/player/short-game-values.ts'
import { LONG_CLUB_MOST_LOFT_DEGREES, USUAL_CHIP_METRES } from './settings.ts'

/** A part of a player's profile that practice can make better. */
export const PRACTICE_PARTS = [
  'long-direction',
  'iron-direction',
  'iron-distance',
  'mishits',
  'short-game',
  'putting-line',
  'putting-pace',
] as const
export type PracticePart = (typeof PRACTICE_PARTS)[number]

/** The player with one part of the profile better by a share (0.1 = a tenth less spread, fewer mishits, fewer strokes lost). */
export function improvedPlayer(player: Player, part: PracticePart, share: number): Player {
  const left = 1 - share
  const withClubs = (isMeant: (club: Club) => boolean, better: (club: Club) => Partial<Club>): Player => ({
    ...player,
    clubs: player.clubs.map((club) => (isMeant(club) ? { ...club, ...better(club) } : club)),
  })
  const direction = ({ directionSdDegrees }: Club): Partial<Club> => ({
    directionSdDegrees: directionSdDegrees * left,
  })
  switch (part) {
    case 'long-direction':
      return withClubs(isLong, direction)
    case 'iron-direction':
      return withClubs((club) => !isLong(club), direction)
    case 'iron-distance':
      return withClubs(
        (club) => !isLong(club),
        ({ carrySdShare }) => ({ carrySdShare: carrySdShare * left }),
      )
    case 'mishits':
      return withClubs(
        () => true,
        ({ mishitShare }) => ({ mishitShare: mishitShare * left }),
      )
    case 'short-game':
      return { ...player, shortGame: betterShortGame(player.shortGame, left) }
    case 'putting-line':
      return withPutting(player, {
        ...player.putting,
        directionSdDegrees: player.putting.directionSdDegrees * left,
      })
    case 'putting-pace':
      return withPutting(player, {
        ...player.putting,
        distanceSdShare: player.putting.distanceSdShare * left,
      })
  }
}

function isLong({ name }: Club): boolean {
  const kind = clubKind(name)
  return kind !== null && kind.loftDegrees <= LONG_CLUB_MOST_LOFT_DEGREES
}

/** Spreads that were measured get better with the strokes lost; those that follow from the strokes lost do so by themselves. */
function betterShortGame(shortGame: Player['shortGame'], left: number): Player['shortGame'] {
  const { carrySdShare, directionSdDegrees, poorShare } = shortGame
  return {
    ...shortGame,
    // A player better than the tour average has nothing left to lose here.
    strokesLost: Math.max(0, shortGame.strokesLost) * left + Math.min(0, shortGame.strokesLost),
    ...(carrySdShare === undefined ? {} : { carrySdShare: carrySdShare * left }),
    ...(directionSdDegrees === undefined ? {} : { directionSdDegrees: directionSdDegrees * left }),
    ...(poorShare === undefined ? {} : { poorShare: poorShare * left }),
  }
}

/**
 * The player putting so. What a chip or pitch costs holds the putt after it: it gets cheaper by what that putt does, from the
 * distance at which the player's putts cost what a chip leaves.
 */
function withPutting(player: Player, putting: Player['putting']): Player {
  const before = puttingValues(player).expected
  const after = puttingValues({ putting }).expected
  const left = puttingDistance(player, shortGameValue(player, 'fairway', USUAL_CHIP_METRES) - 1)
  const { shortGame } = player
  return {
    ...player,
    putting,
    shortGame: { ...shortGame, strokesLost: shortGame.strokesLost - (before(left) - after(left)) },
  }
}

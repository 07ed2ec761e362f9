import { clubKind } from '#golf/player/club-names.ts'
import { STROKES_LOST_BY_LIE } from '#golf/player/near-green-settings.ts'
import type { Club, Player, Putting } from '#golf/player/player.ts'
import { puttingDistance } from '#golf/player/putting-distance.ts'
import { puttingValues } from '#golf/player/putting-values.ts'
import { shortGameValue } from '#golf/player/short-game-values.ts'
import { priorShortSpread } from '#golf/player/short-spread.ts'
import { CHIPS_OF_STROKES_LOST, LONG_CLUB_MOST_LOFT_DEGREES, USUAL_CHIP_METRES } from './settings.ts'

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

/**
 * Spreads get better as is expected of who loses so many strokes fewer; of these strokes only those are saved that the chip
 * itself lost, since the putts after it stay as they are.
 */
function betterShortGame(shortGame: Player['shortGame'], left: number): Player['shortGame'] {
  const { carrySdShare, directionSdDegrees, poorShare } = shortGame
  // A player better than the tour average has nothing left to lose here.
  const won = Math.max(0, shortGame.strokesLost) * (1 - left)
  const [before, after] = [
    priorShortSpread(shortGame.strokesLost),
    priorShortSpread(shortGame.strokesLost - won),
  ]
  const better = (of: 'carrySdShare' | 'directionSdDegrees' | 'poorShare'): number => after[of] / before[of]
  return {
    ...shortGame,
    strokesLost: shortGame.strokesLost - CHIPS_OF_STROKES_LOST * won,
    ...(carrySdShare === undefined ? {} : { carrySdShare: carrySdShare * better('carrySdShare') }),
    ...(directionSdDegrees === undefined
      ? {}
      : { directionSdDegrees: directionSdDegrees * better('directionSdDegrees') }),
    ...(poorShare === undefined ? {} : { poorShare: poorShare * better('poorShare') }),
  }
}

/**
 * The player putting so. What a chip or pitch costs holds the putt after it: it gets cheaper by what that putt does, from the
 * distance at which the player's putts cost what a chip leaves. Strokes lost grow with the lie and the saving does not, so it is
 * written down as from rough.
 */
function withPutting(player: Player, putting: Putting): Player {
  const before = puttingValues(player).expected
  const after = puttingValues({ putting }).expected
  const left = puttingDistance(player, shortGameValue(player, 'fairway', USUAL_CHIP_METRES) - 1)
  const saved = (before(left) - after(left)) / STROKES_LOST_BY_LIE.rough
  const { shortGame } = player
  return { ...player, putting, shortGame: { ...shortGame, strokesLost: shortGame.strokesLost - saved } }
}

import type { Club, Player } from './player.ts'
import { mirrorSaid } from './said.ts'

/** The same player in a mirror: other hand, left and right swapped, curve turned round. Twice is the player again. */
export function mirrorPlayer(player: Player): Player {
  return {
    ...player,
    hand: player.hand === 'right' ? 'left' : 'right',
    ...(player.said === undefined ? {} : { said: mirrorSaid(player.said) }),
    clubs: player.clubs.map(mirrorClub),
  }
}

function mirrorClub(club: Club): Club {
  return {
    ...club,
    leftShare: club.rightShare,
    rightShare: club.leftShare,
    curveShare: club.curveShare === 0 ? 0 : -club.curveShare,
  }
}

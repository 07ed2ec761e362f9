import type { Club, Player } from './player.ts'

/** The same player in a mirror: other hand, left and right shares swapped, curve turned round. Twice is the player again. */
export function mirrorPlayer(player: Player): Player {
  return { ...player, hand: player.hand === 'right' ? 'left' : 'right', clubs: player.clubs.map(mirrorClub) }
}

function mirrorClub(club: Club): Club {
  return {
    ...club,
    leftShare: club.rightShare,
    rightShare: club.leftShare,
    curveShare: club.curveShare === 0 ? 0 : -club.curveShare,
  }
}

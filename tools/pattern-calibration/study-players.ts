import { completePlayer } from '../../src/golf/player/complete-player.ts'
import type { Player } from '../../src/golf/player/player.ts'

/** From the longest to one of the shortest, two steps of the ladder apart. */
const CLUBS = ['driver', '5-wood', '5-iron', '7-iron', '9-iron', 'sand-wedge']

/** Who the simulated players are thought to be before they hit a shot. */
export function studyPlayers(): readonly Player[] {
  return [
    studyPlayer(0, 'male'),
    studyPlayer(10, 'female'),
    studyPlayer(20, 'male'),
    studyPlayer(36, 'female'),
  ]
}

function studyPlayer(handicapIndex: number, sex: Player['sex']): Player {
  return completePlayer({
    name: `index ${handicapIndex}`,
    hand: 'right',
    sex,
    handicapIndex,
    bag: 'as-listed',
    clubs: CLUBS.map((name) => ({ name, shots: 0, lies: {} })),
    shortGame: {},
    putting: {},
  })
}

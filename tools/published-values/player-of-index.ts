import { completePlayer } from '../../src/golf/player/complete-player.ts'
import type { Player } from '../../src/golf/player/player.ts'

/** A player of whom only index and sex are known. */
export function playerOfIndex(handicapIndex: number, sex: Player['sex'] = 'male'): Player {
  return completePlayer({
    name: 'x',
    hand: 'right',
    handicapIndex,
    sex,
    clubs: [],
    shortGame: {},
    putting: {},
  })
}

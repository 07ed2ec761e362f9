import { playerOfLevel } from '../../src/golf/player/level.ts'
import type { Player } from '../../src/golf/player/player.ts'

/** Who the simulated players are thought to be before they hit a shot. */
export function studyPlayers(): readonly Player[] {
  return [
    playerOfLevel('scratch', { sex: 'male' }),
    playerOfLevel('10', { sex: 'female' }),
    playerOfLevel('20', { sex: 'male' }),
    playerOfLevel('36', { sex: 'female' }),
  ]
}

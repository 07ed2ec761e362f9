import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import { area, box, inventedHole, inventedPlayer } from './invented-hole.fixture.ts'

/**
 * A short hole of our own with everything a rule of golf turns on: a red pond to the right, trees and sand to the
 * left, and a boundary all round that keeps the places a ball can be played from few.
 */
export function smallHole(lengthMetres: number, halfWidth: number): Hole {
  return inventedHole(lengthMetres, [
    area('fairway', box(-13.3, 11.9, 20.2, lengthMetres - 14)),
    area('penalty-red', box(12.1, 25.7, lengthMetres - 80.6, lengthMetres - 20.3)),
    area('bunker', box(-16.2, -5.7, lengthMetres - 66.3, lengthMetres - 50.1)),
    area('trees', box(-halfWidth, -16.8, lengthMetres - 90.4, lengthMetres - 52.2)),
    area('out', box(-300, -halfWidth, -100, 500), 'out left'),
    area('out', box(halfWidth, 300, -100, 500), 'out right'),
    area('out', box(-300, 300, -100, -8.9), 'out behind'),
    area('out', box(-300, 300, lengthMetres + 32.9, 500), 'out beyond'),
  ])
}

/** A club golfer with three clubs and nothing else. */
export function threeClubs(): Player {
  return inventedPlayer([
    { name: '8-iron', carry_m: 118, total_m: 124, left_share: 1.15, right_share: 0.85, curve_share: -0.03 },
    { name: 'pitching-wedge', carry_m: 92, total_m: 95 },
    { name: 'sand-wedge', carry_m: 61, total_m: 62 },
  ])
}

import type { Ground } from '#golf/course/ground.ts'
import type { Lie } from '#golf/player/player.ts'

/** The lie of a ball at rest on a ground: the ground itself, but a path and a tee played on from lie like fairway. Penalty areas and out of bounds have none. */
export function lieOfGround(ground: Ground): Lie | null {
  if (ground === 'out' || ground === 'penalty-red' || ground === 'penalty-yellow') return null
  return ground === 'path' || ground === 'tee' ? 'fairway' : ground
}

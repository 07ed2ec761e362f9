import type { Player } from './player.ts'
import { puttingValues } from './putting-values.ts'

const FURTHEST_METRES = 60
const HALVINGS = 40

/** Distance on a flat green from which this player needs so many putts, metres: 0 for one putt or fewer, at most 60. */
export function puttingDistance(player: Pick<Player, 'putting'>, putts: number): number {
  const { expected } = puttingValues(player)
  let [near, far] = [0, FURTHEST_METRES]
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (near + far) / 2
    if (expected(middle) < putts) near = middle
    else far = middle
  }
  return far
}

import { GROUND_CLASSES, type Ground, groundCode } from '#golf/course/ground.ts'
import type { ShortGamePlayer } from '#golf/player/short-game-values.ts'
import { lieOfGround } from '../lie-of-ground.ts'
import { nearValues } from './near-values.ts'
import { groundNumbers } from './short-game-grounds.ts'
import { GREEN, type ShortScene } from './short-scene.ts'

/** Of the way to the pin this much is green, but no more than the second figure in metres. Our assumption. */
const GREEN_OF_THE_WAY = 0.65
const GREEN_BEFORE_PIN_METRES = 12
const GREEN_BEYOND_PIN_METRES = 13
/** Fringe before it: this much of the way from the ball, at most so many metres. Our assumption. */
const COLLAR_OF_THE_WAY = 0.4
const MOST_COLLAR_METRES = 1.5

/**
 * A level plain green about a pin at the origin of the y axis, played to from `metres` short of it: the ground of the
 * ball up to a collar of fringe, green to both sides, rough beyond it.
 */
export function plainScene(
  player: ShortGamePlayer,
  ground: Ground,
  metres: number,
  day: { readonly greenSpeedFeet: number; readonly firmness: number },
): ShortScene {
  const worth = nearValues(player)
  const own = groundCode(ground)
  const rough = groundCode('rough')
  const fringe = groundCode('fringe')
  const edge = -Math.min(GREEN_OF_THE_WAY * metres, GREEN_BEFORE_PIN_METRES)
  const collar = Math.min(MOST_COLLAR_METRES, COLLAR_OF_THE_WAY * (metres + edge))
  const level: [number, number] = [0, 0]
  return {
    pin: [0, 0],
    here: worth(lieOfGround(ground) ?? 'rough', metres),
    codeAt: (_, y) =>
      y > GREEN_BEYOND_PIN_METRES ? rough : y >= edge ? GREEN : y >= edge - collar ? fringe : own,
    gradientAt: () => level,
    puttShares: () => level,
    ...groundNumbers(day),
    endCost: (_, x, y, code) => ({
      kept: worth(lieOfGround(GROUND_CLASSES[code] as Ground) ?? 'rough', Math.hypot(x, y)),
      back: 0,
    }),
  }
}

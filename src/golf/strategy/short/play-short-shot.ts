import { greenSlowing } from '#golf/ball/green-slowing.ts'
import {
  FAT_CARRY,
  FAT_SAND_CARRY,
  FAT_SHARE,
  LADDER_GREEN_SPEED_FEET,
  SHORT_METRES_FROM,
  THIN_CARRY,
  THIN_ROLL_FACTOR,
  THIN_SAND_CARRY,
} from '#golf/player/short-game-settings.ts'
import type { ShortShot } from '#golf/player/short-shots.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import { AT_REST } from '../outcome.ts'
import { endOf, type ShortRoll, shortRoll } from './short-roll.ts'
import type { ShortScene } from './short-scene.ts'
import type { ShortStrikes } from './short-strikes.ts'

/** What is meant: how far it should fly (a putt: roll on a level green of the ladder's speed), and where to. */
export interface ShortAim {
  readonly carryMetres: number
  /** Radians clockwise from the y axis. */
  readonly heading: number
}

/** One ball of a short shot: where it landed and where it ended. */
export interface ShortBall extends ShortRoll {
  readonly landX: number
  readonly landY: number
}

/** Square of the speed that rolls a metre on a level green of the ladder's speed, m/s². */
const LADDER_SLOWING = 2 * greenSlowing(LADDER_GREEN_SPEED_FEET)
/** Steps in which a flight is followed back to where it crossed an edge, metres. */
const BACK_STEP_METRES = 0.5

/** One ball that flies this far along this heading and would then roll so far on a level green of the ladder's speed. */
export function shortBall(
  scene: ShortScene,
  from: readonly [number, number],
  carry: number,
  heading: number,
  rollMetres: number,
  hasHole = true,
  path?: [number, number][],
): ShortBall {
  const landX = from[0] + carry * Math.sin(heading)
  const landY = from[1] + carry * Math.cos(heading)
  const code = scene.codeAt(landX, landY)
  const end = endOf(code)
  if (end !== AT_REST) {
    const [x, y] = crossing(scene, from, carry, heading)
    return { x, y, landX, landY, code, end, isHoled: false }
  }
  const keeps = carry > 0 ? (scene.landing[code] as number) : 1
  const speed = Math.sqrt(Math.max(0, LADDER_SLOWING * rollMetres * keeps))
  return { ...shortRoll(scene, landX, landY, heading, speed, hasHole, path), landX, landY }
}

/** Last playable place under a flight that comes down in a penalty area or out of bounds. */
function crossing(
  scene: ShortScene,
  [x, y]: readonly [number, number],
  carry: number,
  heading: number,
): [number, number] {
  for (let back = carry; back > 0; back -= BACK_STEP_METRES) {
    const atX = x + back * Math.sin(heading)
    const atY = y + back * Math.cos(heading)
    if (endOf(scene.codeAt(atX, atY)) === AT_REST) return [atX, atY]
  }
  return [x, y]
}

/** Balls of a shot and the chance of each. */
export interface PlayedShot {
  readonly balls: readonly ShortBall[]
  readonly weight: Float64Array
}

/** Plays every strike of a shot: good, fat and thin. */
export function playShortShot(
  scene: ShortScene,
  shot: ShortShot,
  from: readonly [number, number],
  aim: ShortAim,
  strikes: ShortStrikes,
): PlayedShot {
  const { spread, kind, rollPerCarry } = shot
  const { count, good, fat } = strikes
  const weight = new Float64Array(count)
  const balls: ShortBall[] = []
  const isPutt = kind === 'putt'
  // A caught ball is left where a fat one is; without fat strikes in the set there is nowhere to count it.
  const caught = fat > 0 ? spread.caughtShare : 0
  const poor = fat > 0 ? (1 - caught) * spread.poorShare : 0
  const [fatCarry, thinCarry] = kind === 'sand' ? [FAT_SAND_CARRY, THIN_SAND_CARRY] : [FAT_CARRY, THIN_CARRY]
  const total = Math.max(0.5, aim.carryMetres * (1 + (isPutt ? 0 : rollPerCarry)))
  const fixed = spread.carrySdMetres * (1 - Math.exp(-total / SHORT_METRES_FROM))
  const sd = spread.carrySdShare + fixed / total
  const turn = degreesToRadians(spread.directionSdDegrees)
  for (let k = 0; k < count; k++) {
    const z = strikes.carry[k] as number
    const isGood = k < good
    const isFat = !isGood && k < good + fat
    const share = isGood
      ? 1 + sd * z
      : isFat
        ? fatCarry[0] + fatCarry[1] * z
        : thinCarry[0] + thinCarry[1] * z
    const length = aim.carryMetres * Math.max(0.02, share)
    const heading = aim.heading + turn * (strikes.direction[k] as number)
    const rolls = Math.max(0, 1 + spread.rollSdShare * (strikes.roll[k] as number))
    const lower = isGood ? 1 : isFat ? 1 : THIN_ROLL_FACTOR
    balls.push(
      isPutt
        ? shortBall(scene, from, 0, heading, length)
        : shortBall(scene, from, length, heading, length * rollPerCarry * rolls * lower),
    )
    weight[k] = isGood
      ? (1 - poor - caught) / good
      : isFat
        ? (poor * FAT_SHARE + caught) / fat
        : (poor * (1 - FAT_SHARE)) / (count - good - fat)
  }
  return { balls, weight }
}

/** Expected strokes of a played shot; what is replayed is so in closed form. */
export function strokesOf(scene: ShortScene, { balls, weight }: PlayedShot): number {
  let kept = 0
  let back = 0
  for (let k = 0; k < balls.length; k++) {
    const ball = balls[k] as ShortBall
    if (ball.isHoled) continue
    const cost = scene.endCost(ball.end, ball.x, ball.y, ball.code)
    kept += (weight[k] as number) * cost.kept
    back += (weight[k] as number) * cost.back
  }
  return (1 + kept + back) / (1 - Math.min(back, 0.999))
}

import { GRAVITY } from '#golf/ball/flight-settings.ts'
import { HOLE_RADIUS_METRES, ROLLING_SHARE } from '#golf/ball/green-settings.ts'
import { captureSpeed } from '#golf/ball/hole-pass.ts'
import { GROUND_CLASSES } from '#golf/course/ground.ts'
import { AT_REST, IN_RED, IN_YELLOW, OUT_OF_BOUNDS } from '../outcome.ts'
import { OUT, RED, type ShortEnd, type ShortScene, YELLOW } from './short-scene.ts'

/** Slope's pull on a rolling ball by rise, m/s². */
const PULL = ROLLING_SHARE * GRAVITY
/** Coarser than `simulateRoll`: a ball ends within some centimetres of that one's (test), in a tenth of the time. */
const STEP_SECONDS = 0.08
const MOST_STEPS = 500
const STEPS_OF_PATH = 4
const STILL = 1e-9
/** Further from the hole than this no step reaches it, metres. */
const NEAR_HOLE_METRES = 1.2

/** Where a rolling ball ended. */
export interface ShortRoll {
  readonly x: number
  readonly y: number
  readonly code: number
  readonly end: ShortEnd
  readonly isHoled: boolean
}

/**
 * Rolls a ball over whatever ground it meets: each slows it at its own rate, slopes pull it by 5/7 of gravity, the hole
 * takes it when it is slow enough there (Holmes 1991, Penner 2002), water and the boundary end it.
 */
export function shortRoll(
  scene: ShortScene,
  startX: number,
  startY: number,
  heading: number,
  speed: number,
  hasHole = true,
  path?: [number, number][],
): ShortRoll {
  const { pin, slowing: slowings } = scene
  const [pinX, pinY] = pin
  let x = startX
  let y = startY
  let vx = speed * Math.sin(heading)
  let vy = speed * Math.cos(heading)
  let code = scene.codeAt(x, y)
  let steps = 0
  for (; steps < MOST_STEPS; steps++) {
    if (path !== undefined && steps % STEPS_OF_PATH === 0) path.push([x, y])
    const end = ENDS[code] as ShortEnd
    if (end !== 0) return { x, y, code, end, isHoled: false }
    const v = Math.sqrt(vx * vx + vy * vy)
    const slowing = slowings[code] as number
    const gradient = scene.gradientAt(x, y, code)
    const px = -PULL * gradient[0]
    const py = -PULL * gradient[1]
    if (v < STILL && px * px + py * py <= slowing * slowing) break
    const ux = v > 0 ? vx / v : 0
    const uy = v > 0 ? vy / v : 0
    let ax = px - slowing * ux
    let ay = py - slowing * uy
    const along = ax * ux + ay * uy
    // A ball that stops within the step goes no further than to its stop.
    const isStopping = along < 0 && v + along * STEP_SECONDS <= 0
    const seconds = isStopping ? v / -along : STEP_SECONDS
    if (!isStopping) {
      // The grass slows it along the way of the middle of the step.
      const mx = vx + (ax * STEP_SECONDS) / 2
      const my = vy + (ay * STEP_SECONDS) / 2
      const m = Math.sqrt(mx * mx + my * my)
      if (m > 0) {
        ax = px - (slowing * mx) / m
        ay = py - (slowing * my) / m
      }
    }
    const dx = vx * seconds + (ax * seconds * seconds) / 2
    const dy = vy * seconds + (ay * seconds * seconds) / 2
    const toX = pinX - x
    const toY = pinY - y
    if (hasHole && toX * toX + toY * toY < NEAR_HOLE_METRES ** 2) {
      const length2 = dx * dx + dy * dy
      const share = length2 > 0 ? Math.min(1, Math.max(0, (toX * dx + toY * dy) / length2)) : 0
      const offX = toX - share * dx
      const offY = toY - share * dy
      const off = Math.sqrt(offX * offX + offY * offY)
      const there = Math.sqrt(Math.max(0, v * v + 2 * along * share * Math.sqrt(length2)))
      if (off < HOLE_RADIUS_METRES && there <= captureSpeed(off))
        return { x: pinX, y: pinY, code, end: AT_REST, isHoled: true }
    }
    x += dx
    y += dy
    vx = isStopping ? 0 : vx + ax * seconds
    vy = isStopping ? 0 : vy + ay * seconds
    code = scene.codeAt(x, y)
  }
  path?.push([x, y])
  return { x, y, code, end: endOf(code), isHoled: false }
}

/** What a ground makes of a ball in it. */
export function endOf(code: number): ShortEnd {
  return ENDS[code] as ShortEnd
}

const ENDS: readonly ShortEnd[] = GROUND_CLASSES.map((_, code) =>
  code === OUT ? OUT_OF_BOUNDS : code === RED ? IN_RED : code === YELLOW ? IN_YELLOW : AT_REST,
)

import { GRAVITY } from './flight-settings.ts'
import {
  HOLE_RADIUS_METRES,
  LONGEST_ROLL_METRES,
  LONGEST_ROLL_SECONDS,
  REST_METRES,
  ROLL_STEP_SECONDS,
  ROLL_STEP_SHARE,
  ROLLING_SHARE,
  TURNING_SPEED,
} from './green-settings.ts'
import { type HolePass, isTaken, passInStep } from './hole-pass.ts'

/** The shape of the ground under a roll. */
export interface Slopes {
  /** Rise per metre towards +x and towards +y at a place. */
  gradientAt(x: number, y: number): readonly [number, number]
}

/** How a ball begins to roll: metres, radians clockwise from the y axis, m/s. */
export interface RollStart {
  readonly x: number
  readonly y: number
  readonly headingRadians: number
  readonly speed: number
}

/** What became of a rolling ball. Lengths are level metres, as on a map. */
export interface Roll {
  readonly x: number
  readonly y: number
  /** Length of its path. */
  readonly metres: number
  readonly seconds: number
  readonly isHoled: boolean
  /** False when it was still rolling at the end of what is followed: the ground is too steep for it to stop. */
  readonly isStopped: boolean
  /** How it first went by the hole, whether it fell or not; `null` without a hole and when it never came level with it. */
  readonly pass: HolePass | null
}

/** Finer or coarser following of a roll: longest step in seconds, and largest change of speed in it as a share. */
export interface RollStep {
  readonly seconds: number
  readonly share: number
}

const FINE: RollStep = { seconds: ROLL_STEP_SECONDS, share: ROLL_STEP_SHARE }

/**
 * Rolls a ball over the ground until it stops, falls into `hole`, or has gone as far as a roll is followed
 * ({@link LONGEST_ROLL_METRES}, {@link LONGEST_ROLL_SECONDS}). The grass slows it by `slowing` m/s² whatever its speed
 * (`greenSlowing`), a slope pulls it downhill by 5/7 of g·sin θ; where the pull is the greater no ball stops, and one
 * that has climbed so far comes back. `hole`: its middle. Fourth-order Runge–Kutta, exact on
 * a straight way of constant slope.
 */
export function simulateRoll(
  start: RollStart,
  slopes: Slopes,
  slowing: number,
  hole?: readonly [number, number],
  step: RollStep = FINE,
): Roll {
  return followRoll(start, slopes, slowing, hole ?? null, 'falls', step)
}

/** The same ball on a green whose hole is marked but takes no ball: how it goes by, and where it then stops. */
export function rollPast(
  start: RollStart,
  slopes: Slopes,
  slowing: number,
  hole: readonly [number, number],
  step: RollStep = FINE,
): Roll {
  return followRoll(start, slopes, slowing, hole, 'passes', step)
}

/**
 * A roll turned back in time: from the hole, travelling the other way, a ball gains from the grass what it lost to it.
 * Followed until it comes level with `place`, where its `pass` has the speed that the forward ball must have there;
 * `null` when no ball that reaches the hole like this came by that place.
 */
export function rollBack(
  end: RollStart,
  slopes: Slopes,
  slowing: number,
  place: readonly [number, number],
  step: RollStep = FINE,
): HolePass | null {
  return followRoll(end, slopes, -slowing, place, 'ends', step).pass
}

/** What a ball does at the hole: falls if it can, passes it, or is followed no further than level with it. */
type AtHole = 'falls' | 'passes' | 'ends'

function followRoll(
  start: RollStart,
  slopes: Slopes,
  slowing: number,
  hole: readonly [number, number] | null,
  atHole: AtHole,
  step: RollStep,
): Roll {
  let { x, y } = start
  let u = start.speed * Math.sin(start.headingRadians)
  let v = start.speed * Math.cos(start.headingRadians)
  let metres = 0
  let seconds = 0
  let pass: HolePass | null = null
  const pulled: [number, number] = [0, 0]
  const pushed: [number, number] = [0, 0]
  const end = (isHoled: boolean, isStopped: boolean): Roll => ({
    x,
    y,
    metres,
    seconds,
    isHoled,
    isStopped,
    pass,
  })
  const fallsHere = (): boolean =>
    atHole === 'falls' && hole !== null && Math.hypot(x - hole[0], y - hole[1]) < HOLE_RADIUS_METRES
  if (fallsHere()) return end(true, true)

  while (metres < LONGEST_ROLL_METRES && seconds < LONGEST_ROLL_SECONDS) {
    const speed = length(u, v)
    pullInto(pulled, slopes, x, y)
    const [px, py] = pulled
    const pull = length(px, py)
    if (speed === 0 && pull <= slowing) return end(fallsHere(), true)
    // From rest the grass holds the ball back along the slope, along which it will go.
    const backX = speed > 0 ? (slowing * u) / speed : (slowing * px) / pull
    const backY = speed > 0 ? (slowing * v) / speed : (slowing * py) / pull
    const ax = px - backX
    const ay = py - backY
    const gain = speed > 0 ? (ax * u + ay * v) / speed : 0
    if (speed > 0 && gain < 0) {
      const left = speed ** 2 / (-2 * gain)
      if (pull < slowing && left < REST_METRES) {
        x += (left * u) / speed
        y += (left * v) / speed
        metres += left
        seconds -= speed / gain
        return end(fallsHere(), true)
      }
      if (pull >= slowing && speed < TURNING_SPEED) {
        u = 0
        v = 0
        continue
      }
    }
    const change = length(ax, ay)
    const h = speed > 0 && change > 0 ? Math.min(step.seconds, (step.share * speed) / change) : step.seconds

    // Runge–Kutta with the speed's own stages, so that a straight way of constant slope comes out exact.
    const u2 = u + (h / 2) * ax
    const v2 = v + (h / 2) * ay
    pushInto(pushed, slopes, x + (h / 2) * u, y + (h / 2) * v, u2, v2, slowing)
    const [ax2, ay2] = pushed
    const u3 = u + (h / 2) * ax2
    const v3 = v + (h / 2) * ay2
    pushInto(pushed, slopes, x + (h / 2) * u2, y + (h / 2) * v2, u3, v3, slowing)
    const [ax3, ay3] = pushed
    const u4 = u + h * ax3
    const v4 = v + h * ay3
    pushInto(pushed, slopes, x + h * u3, y + h * v3, u4, v4, slowing)
    const [ax4, ay4] = pushed
    const wasAhead = hole !== null && (hole[0] - x) * u + (hole[1] - y) * v > 0
    const [x1, y1, u1, v1] = [x, y, u, v]
    x += (h / 6) * (u + 2 * u2 + 2 * u3 + u4)
    y += (h / 6) * (v + 2 * v2 + 2 * v3 + v4)
    u += (h / 6) * (ax + 2 * ax2 + 2 * ax3 + ax4)
    v += (h / 6) * (ay + 2 * ay2 + 2 * ay3 + ay4)
    metres += (h / 6) * (speed + 2 * length(u2, v2) + 2 * length(u3, v3) + length(u4, v4))
    seconds += h

    if (hole === null || !wasAhead || (hole[0] - x) * u + (hole[1] - y) * v > 0) continue
    const went = passInStep({ x: x1, y: y1, u: u1, v: v1 }, { x, y, u, v }, h, hole)
    if (went === null) continue
    pass ??= went
    if (atHole === 'ends') return end(false, false)
    if (atHole === 'passes' || !isTaken(went)) continue
    x = hole[0]
    y = hole[1]
    return end(true, true)
  }
  return end(false, false)
}

/** The slope's pull on a rolling ball, m/s². */
function pullInto(out: [number, number], slopes: Slopes, x: number, y: number): void {
  const [right, up] = slopes.gradientAt(x, y)
  // g·sin θ from the rise per level metre, which is tan θ.
  const pull = (ROLLING_SHARE * GRAVITY) / Math.sqrt(1 + right * right + up * up)
  out[0] = -pull * right
  out[1] = -pull * up
}

/** Pull and grass together, m/s²; a ball at rest is not slowed. */
function pushInto(
  out: [number, number],
  slopes: Slopes,
  x: number,
  y: number,
  u: number,
  v: number,
  slowing: number,
): void {
  pullInto(out, slopes, x, y)
  const speed = length(u, v)
  if (speed === 0) return
  out[0] -= (slowing * u) / speed
  out[1] -= (slowing * v) / speed
}

/** `Math.hypot` guards against overflow, which takes most of a step's time. */
function length(x: number, y: number): number {
  return Math.sqrt(x * x + y * y)
}

import { CAPTURE_SPEED_METRES_PER_SECOND, HOLE_RADIUS_METRES } from './green-settings.ts'

/** How a ball goes by the middle of the hole where it comes nearest to it. */
export interface HolePass {
  /** Metres from the middle; positive when the ball goes by on the right of it, as the ball travels. */
  readonly offsetMetres: number
  /** m/s. */
  readonly speed: number
  /** Direction of travel, radians clockwise from the y axis. */
  readonly headingRadians: number
}

/** Place and velocity of a ball. */
interface Moving {
  readonly x: number
  readonly y: number
  readonly u: number
  readonly v: number
}

/**
 * Whether the hole takes a ball that goes by like this: v ≤ 1.63 (1 − (δ/R)²). Holmes, American Journal of Physics 59
 * (1991), dead centre; Penner, Canadian Journal of Physics 80 (2002), off centre, from memory.
 */
export function isTaken(pass: HolePass): boolean {
  return pass.speed <= captureSpeed(pass.offsetMetres)
}

/** Fastest ball that falls at this offset from the middle, m/s; negative beyond the hole's edge. */
export function captureSpeed(offsetMetres: number): number {
  return CAPTURE_SPEED_METRES_PER_SECOND * (1 - (offsetMetres / HOLE_RADIUS_METRES) ** 2)
}

/** Widest offset at which the hole takes a ball of this speed, metres; 0 when it is too fast even dead centre. */
export function captureWidth(speed: number): number {
  return HOLE_RADIUS_METRES * Math.sqrt(Math.max(0, 1 - speed / CAPTURE_SPEED_METRES_PER_SECOND))
}

const HALVINGS = 52

/** How a ball went by the hole in a step of `seconds` before which the hole lay ahead and after which it does not; `null` when it stopped there. */
export function passInStep(
  before: Moving,
  after: Moving,
  seconds: number,
  hole: readonly [number, number],
): HolePass | null {
  let low = 0
  let high = 1
  let at = after
  for (let halving = 0; halving < HALVINGS && high - low > 1e-15; halving += 1) {
    const middle = (low + high) / 2
    at = between(before, after, seconds, middle)
    if (ahead(at, hole) > 0) low = middle
    else high = middle
  }
  const speed = Math.hypot(at.u, at.v)
  if (speed === 0) return null
  return {
    offsetMetres: ((at.x - hole[0]) * at.v - (at.y - hole[1]) * at.u) / speed,
    speed,
    headingRadians: Math.atan2(at.u, at.v),
  }
}

/** Positive while the hole lies ahead of the ball. */
function ahead(ball: Moving, hole: readonly [number, number]): number {
  return (hole[0] - ball.x) * ball.u + (hole[1] - ball.y) * ball.v
}

/** The ball a share of the step on: the cubic through both ends, exact under constant acceleration. */
function between(before: Moving, after: Moving, seconds: number, share: number): Moving {
  const [x, u] = hermite(before.x, before.u, after.x, after.u, seconds, share)
  const [y, v] = hermite(before.y, before.v, after.y, after.v, seconds, share)
  return { x, y, u, v }
}

function hermite(
  x0: number,
  v0: number,
  x1: number,
  v1: number,
  seconds: number,
  share: number,
): [place: number, speed: number] {
  const way = x1 - x0
  const square = 3 * way - seconds * (2 * v0 + v1)
  const cube = seconds * (v0 + v1) - 2 * way
  return [
    x0 + share * (seconds * v0 + share * (square + share * cube)),
    v0 + (share * (2 * square + 3 * share * cube)) / seconds,
  ]
}

import { dragAndLiftInto } from './drag-and-lift.ts'
import {
  BALL_MASS,
  BALL_RADIUS,
  FLIGHT_STEP_SECONDS,
  GRAVITY,
  LONGEST_FLIGHT_SECONDS,
  SPIN_DECAY,
} from './flight-settings.ts'

/** How a ball leaves the club, seen along its start line. */
export interface Launch {
  /** m/s. */
  readonly speed: number
  /** Above level, radians. */
  readonly angle: number
  readonly spinRpm: number
  /** Tilt of the spin axis, radians; positive bends the ball to the right. */
  readonly axisTilt: number
}

/** The air a ball flies through. */
export interface Air {
  /** kg/m³. */
  readonly density: number
  /** Wind at 10 m, m/s: towards the right of the start line, and along it. */
  readonly windRight: number
  readonly windAlong: number
  /** Wind at a height as a share of the wind at 10 m; uniform when left out. */
  readonly windShare?: (heightMetres: number) => number
}

/** Where and how a ball comes down. */
export interface Landing {
  /** Metres along the start line, and to the right of it. */
  readonly carry: number
  readonly right: number
  readonly apex: number
  readonly seconds: number
  /** Below level, radians, and m/s. */
  readonly angle: number
  readonly speed: number
  readonly spinRpm: number
  /** Direction of travel when landing, radians to the right of the start line. */
  readonly heading: number
}

const AREA_OVER_TWICE_MASS: number = (Math.PI * BALL_RADIUS ** 2) / (2 * BALL_MASS)

/**
 * Flies a ball from the ground until it comes down at `rise` metres above where it started: gravity, drag against and
 * lift across the airspeed, a spin that decays with the airspeed. Fourth-order Runge–Kutta; a ball that never gets as
 * high as `rise` comes down at its highest point. `pathInto` is given the flight point by point: metres along the start
 * line and metres up, the landing last. Formulas: Smits & Smith, *Science and Golf II* (1994), for the spin;
 * coefficients as in `drag-and-lift-grid.ts`.
 */
export function simulateFlight(
  launch: Launch,
  air: Air,
  rise: number,
  stepSeconds: number = FLIGHT_STEP_SECONDS,
  pathInto: number[] | null = null,
): Landing {
  // x right, y along, z up; velocities; spin in rpm.
  let state: Float64Array = Float64Array.of(
    0,
    0,
    0,
    0,
    launch.speed * Math.cos(launch.angle),
    launch.speed * Math.sin(launch.angle),
    launch.spinRpm,
  )
  const axisX = Math.cos(launch.axisTilt)
  const axisZ = -Math.sin(launch.axisTilt)
  const coefficients = new Float64Array(2)
  const slopes = [0, 1, 2, 3].map(() => new Float64Array(7))
  const trial = new Float64Array(7)

  function slopeInto(out: Float64Array, at: Float64Array): void {
    const vx = at[3] as number
    const vy = at[4] as number
    const vz = at[5] as number
    const spin = at[6] as number
    const share = air.windShare ? air.windShare(at[2] as number) : 1
    const wx = vx - air.windRight * share
    const wy = vy - air.windAlong * share
    const speed = Math.hypot(wx, wy, vz)
    dragAndLiftInto(coefficients, spin, speed)
    const force = AREA_OVER_TWICE_MASS * air.density * speed
    const drag = force * (coefficients[0] as number)
    // Spin axis × airspeed: the direction of the lift, of full size however the axis lies to the airspeed.
    const acrossX = -axisZ * wy
    const acrossY = axisZ * wx - axisX * vz
    const acrossZ = axisX * wy
    const across = Math.hypot(acrossX, acrossY, acrossZ)
    const lift = across > 0 ? (force * (coefficients[1] as number) * speed) / across : 0
    out[0] = vx
    out[1] = vy
    out[2] = vz
    out[3] = -drag * wx + lift * acrossX
    out[4] = -drag * wy + lift * acrossY
    out[5] = -drag * vz + lift * acrossZ - GRAVITY
    out[6] = (-SPIN_DECAY * spin * speed) / BALL_RADIUS
  }

  let apex = 0
  for (let seconds = 0; seconds < LONGEST_FLIGHT_SECONDS; seconds += stepSeconds) {
    const next = stepped(state, stepSeconds, slopes, trial, slopeInto)
    const height = state[2] as number
    const nextHeight = next[2] as number
    apex = Math.max(apex, nextHeight)
    const isFalling = (next[5] as number) < 0
    pathInto?.push(state[1] as number, height)
    if (isFalling && nextHeight <= rise) {
      const up = state[5] as number
      const share =
        height > rise ? (height - rise) / (height - nextHeight) : up > 0 ? up / (up - (next[5] as number)) : 0
      const landing = landingOf(state, next, share, apex, seconds + share * stepSeconds)
      pathInto?.push(landing.carry, height + share * (nextHeight - height))
      return landing
    }
    state = next
  }
  return landingOf(state, state, 0, apex, LONGEST_FLIGHT_SECONDS)
}

function stepped(
  state: Float64Array,
  step: number,
  slopes: readonly Float64Array[],
  trial: Float64Array,
  slopeInto: (out: Float64Array, at: Float64Array) => void,
): Float64Array {
  const [a, b, c, d] = slopes as [Float64Array, Float64Array, Float64Array, Float64Array]
  slopeInto(a, state)
  advanceInto(trial, state, a, step / 2)
  slopeInto(b, trial)
  advanceInto(trial, state, b, step / 2)
  slopeInto(c, trial)
  advanceInto(trial, state, c, step)
  slopeInto(d, trial)
  const next = new Float64Array(7)
  for (let i = 0; i < 7; i++)
    next[i] =
      (state[i] as number) +
      (step / 6) * ((a[i] as number) + 2 * (b[i] as number) + 2 * (c[i] as number) + (d[i] as number))
  return next
}

function advanceInto(out: Float64Array, state: Float64Array, slope: Float64Array, step: number): void {
  for (let i = 0; i < 7; i++) out[i] = (state[i] as number) + step * (slope[i] as number)
}

function landingOf(
  from: Float64Array,
  to: Float64Array,
  share: number,
  apex: number,
  seconds: number,
): Landing {
  const at = (i: number): number => (from[i] as number) + share * ((to[i] as number) - (from[i] as number))
  const level = Math.hypot(at(3), at(4))
  return {
    carry: at(1),
    right: at(0),
    apex,
    seconds,
    angle: Math.atan2(-at(5), level),
    speed: Math.hypot(level, at(5)),
    spinRpm: at(6),
    heading: Math.atan2(at(3), at(4)),
  }
}

import {
  BALL_RADIUS,
  BOUNCE_FRICTION,
  CRATER_REFERENCE_ANGLE,
  CRATER_REFERENCE_SPEED,
  CRATER_TILT,
  GRAVITY,
  LEAST_BOUNCE_METRES,
  LEAST_ROLL_SLOWING,
  MOST_BOUNCES,
  TURF_ROLLING_FRICTION,
} from './flight-settings.ts'

/** How a ball comes to the ground: m/s, radians below level, backspin in revolutions a minute. */
export interface Touchdown {
  readonly speed: number
  readonly angle: number
  readonly spinRpm: number
}

/** What it does there, metres; negative is back towards the player. */
export interface Run {
  readonly bounce: number
  readonly roll: number
  readonly bounces: number
}

/** What an impact and a roll are like on one kind of turf, as multiples of the published turf where they are shares. */
export interface Turf {
  /** Multiplies the share of normal speed that an impact keeps. */
  readonly restitutionShare: number
  /** Multiplies the tilt of the crater: soft ground gives way more. */
  readonly tiltShare: number
  /** Rolling friction; 5/7 of it slows a rolling ball. */
  readonly rollingFriction: number
}

/** The published turf, Penner 2002: the reference surface, a level normal fairway. */
export const PENNER_TURF: Turf = {
  restitutionShare: 1,
  tiltShare: 1,
  rollingFriction: TURF_ROLLING_FRICTION,
}

/**
 * Bounces and rolls a ball on turf that rises by `slope` radians along its way; the touchdown is seen from the ground.
 * Each impact digs a crater whose front slopes up by an angle that grows with speed and slant; the ball leaves it
 * slipping or rolling by Coulomb friction; under 5 mm of bounce it rolls, slowed by 5/7 of the rolling friction. A slope
 * slows what climbs it and never speeds up what falls down it: our assumption, since no slope goes on for ever.
 *
 * Source: Penner, *The run of a golf ball*, Canadian Journal of Physics 80 (2002) 931–940, with the slant measured
 * from the vertical; the condition for rolling is Daish's.
 */
export function simulateRun(touchdown: Touchdown, slope: number = 0, turf: Turf = PENNER_TURF): Run {
  const square = GRAVITY * Math.cos(slope)
  const back = GRAVITY * Math.sin(slope)
  let along = touchdown.speed * Math.cos(touchdown.angle)
  let down = touchdown.speed * Math.sin(touchdown.angle)
  let spin = (touchdown.spinRpm * 2 * Math.PI) / 60
  let bounce = 0
  let bounces = 0
  while (bounces < MOST_BOUNCES) {
    const speed = Math.hypot(along, down)
    const slant = Math.atan2(along, down)
    const tilt = turf.tiltShare * craterTilt(speed, slant)
    const tangential = speed * Math.sin(slant - tilt)
    const normal = speed * Math.cos(slant - tilt)
    const after = leaveCrater(tangential, normal, spin, turf.restitutionShare * restitution(normal))
    spin = after.spin
    along = after.tangential * Math.cos(tilt) - after.normal * Math.sin(tilt)
    const up = after.tangential * Math.sin(tilt) + after.normal * Math.cos(tilt)
    if (up <= 0 || up ** 2 / (2 * square) < LEAST_BOUNCE_METRES) break
    const seconds = (2 * up) / square
    bounce += along * seconds - (back * seconds ** 2) / 2
    // An impact takes nothing from a ball that rolls through it: on a mere 4 degrees of fall, hops would feed each other
    // for hundreds of metres. So the turf takes from hops down a slope what the slope gives them.
    if (along * back > 0) along -= back * seconds
    down = up
    bounces += 1
  }
  const slowing = (5 / 7) * (turf.rollingFriction * square + Math.sign(along) * back)
  const roll = (Math.sign(along) * along ** 2) / (2 * Math.max(slowing, LEAST_ROLL_SLOWING))
  return { bounce, roll, bounces }
}

/** Tilt of the crater's front, radians, for an impact of this speed and slant from the vertical; it leans the other way for a ball that comes back. */
export function craterTilt(speed: number, slant: number): number {
  return CRATER_TILT * (speed / CRATER_REFERENCE_SPEED) * (slant / CRATER_REFERENCE_ANGLE)
}

/** Share of normal speed kept by an impact of this normal speed, m/s. */
export function restitution(normal: number): number {
  return normal > 20 ? 0.12 : 0.51 - 0.0375 * normal + 0.000903 * normal ** 2
}

function leaveCrater(
  tangential: number,
  normal: number,
  spin: number,
  e: number,
): { tangential: number; normal: number; spin: number } {
  const slip = tangential + BALL_RADIUS * spin
  const gripping = (2 * Math.abs(slip)) / (7 * (1 + e) * normal)
  if (BOUNCE_FRICTION >= gripping) {
    const rolling = (5 * tangential) / 7 - (2 * BALL_RADIUS * spin) / 7
    return { tangential: rolling, normal: e * normal, spin: -rolling / BALL_RADIUS }
  }
  const push = Math.sign(slip) * BOUNCE_FRICTION * normal * (1 + e)
  return { tangential: tangential - push, normal: e * normal, spin: spin - (5 * push) / (2 * BALL_RADIUS) }
}

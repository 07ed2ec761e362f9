/** Mass (kg) and radius (m) of a ball at the limits of the Rules of Equipment, part 4: 1.620 oz, 1.680 in. */
export const BALL_MASS = 0.04593
export const BALL_RADIUS = 0.021335
/** Standard gravity, m/s². */
export const GRAVITY = 9.80665
/** Spin decay: dω/dt = −SPIN_DECAY · ω · v / r. Source: Smits & Smith, *Science and Golf II* (1994). */
export const SPIN_DECAY = 2e-5
/** Step of the integration, seconds; halving it moves a carry by under 1 mm (test). */
export const FLIGHT_STEP_SECONDS = 0.02
/** A guard: no ball stays up so long. */
export const LONGEST_FLIGHT_SECONDS = 20

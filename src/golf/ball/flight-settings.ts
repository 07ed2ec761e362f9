/** Mass (kg) and radius (m) of a ball at the limits of the Rules of Equipment, part 4: 1.620 oz, 1.680 in. */
export const BALL_MASS = 0.04593
export const BALL_RADIUS = 0.021335
/** Standard gravity, m/s². */
export const GRAVITY = 9.80665
/** Spin decay: dω/dt = −SPIN_DECAY · ω · v / r. Source: Smits & Smith, *Science and Golf II* (1994). */
export const SPIN_DECAY = 2e-5
/** Step of the integration, seconds; halving it moves a carry by under 1 mm (test). */
export const FLIGHT_STEP_SECONDS = 0.02
/** The same for tables of changes: a share moves by under 0.0005 (test). */
export const TABLE_STEP_SECONDS = 0.04
/** A guard: no ball stays up so long. */
export const LONGEST_FLIGHT_SECONDS = 20

/** Friction of an impact on turf. Source: Penner 2002. */
export const BOUNCE_FRICTION = 0.4
/** A crater tilts by 15.4° at 18.6 m/s and 44.4° from the vertical, in proportion to both. Source: Penner 2002. */
export const CRATER_TILT: number = (15.4 * Math.PI) / 180
export const CRATER_REFERENCE_SPEED = 18.6
export const CRATER_REFERENCE_ANGLE: number = (44.4 * Math.PI) / 180
/** Below this height of a bounce, metres, the ball rolls. Source: Penner 2002. */
export const LEAST_BOUNCE_METRES = 0.005
/** Rolling friction of turf. Source: Penner 2002, a green; fairways are higher, and the player's own run scales it anyway. */
export const TURF_ROLLING_FRICTION = 0.131
/** On ground so steep that a ball would not stop, it is slowed at least so much, m/s²: the slope does not go on for ever. Our assumption. */
export const LEAST_ROLL_SLOWING = 0.2
/** A guard: no ball bounces so often. */
export const MOST_BOUNCES = 400

/** Air that stock distances refer to: 15 °C, sea level, dry; kg/m³. */
export const REFERENCE_DENSITY = 1.225
/** Humidity where a day does not say: half saturated. Our assumption; it moves a carry by a tenth of a per cent. */
export const USUAL_HUMIDITY = 0.5
/** Roughness length of short grass, metres, of the logarithmic wind profile; from memory. */
export const GRASS_ROUGHNESS = 0.03
/** Headings between which flights are joined by straight lines, radians. */
export const FLIGHT_HEADING_STEP: number = Math.PI / 18
/** Carries flown alike, metres. */
export const SAME_FLIGHT_METRES = 8
/** Height at which a day's wind is given, metres: that of the weather services. */
export const WIND_HEIGHT_METRES = 10
/** Under this height, metres, the wind is that at it. */
export const LEAST_WIND_HEIGHT_METRES = 0.5
/** Landing angle at reference conditions by loft, degrees below level: from a driver to short irons. Common practice as a shape. */
export const FLAT_LOFT_DEGREES = 10.5
export const FLAT_LANDING_DEGREES = 38
export const STEEP_LOFT_DEGREES = 46
export const STEEP_LANDING_DEGREES = 50
/** Landings faster than this, m/s, run as at it: beyond it the published crater tilts so far that speed would shorten the run. Our assumption. */
export const FASTEST_RUN_LANDING = 25
/** A ball cannot meet the ground from below: a guard for ground that falls away as fast as the ball, radians. Our assumption. */
export const LEAST_MEETING_ANGLE = 0.15
/** A low shot (punch) comes down at this share of its club's usual landing angle and spins at this share: less loft at impact. Common practice as a shape, sizes our assumption. */
export const LOW_LANDING_SHARE = 0.4
export const LOW_SPIN_SHARE = 0.7
/** Equal parts of a carry between which heights along the path are joined by straight lines. */
export const HEIGHT_PARTS = 32

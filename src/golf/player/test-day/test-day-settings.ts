/** How much players of one level differ in each putting spread: sd of its logarithm. Wider than a plan doubts a guess, since a test asks about one player. Our assumption. */
export const PUTTING_PRIOR_SD = 0.25
/** The grid of spreads: nodes along each, and how many prior sds it reaches to each side. */
export const PUTTING_GRID = { nodes: 21, sds: 3.5 } as const
/** So many putting profiles stand for the posterior, where each takes a table of its own. */
export const PUTTING_PROFILES = 16
/** How much players of one level differ in strokes lost around the green: sd as a share of the strokes lost, and in strokes. Our assumption. */
export const SHORT_PRIOR_SD = { share: 0.35, strokes: 0.08 } as const
/** Sd of what one ball costs, strokes, before the test's own balls are seen, and what that is worth in balls. Our assumption; typical of a chip and a putt or two. */
export const SHORT_BALL_SD = { strokes: 0.45, balls: 6 } as const
/** Directions in which the stop of a missed putt is looked for around the hole. */
export const LEAVE_DIRECTIONS = 32
/** How far the curves of a test day reach: putts, and short shots from and to, metres. */
export const LONGEST_PUTT_METRES = 15
export const SHORT_CURVE_METRES = [4, 38] as const

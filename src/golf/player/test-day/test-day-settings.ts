/** The grid of spreads: nodes along each, and how many prior sds it reaches to each side. */
export const PUTTING_GRID = { nodes: 21, sds: 3.5 } as const
/** So many putting profiles stand for the posterior, where each takes a table of its own. */
export const PUTTING_PROFILES = 16
/** Sd of what one ball costs, strokes, before the test's own balls are seen, and what that is worth in balls. Our assumption; typical of a chip and a putt or two. */
export const SHORT_BALL_SD = { strokes: 0.45, balls: 6 } as const
/** Lengths of putts in a log are paced: standard deviation, metres, and as a share of them; the larger counts. Our assumption, as a recap takes what a putt left. */
export const LOGGED_LENGTH_SD = { metres: 0.15, share: 0.1 } as const
/** Directions in which the stop of a missed putt is looked for around the hole. */
export const LEAVE_DIRECTIONS = 32
/** How far the curves of a test day reach: putts, and short shots from and to, metres. */
export const LONGEST_PUTT_METRES = 15
export const SHORT_CURVE_METRES = [4, 38] as const

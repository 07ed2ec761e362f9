/** Longest distance that a log may give, metres, and most strokes, putts and penalties: beyond them it is a slip of the pen. Our assumption. */
export const LONGEST_LEFT_METRES = 700
export const MOST_COUNTED = 20

/** Directions tried on the circle of what was left to the pin. */
export const CIRCLE_POINTS = 720
/** How far from the written distance ground of the written kind is looked for: metres, and as a share of it; distances on paper are paced or guessed. Our assumption. */
export const LEFT_TOLERANCE_METRES = 5
export const LEFT_TOLERANCE_SHARE = 0.1
export const LEFT_STEP_METRES = 1
/** A drop lies this near the penalty area, metres: two club-lengths and the play of paced distances. Our assumption. */
export const DROP_METRES = 10

/** Where the ball was logged and where it lay: standard deviation to each side, metres, and as a share of the stroke's length. Bounces of one strike scatter about as far. Our assumption. */
export const FINISH_SD_METRES = 3
export const FINISH_SD_SHARE = 0.02
/** A finish that fewer than this share of the strikes come near is no shot of this pattern: what was luck cannot be told. Our assumption. */
export const LEAST_LIKE_SHARE = 0.002

/** Choices that cost at least this many strokes are told: below it two choices are too close to call, as in a plan. */
export const TOLD_DECISION_STROKES = 0.03
/** Strokes told as the best of a round gained at least this much. Our assumption. */
export const TOLD_GAIN_STROKES = 0.3

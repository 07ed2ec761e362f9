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
/** Strokes of a round told singly, dearest or best first: a page holds few facts. Our choice. */
export const MOST_TOLD_STROKES = 5
/** Strokes told as the best of a round gained at least this much. Our assumption. */
export const TOLD_GAIN_STROKES = 0.3

/**
 * A season names what costs at least this many strokes a round. Our assumption: a stroke in ten rounds; choices that are each
 * too close to call add up to a third of it in any one way (docs/recap.md, "How often a season is right").
 */
export const NAMED_STROKES_A_ROUND = 0.1
/** A way of choosing is named only after so many strokes chosen so. Our assumption: fewer are single mistakes, told in their own recaps. */
export const NAMED_CHOICES = 5
/** A part of the game is named only from so many strokes on. Our assumption: sand is met once in two rounds. */
export const NAMED_STROKES = 5
/** What few strokes say of a part's spread counts as if so many had been seen with this standard deviation. Our assumption: measured spreads run from 0.25 to 0.5. */
export const USUAL_PART_SD = 0.5
export const USUAL_PART_STROKES = 10
/** Chance that a player whose profile is right is told of any part that is worse than it: shared among the parts. Our choice. */
export const FALSE_PART_SHARE = 0.05
/**
 * What a stroke may cost more than expected by the model's own grid, before anything is said of the player. Measured:
 * `npm run season-study`, docs/recap.md.
 */
export const MODEL_DOUBT_STROKES = 0.01

/** Clubs up to this loft are driver, woods and hybrids, degrees: the long clubs of practice. Common practice. */
export const LONG_CLUB_MOST_LOFT_DEGREES = 26.5
/** A part of the profile is made better by this share to see what it is worth. Our choice: larger than what a quick plan settles to, small beside the whole. */
export const PRACTICE_STEP = 0.1
/**
 * By how much an hour of practice makes a part better, as a share of what it is. Our assumption, no published rates were found:
 * pace and short game answer soonest, the direction of long clubs slowest. The professional's own numbers replace them.
 */
export const PRACTICE_RATES = {
  'long-direction': 0.004,
  'iron-direction': 0.004,
  'iron-distance': 0.004,
  mishits: 0.008,
  'short-game': 0.01,
  'putting-line': 0.006,
  'putting-pace': 0.01,
} as const
/** So many things are given to practise: common practice in teaching. */
export const PRACTICE_ITEMS = 3
/** Practice that brings less than this, strokes a round for an hour, is not worth saying: a tenth of a stroke in fifty hours. Our assumption. */
export const TOLD_PRACTICE_STROKES = 0.002
/** An hour of practice makes nothing better by more than this share. Our assumption: beyond it is a slip of the pen. */
export const MOST_PRACTICE_RATE = 0.2
/** The chip by which strokes lost near the green are stated, metres of fairway: as in the player file. */
export const USUAL_CHIP_METRES = 20
/**
 * Of the strokes a player loses near the green, so many are lost by the chip itself and the rest by the putts after it. Measured by chips played
 * ball by ball with the same putting, from 20 and 32 m of fairway, rough and sand, by players of index 2 to 28: 0.72 to 0.85
 * of what the tables say (`docs/method.md`, 9b).
 */
export const CHIPS_OF_STROKES_LOST = 0.77

/** Holes of a round (Rules of Golf 2023, 5.1). */
export const ROUND_HOLES = 18
/** No figure of a club is of fewer members than this, unless another number is asked for. Common practice: from three to ten. */
export const LEAST_MEMBERS = 5
/** Fewer members than this are never summed up: of two, each knows the other. */
export const FEWEST_MEMBERS = 3
/** More than this are never asked for. Our choice. */
export const MOST_LEAST_MEMBERS = 50
/** Markers from which fewer greens than this share are reached in par less two are worth a word. Our assumption. */
export const FEW_GREENS_SHARE = 0.1
/** A hole whose place by difficulty is so many places from its place by stroke index is worth a word. Our assumption: a third of eighteen. */
export const NAMED_INDEX_PLACES = 6
/**
 * How the ways in which a stroke may have been struck are looked for, from coarse to fine. Numerical choices: a carry up to so
 * many times the stock carry and so many degrees off the line; points a share of a good strike's spread apart, so many at
 * most and at least; places widened so many times on each pass; ways with less than a share of the likeliest one's
 * likelihood are left out, and a stroke whose likeliest way is less likely than the last number ends as no strike does. Where no line is known a ball is taken to have gone where it ended, bounces to either side.
 */
export const WAYS = {
  longestShare: 1.5,
  widestDegrees: 60,
  linelessDegrees: 3,
  spacing: 0.5,
  mostPoints: 640,
  leastPoints: 48,
  blurs: [6, 2, 1, 1],
  leastInBox: 0.01,
  leastKept: 0.003,
  leastLikely: 0.0001,
} as const
/** Paced distances on a paper log: standard deviation in metres, and as a share of what was left. Our assumption: half of what is looked for (`LEFT_TOLERANCE`). */
export const PACED_SD_METRES = 2.5
export const PACED_SD_SHARE = 0.05

/** Chance that a player who has not changed is told of any change between two seasons: shared among all that is compared. Our choice. */
export const FALSE_CHANGE_SHARE = 0.05
/** Fewer holes of a season than this, three rounds, say nothing of what changed: most choices cost nothing and a few much. Our assumption. */
export const LEAST_COMPARED_HOLES = 54

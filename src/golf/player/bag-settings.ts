/**
 * Gaps between neighbouring clubs as shares of the longest carry: under `overlap` two clubs do one job, over `hole` a
 * distance has no club; below a driver more is usual. Common practice: steps of 8 to 15 yards for a drive of 220,
 * about 20 below the driver; the bounds are our assumption.
 */
export const GAP_SHARES = { overlap: 0.025, hole: 0.09, holeBelowDriver: 0.14 } as const

/** Two wedges no further apart than this in loft are one club under two names, degrees. Our assumption. */
export const SAME_WEDGE_DEGREES = 2

/** So many shots show that a club is in a bag that was only guessed; fewer may be a slip of the pen. Our assumption. */
export const SHOTS_THAT_SHOW_A_CLUB = 5

/** Chance from which a number of a player is told as really changed. Our assumption. */
export const LIKELY_CHANGE = 0.8

/**
 * Carries that were known and all move one way, each by more than `each` and together by between the others, ask whether
 * the unit is right; logarithms. A metre is 0.089 more than a yard; the bounds are our assumption: a real change of a
 * few per cent may come on top.
 */
export const ASKED_UNIT_MOVE = { each: 0.045, least: 0.06, most: 0.15 } as const

/** Shots that are so many times as likely in a mirror ask whether they are this player's, and of this hand. Our assumption. */
export const ASKED_MIRROR_ODDS = 20

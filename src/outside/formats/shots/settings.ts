/** Lines at the start of a shot table among which its header is looked for. Our assumption. */
export const LINES_BEFORE_HEADER = 30

/** Rows that are taken apart together: enough to be quick, few enough to be light. Our choice. */
export const ROWS_AT_ONCE = 1000

/** Lines that one row may run over when a note in it has line breaks. Our assumption. */
export const ROWS_IN_A_CELL = 5

/** A total may be this much shorter than its carry, metres: spin brings a ball back, but not further. Our assumption. */
export const MOST_COMING_BACK_METRES = 20

/** A total may be this much longer than its carry, metres: a drive on baked ground downhill runs on, but not further. Our assumption. */
export const MOST_RUN_METRES = 120

/** How often, at most, shots that only look alike may be taken for a batch written twice, whole files. Our assumption. */
export const FALSE_BATCHES = 0.01
/** No batch is shorter than this many different shots. Our assumption. */
export const LEAST_BATCH = 3

/**
 * A date is doubted when so small a share of so many shots, or one of them, lies so many years after all others, or before
 * them. Our assumption: players come back after a break, but with more than a few shots; an old season is only old.
 */
export const FAR_DATES = { leastShots: 5, mostShare: 0.05, yearsAfter: 2, yearsBefore: 20 } as const

/**
 * Yards read as metres, or the other way round, set carries apart by the logarithm of 1 / 0.9144, known to `within`. All
 * but the first are our assumptions.
 */
export const UNIT_GAP = {
  /** ln(1 yd / 1 m). */
  logarithm: 0.08949,
  within: 0.025,
  /** Shots on a day for it to be heard: then its error is a fifth of the gap. */
  leastOnDay: 15,
  leastDays: 4,
  /** Shots of a club for its carries to be looked at, and the smaller part of them. */
  leastOfClub: 30,
  leastPart: 0.15,
  /** Spread inside the two heaps over their distance: one heap cut in half has 0.38 when normal, 0.29 when level. */
  mostInside: 0.27,
} as const

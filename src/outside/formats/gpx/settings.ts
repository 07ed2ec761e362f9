/** How a walk is made an outline, metres. */
export const WALK = {
  /**
   * How far a walked place may be off: a telephone under open sky is good to 4.9 m (van Diggelen and Enge, Institute of
   * Navigation GNSS+ 2015, as the United States government cites it on gps.gov). Trees make it worse.
   */
  accuracy: 5,
  /** Points that lie no further off the line of the others are left out. Our choice: well under the accuracy, over the jitter of a step. */
  tolerance: 1.5,
  /** A walk that comes so near its start again is closed there. Our choice: three times the accuracy, the error of two places and a step. */
  closing: 15,
  /** Before this share of its length a walk passes its start by chance. Our assumption. */
  returnShare: 0.6,
} as const

/** The player's run changes by the model's change times (stock run ÷ model's run), held to this range. Our assumption. */
export const LEAST_RUN_SCALE = 0.25
export const MOST_RUN_SCALE = 1.5
/** Under this run of the model, metres, the scale is not trusted to be a quotient. */
export const LEAST_MODEL_RUN_METRES = 3

/**
 * Run on each ground as a share of the run on a level fairway. The order fairway > first cut > rough > heavy is
 * common practice, the figures are our assumption.
 */
export const RUN_SHARES = {
  tee: 1,
  fairway: 1,
  path: 1,
  fringe: 0.8,
  'first-cut': 0.7,
  green: 0.6,
  rough: 0.35,
  trees: 0.3,
  heavy: 0.15,
  scrub: 0.1,
  bunker: 0,
} as const

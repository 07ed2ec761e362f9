/** The player's run changes by the model's change times (stock run ÷ model's run), held to this range. Our assumption. */
export const LEAST_RUN_SCALE = 0.25
export const MOST_RUN_SCALE = 1.5
/** Under this run of the model, metres, the scale is not trusted to be a quotient. */
export const LEAST_MODEL_RUN_METRES = 1

/** How long a browser's worker that was asked to stop may take before it is ended, milliseconds. Our assumption: with the way there and back, up to 15 ms on a busy machine, a person has waited less than 50 ms, which nobody feels. */
export const STOP_PATIENCE_MILLISECONDS = 30

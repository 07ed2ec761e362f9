/** How long a browser's worker that was asked to stop may take before it is ended, milliseconds. Our assumption: with the way there and back a person has waited 50 ms, which nobody feels. */
export const STOP_PATIENCE_MILLISECONDS = 40

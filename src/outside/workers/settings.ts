/** How long a browser's worker that was asked to stop may take before it is ended, milliseconds. Our assumption: a person feels a tenth of a second. */
export const STOP_PATIENCE_MILLISECONDS = 50

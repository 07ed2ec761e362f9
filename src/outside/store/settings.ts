/** How long a change waits for another program that is writing to the same store, milliseconds. Our assumption. */
export const BUSY_TIMEOUT_MILLISECONDS = 5000

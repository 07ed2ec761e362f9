/** Rows of a table of clubs for people; the rest is one line that says how many more there are. Our assumption. */
export const CLUBS_PRINTED = 8

/** Shares below this are printed as none. Our assumption. */
export const SMALLEST_PRINTED_SHARE = 0.005

/** Reasons for which elements were ignored, printed for people; `--json` has all. Our assumption. */
export const REASONS_PRINTED = 20

/** The most draws of a player's uncertain numbers that may be asked for; more only costs time. Our assumption. */
export const MOST_DRAWS = 1000

/** The most threads that may be asked for; each takes memory of its own. Our assumption. */
export const MOST_WORKERS = 64

/** A fault found in more places than this is printed once with its first places. Our assumption. */
export const FAULTS_PRINTED_SINGLY = 3

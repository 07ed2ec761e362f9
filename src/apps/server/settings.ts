/** The hole desk's own port, unless another is asked for. Our choice. */
export const DEFAULT_PORT = 4173

/** How many ports are tried, the first included, before giving up. Our choice. */
export const PORT_ATTEMPTS = 20

/** The largest document taken, bytes. A course of 27 holes traced finely is under 2 MB. Our assumption. */
export const BODY_LIMIT_BYTES: number = 16 * 1024 * 1024

/** How long answers under way may take to finish when the server closes, milliseconds. Our assumption. */
export const CLOSING_GRACE_MILLISECONDS = 1000

/** How often a closing server looks for connections whose answer is through, milliseconds. Our assumption. */
export const CLOSING_LOOK_MILLISECONDS = 25

/** How long a browser may keep a file whose name carries its content's hash, seconds: a year, the usual "for ever". Common practice. */
export const HASHED_FILE_AGE_SECONDS = 31_536_000

/** The nearest level of map tiles unless another is asked for, and the nearest of all: pixels of some 17 and 2 cm at 56° north. Common practice. */
export const USUAL_MAP_ZOOM = 19
export const MOST_MAP_ZOOM = 22

/** A map's server is waited for so long, milliseconds, and a tile is at most so large, bytes. Our assumptions. */
export const TILE_PATIENCE_MILLISECONDS = 15_000
export const LARGEST_TILE_BYTES: number = 2 * 1024 * 1024

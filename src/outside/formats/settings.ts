/** The largest source that is read at once, bytes: 64 MiB. Our assumption: a county of map data is smaller. */
export const LARGEST_SOURCE_BYTES: number = 64 * 1024 * 1024

/** Bytes at the start of a file in which a zero byte or many control characters show that it is no text. Our assumption. */
export const SNIFFED_BYTES = 65_536

/** Share of control characters above which a file is no text. Our assumption: a text file has none but line ends and tabs. */
export const CONTROL_CHARACTER_SHARE = 0.005

/** What a hole table may leave blank, metres. Our assumptions; each is reported where it is used. */
export const TABLE_DEFAULTS = {
  /** Width of a fairway. */
  fairwayWidth: 30,
  /** Depth of a green of which only the front is given. */
  greenDepth: 25,
  /** Along and off the line, of a bunker of which only the near edge is given. */
  bunkerSize: 10,
  /** Width of a ditch. */
  ditchWidth: 1.5,
  /** Off the line: how far ground without a far edge reaches, and ground right across to both sides. */
  reachOffLine: 100,
  /** Along the line: how far ground without an end reaches before the tee and behind the green. */
  reachBeyondEnds: 40,
  /** From the foot of a tier to its head. */
  tierLength: 4,
  /** Side of the square of a teeing ground. */
  teeSide: 8,
} as const

/** How the holes of a table are laid out beside each other, metres: far enough apart that none lies in the corridor of another; `clear` rows stay free beside holes that have a place of their own. */
export const TABLE_GRID = { columns: 6, across: 500, along: 1000, clear: 5 } as const

/** The largest grid of heights that is read at once, cells. Our assumption: three times an SRTM tile of 1 arc-second, and 160 MB of memory. */
export const MOST_CELLS = 40_000_000

/** A cell this near to the mark for "no data" has none, share of the mark. Our assumption: the last digit of a 32-bit number is 6e-8. */
export const NO_DATA_TOLERANCE_SHARE = 1e-6

/** No ground lies outside these, metres. Our assumption, around the shore of the Dead Sea and the top of Everest. */
export const HEIGHT_METRES = { least: -500, most: 9000 } as const

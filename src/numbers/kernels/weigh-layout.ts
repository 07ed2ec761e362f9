/**
 * Where things lie for the kernels that weigh actions: words of four bytes from the start of a record. Figures are single
 * floats, all else whole numbers; what points somewhere is an address in the same memory. Cells are numbered row by row.
 */

/** The grid, what each outcome costs now, and what is kept of each cell. */
export const FRAME = {
  columns: 0,
  rows: 1,
  /** Box of cells near the pin, where landings are told apart by fine cells. */
  nearColumn: 2,
  nearRow: 3,
  nearColumns: 4,
  nearRows: 5,
  /** Fine cells in a coarse one, and for each of them the place of every cell of the box; −1 − n is number n on the green. */
  phases: 6,
  nearPlaces: 7,
  /** By outcome: its cost where relief is taken, and the share that goes back. */
  cost: 8,
  back: 9,
  /** By outcome: the cost without relief; the relief, {@link PLAIN} or {@link NEVER_DEARER}; and shares. */
  kept: 10,
  relief: 11,
  relieved: 12,
  returned: 13,
  /** The present values, by row of `columns` + {@link BLOCK}. */
  here: 14,
  keptCosts: 15,
  keptActions: 16,
  keptCount: 17,
  /** The dearest kept cost of each cell, laid out as the values are. */
  worst: 18,
  /** By cell, bytes: 1 where landings are told apart by fine cells or run on the green. */
  isNear: 19,
  /** Whether fine cells near the pin are laid out with every landing; else they are looked up one by one. */
  hasPlanes: 20,
  /** How far any value can have fallen since the first weighing, and how much dearer than the value an action is still kept. */
  fallen: 21,
  margin: 22,
  words: 23,
} as const

/** Landings of one run, heading and way down: where balls rest, by place. */
export const LANDING = {
  rest: 0,
  /** What catches balls on their way down; 0 = nothing. */
  slant: 1,
  hasNear: 2,
  /** Rows that are landed in. */
  rowFrom: 3,
  rowTo: 4,
  /** From here on the kernel writes. */
  words: 13,
} as const

/** What catches balls near the ground, by cell. */
export const SLANT = {
  /** Rows of bits in words, one for each of `columns` + {@link BLOCK}: 1 where something is in the way. */
  met: 0,
  /** By word: how many cells before it are met. The met cells are numbered in this order. */
  before: 1,
  cells: 2,
  left: 3,
  first: 4,
  outcome: 5,
  chance: 6,
  count: 7,
  /** By number, for balls that leave: what the caught ones cost, and the share of them that goes back; 0 where none leave. */
  sum: 8,
  back: 9,
  words: 10,
} as const

/** The relief of an outcome that simply costs the value of a place; and of one that is never dearer than going back. */
export const PLAIN: number = Math.fround(-3e38)
export const NEVER_DEARER: number = Math.fround(-1e38)

/** One strike of an action: its landing, how far it moves a ball in cells, its fine cell there, and where balls rest that land on the green, by number. */
export const STRIKE = { landing: 0, row: 1, column: 2, phase: 3, green: 4, words: 5 } as const

/** Strikes of an action that weigh the same and leave on the same slant (0 = none): addresses of the first and past the last. */
export const GROUP = { first: 0, last: 1, weight: 2, slant: 3, words: 4 } as const

/** Neighbouring cells of a row from which an action is played: from, and up to but without. */
export const SEGMENT = { row: 0, from: 1, until: 2, words: 3 } as const

/** Cells weighed side by side; rows are laid so much longer, and landings so much to either side. */
export const BLOCK = 16

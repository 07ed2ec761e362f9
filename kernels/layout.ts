// Where things lie in the kernels' memory; `src/numbers/kernels/weigh-layout.ts` names the same words for the caller.

// The frame: words of 4 bytes.
export const COLUMNS: usize = 0
export const ROWS: usize = 4
export const NEAR_COLUMN: usize = 8
export const NEAR_ROW: usize = 12
export const NEAR_COLUMNS: usize = 16
export const NEAR_ROWS: usize = 20
export const PHASES: usize = 24
export const NEAR_PLACES: usize = 28
export const COST: usize = 32
export const BACK: usize = 36
export const KEPT: usize = 40
export const RELIEF: usize = 44
export const RELIEVED: usize = 48
export const RETURNED: usize = 52
export const HERE: usize = 56
export const KEPT_COSTS: usize = 60
export const KEPT_ACTIONS: usize = 64
export const KEPT_COUNT: usize = 68
export const WORST: usize = 72
export const IS_NEAR: usize = 76
export const HAS_PLANES: usize = 80
export const FALLEN: usize = 84
export const MARGIN: usize = 88

// A landing: what becomes of balls that come down, by where, for one run, heading and way down.
export const L_REST: usize = 0
export const L_SLANT: usize = 4
export const L_HAS_NEAR: usize = 8
export const L_ROW_FROM: usize = 12
export const L_ROW_TO: usize = 16
export const L_SUM: usize = 20
export const L_BACK: usize = 24
export const L_DEAR: usize = 28
export const L_NEAR_SUM: usize = 32
export const L_NEAR_BACK: usize = 36
export const L_NEAR_DEAR: usize = 40
export const L_RELIEF: usize = 44
export const L_NEAR_RELIEF: usize = 48

// A slant: what catches balls on it, by cell.
export const S_MET: usize = 0
export const S_BEFORE: usize = 4
export const S_CELLS: usize = 8
export const S_LEFT: usize = 12
export const S_FIRST: usize = 16
export const S_OUTCOME: usize = 20
export const S_CHANCE: usize = 24
export const S_COUNT: usize = 28
export const S_SUM: usize = 32
export const S_BACK: usize = 36

// A strike, and a group of strikes that leave on one slant.
export const STRIKE_BYTES: usize = 20
export const K_LANDING: usize = 0
export const K_ROW: usize = 4
export const K_COLUMN: usize = 8
export const K_PHASE: usize = 12
export const K_GREEN: usize = 16
export const GROUP_BYTES: usize = 16
export const G_FIRST: usize = 0
export const G_LAST: usize = 4
export const G_WEIGHT: usize = 8
export const G_SLANT: usize = 12
export const SEGMENT_BYTES: usize = 12

/** Cells that are summed up side by side, and the copies of the edge that lie beyond a row so that they can be. */
export const BLOCK: i32 = 16
/** The relief of an outcome that simply costs the value of a place; and of one that is never dearer than going back. */
export const PLAIN: f32 = -3e38
export const NEVER_DEARER: f32 = -1e38
/**
 * Stands where a relief would on the green, where balls run by the strike's own table, and near the pin where fine cells
 * are not laid out: balls that land there are looked up one by one.
 */
export const ONE_BY_ONE: f32 = 3e38

@inline export function word(at: usize): i32 {
  return load<i32>(at)
}
@inline export function address(at: usize): usize {
  return load<u32>(at) as usize
}
@inline export function clamp(value: i32, size: i32): i32 {
  return value < 0 ? 0 : value >= size ? size - 1 : value
}
@inline export function wordAt(base: usize, index: i32): i32 {
  return load<i32>(base + ((index as usize) << 2))
}
@inline export function figureAt(base: usize, index: i32): f32 {
  return load<f32>(base + ((index as usize) << 2))
}
@inline export function setFigure(base: usize, index: i32, figure: f32): void {
  store<f32>(base + ((index as usize) << 2), figure)
}
@inline export function rowOf(base: usize, row: i32, stride: i32): usize {
  return base + (((row * stride) as usize) << 2)
}
/** Stretches of 16 cells in a row of so many, its copies of the edge included. */
@inline export function stretches(stride: i32): i32 {
  return (stride + BLOCK - 1) / BLOCK
}

/** Words of a row of bits, one for every cell and for the copies of the edge. */
@inline export function metStride(frame: usize): i32 {
  return (word(frame + COLUMNS) + BLOCK + 31) >> 5
}
/** 0 where a slant meets nothing, else one more than the cell's number: the bits that are set before its own. */
@inline export function slotOf(frame: usize, slant: usize, row: i32, column: i32): i32 {
  const at = row * metStride(frame) + (column >> 5)
  const met = wordAt(address(slant + S_MET), at)
  const bit = 1 << (column & 31)
  return (met & bit) == 0 ? 0 : wordAt(address(slant + S_BEFORE), at) + popcnt(met & (bit - 1)) + 1
}
/** Whether a slant meets any of the {@link BLOCK} cells from one on: their bits lie in three bytes. */
@inline export function isAnyMet(frame: usize, slant: usize, row: i32, column: i32): bool {
  const from = address(slant + S_MET) + ((row * metStride(frame)) << 2) + (column >> 3)
  return ((load<u32>(from) >> (column & 7)) & 0xffff) != 0
}

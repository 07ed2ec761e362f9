// The inner loops of a hole's solve: what landing somewhere costs, and what a stroke costs as a sum of shifted copies of
// that. Everything lies in one memory that the caller lays out: `src/numbers/kernels/weigh-layout.ts` names every word, and
// `src/numbers/kernels/weigh-plainly.ts` says the same in plain loops.

// The frame: words of 4 bytes.
const COLUMNS: usize = 0
const ROWS: usize = 4
const NEAR_COLUMN: usize = 8
const NEAR_ROW: usize = 12
const NEAR_COLUMNS: usize = 16
const NEAR_ROWS: usize = 20
const PHASES: usize = 24
const NEAR_PLACES: usize = 28
const COST: usize = 32
const BACK: usize = 36
const KEPT: usize = 40
const RELIEF: usize = 44
const RELIEVED: usize = 48
const RETURNED: usize = 52
const HERE: usize = 56
const KEPT_COSTS: usize = 60
const KEPT_ACTIONS: usize = 64
const KEPT_COUNT: usize = 68
const WORST: usize = 72
const IS_NEAR: usize = 76
const HAS_PLANES: usize = 80
const FALLEN: usize = 84
const MARGIN: usize = 88

// A landing: what becomes of balls that come down, by where, for one run, heading and way down.
const L_REST: usize = 0
const L_SLANT: usize = 4
const L_HAS_NEAR: usize = 8
const L_ROW_FROM: usize = 12
const L_ROW_TO: usize = 16
const L_SUM: usize = 20
const L_BACK: usize = 24
const L_DEAR: usize = 28
const L_NEAR_SUM: usize = 32
const L_NEAR_BACK: usize = 36
const L_NEAR_DEAR: usize = 40
const L_RELIEF: usize = 44
const L_NEAR_RELIEF: usize = 48

// A slant: what catches balls on it, by cell.
const S_SLOT: usize = 0
const S_CELLS: usize = 4
const S_LEFT: usize = 8
const S_FIRST: usize = 12
const S_OUTCOME: usize = 16
const S_CHANCE: usize = 20
const S_COUNT: usize = 24
const S_SUM: usize = 28
const S_BACK: usize = 32

// A strike, and a group of strikes that leave on one slant.
const STRIKE_BYTES: usize = 20
const K_LANDING: usize = 0
const K_ROW: usize = 4
const K_COLUMN: usize = 8
const K_PHASE: usize = 12
const K_GREEN: usize = 16
const GROUP_BYTES: usize = 16
const G_FIRST: usize = 0
const G_LAST: usize = 4
const G_WEIGHT: usize = 8
const G_SLANT: usize = 12
const SEGMENT_BYTES: usize = 12

/** Cells that are summed up side by side, and the copies of the edge that lie beyond a row so that they can be. */
const BLOCK: i32 = 16
/** The relief of an outcome that simply costs the value of a place; and of one that is never dearer than going back. */
const PLAIN: f32 = -3e38
const NEVER_DEARER: f32 = -1e38
/**
 * Stands where a relief would on the green, where balls run by the strike's own table, and near the pin where fine cells
 * are not laid out: balls that land there are looked up one by one.
 */
const ONE_BY_ONE: f32 = 3e38

@inline function word(at: usize): i32 {
  return load<i32>(at)
}
@inline function address(at: usize): usize {
  return load<u32>(at) as usize
}
@inline function clamp(value: i32, size: i32): i32 {
  return value < 0 ? 0 : value >= size ? size - 1 : value
}
@inline function wordAt(base: usize, index: i32): i32 {
  return load<i32>(base + ((index as usize) << 2))
}
@inline function figureAt(base: usize, index: i32): f32 {
  return load<f32>(base + ((index as usize) << 2))
}
@inline function setFigure(base: usize, index: i32, figure: f32): void {
  store<f32>(base + ((index as usize) << 2), figure)
}
@inline function rowOf(base: usize, row: i32, stride: i32): usize {
  return base + (((row * stride) as usize) << 2)
}
/** Stretches of 16 cells in a row of so many, its copies of the edge included. */
@inline function stretches(stride: i32): i32 {
  return (stride + BLOCK - 1) / BLOCK
}

/**
 * Lays out in a buffer what landing costs, wherever it may be: sums and what goes back by cell, and the near ones by fine
 * cell, each with the dearest relief of every stretch of 16 cells. The landing points to the buffer afterwards.
 */
export function layLanding(frame: usize, landing: usize, buffer: usize): void {
  const columns = word(frame + COLUMNS)
  const rows = word(frame + ROWS)
  const stride = columns + 2 * BLOCK
  const dearStride = stretches(stride)
  const nearStride = word(frame + NEAR_COLUMNS) + 2 * BLOCK
  const nearRows = word(frame + NEAR_ROWS)
  const size = ((rows * stride) as usize) << 2
  const nearSize = ((word(frame + PHASES) * nearRows * nearStride) as usize) << 2
  const sums = buffer
  const backs = sums + size
  const dears = backs + size
  const nearSums = dears + (((rows * dearStride) as usize) << 2)
  const nearBacks = nearSums + nearSize
  store<u32>(landing + L_SUM, sums as u32)
  store<u32>(landing + L_BACK, backs as u32)
  store<u32>(landing + L_DEAR, dears as u32)
  store<u32>(landing + L_NEAR_SUM, nearSums as u32)
  store<u32>(landing + L_NEAR_BACK, nearBacks as u32)
  const nearDears = nearBacks + nearSize
  const reliefs = nearDears + (((nearRows * stretches(nearStride)) as usize) << 2)
  store<u32>(landing + L_NEAR_DEAR, nearDears as u32)
  store<u32>(landing + L_RELIEF, reliefs as u32)
  store<u32>(landing + L_NEAR_RELIEF, (reliefs + size) as u32)
  const cost = address(frame + COST)
  const back = address(frame + BACK)
  const relief = address(frame + RELIEF)
  const rest = address(landing + L_REST)
  const rowFrom = word(landing + L_ROW_FROM)
  const rowTo = word(landing + L_ROW_TO)
  for (let row = rowFrom; row < rowTo; row++) {
    const sum = rowOf(sums, row, stride)
    const returned = rowOf(backs, row, stride)
    const dropped = rowOf(reliefs, row, stride)
    const dear = rowOf(dears, row, dearStride)
    const from = rowOf(rest, row, columns)
    const nears = address(frame + IS_NEAR) + ((row * columns) as usize)
    for (let stretch = 0; stretch < dearStride; stretch++) setFigure(dear, stretch, PLAIN)
    for (let begin = 0; begin < columns; begin += BLOCK) {
      const until = min(begin + BLOCK, columns)
      let dearest: f32 = PLAIN
      for (let column = begin; column < until; column++) {
        const outcome = wordAt(from, column)
        setFigure(sum, BLOCK + column, figureAt(cost, outcome))
        const one: f32 = load<u8>(nears + (column as usize)) != 0 ? ONE_BY_ONE : figureAt(relief, outcome)
        setFigure(dropped, BLOCK + column, one)
        dearest = max(dearest, one)
      }
      if (dearest == PLAIN) memory.fill(returned + ((BLOCK + begin) << 2), 0, (BLOCK as usize) << 2)
      else
        for (let column = begin; column < until; column++)
          setFigure(returned, BLOCK + column, figureAt(back, wordAt(from, column)))
      setFigure(dear, begin / BLOCK + 1, dearest)
    }
  }
  const slant = address(landing + L_SLANT)
  if (slant != 0) catchOnTheWayDown(frame, landing, slant)
  for (let row = rowFrom; row < rowTo; row++) {
    const dear = rowOf(dears, row, dearStride)
    replicateEdges(rowOf(sums, row, stride), columns)
    replicateEdges(rowOf(backs, row, stride), columns)
    replicateEdges(rowOf(reliefs, row, stride), columns)
    setFigure(dear, 0, figureAt(dear, 1))
    const last = (columns - 1) / BLOCK + 1
    for (let stretch = last + 1; stretch < dearStride; stretch++) setFigure(dear, stretch, figureAt(dear, last))
  }
  if (word(landing + L_HAS_NEAR) != 0 && word(frame + HAS_PLANES) != 0) layNear(frame, landing)
}

function replicateEdges(row: usize, columns: i32): void {
  const first = figureAt(row, BLOCK)
  const last = figureAt(row, BLOCK + columns - 1)
  for (let column = 0; column < BLOCK; column++) {
    setFigure(row, column, first)
    setFigure(row, BLOCK + columns + column, last)
  }
}

function catchOnTheWayDown(frame: usize, landing: usize, slant: usize): void {
  const columns = word(frame + COLUMNS)
  const stride = columns + 2 * BLOCK
  const dearStride = stretches(stride)
  const cells = address(slant + S_CELLS)
  const count = word(slant + S_COUNT)
  const sums = address(landing + L_SUM)
  const backs = address(landing + L_BACK)
  const reliefs = address(landing + L_RELIEF)
  const dears = address(landing + L_DEAR)
  const rowFrom = word(landing + L_ROW_FROM)
  const rowTo = word(landing + L_ROW_TO)
  for (let number = 0; number < count; number++) {
    const cell = wordAt(cells, number)
    const row = cell / columns
    if (row < rowFrom || row >= rowTo) continue
    const column = cell - row * columns
    const at = row * stride + BLOCK + column
    const dear = row * dearStride + column / BLOCK + 1
    catchOf(frame, slant, number, figureAt(reliefs, at))
    setFigure(reliefs, at, dearestRelief)
    setFigure(dears, dear, max(figureAt(dears, dear), dearestRelief))
    const left = figureAt(address(slant + S_LEFT), number)
    setFigure(sums, at, left > 0 ? caughtSum + left * figureAt(sums, at) : caughtSum)
    setFigure(backs, at, caughtBack + left * figureAt(backs, at))
  }
}

let caughtSum: f32 = 0
let caughtBack: f32 = 0
let dearestRelief: f32 = 0

/** What a slant catches from one cell where relief is taken, and the dearest relief, no cheaper than `dear`. */
function catchOf(frame: usize, slant: usize, number: i32, dear: f32): void {
  const cost = address(frame + COST)
  const back = address(frame + BACK)
  const relief = address(frame + RELIEF)
  const firsts = address(slant + S_FIRST)
  const outcomes = address(slant + S_OUTCOME)
  const chances = address(slant + S_CHANCE)
  const last = wordAt(firsts, number + 1)
  caughtSum = 0
  caughtBack = 0
  dearestRelief = max(dear, NEVER_DEARER)
  for (let at = wordAt(firsts, number); at < last; at++) {
    const outcome = wordAt(outcomes, at)
    const chance = figureAt(chances, at)
    caughtSum += chance * figureAt(cost, outcome)
    caughtBack += chance * figureAt(back, outcome)
    dearestRelief = max(dearestRelief, figureAt(relief, outcome))
  }
}

/** The same over fine cells near the pin, by their phase in a coarse cell; beyond them the coarse cells are copied. */
function layNear(frame: usize, landing: usize): void {
  const columns = word(frame + COLUMNS)
  const stride = columns + 2 * BLOCK
  const dearStride = stretches(stride)
  const nearColumn = word(frame + NEAR_COLUMN)
  const nearRow = word(frame + NEAR_ROW)
  const nearColumns = word(frame + NEAR_COLUMNS)
  const nearRows = word(frame + NEAR_ROWS)
  const nearStride = nearColumns + 2 * BLOCK
  const nearDearStride = stretches(nearStride)
  const phases = word(frame + PHASES)
  const places = address(frame + NEAR_PLACES)
  const cost = address(frame + COST)
  const back = address(frame + BACK)
  const relief = address(frame + RELIEF)
  const rest = address(landing + L_REST)
  const slant = address(landing + L_SLANT)
  const nearDears = address(landing + L_NEAR_DEAR)
  const rowFrom = word(landing + L_ROW_FROM)
  const rowTo = word(landing + L_ROW_TO)
  for (let row = 0; row < nearRows; row++) {
    const atRow = nearRow + row
    if (atRow < rowFrom || atRow >= rowTo) continue
    const coarse = ((atRow * stride + nearColumn) as usize) << 2
    const coarseDear = rowOf(address(landing + L_DEAR), atRow, dearStride)
    const dear = rowOf(nearDears, row, nearDearStride)
    for (let stretch = 0; stretch < nearDearStride; stretch++) {
      const from = (nearColumn + stretch * BLOCK) / BLOCK
      setFigure(
        dear,
        stretch,
        max(figureAt(coarseDear, min(from, dearStride - 1)), figureAt(coarseDear, min(from + 1, dearStride - 1))),
      )
    }
    for (let phase = 0; phase < phases; phase++) {
      const dropped = rowOf(address(landing + L_NEAR_RELIEF), phase * nearRows + row, nearStride)
      memory.copy(dropped, address(landing + L_RELIEF) + coarse, (nearStride as usize) << 2)
      const sum = rowOf(address(landing + L_NEAR_SUM), phase * nearRows + row, nearStride)
      const returned = rowOf(address(landing + L_NEAR_BACK), phase * nearRows + row, nearStride)
      const place = rowOf(places, phase * nearRows + row, nearColumns)
      memory.copy(sum, address(landing + L_SUM) + coarse, (nearStride as usize) << 2)
      memory.copy(returned, address(landing + L_BACK) + coarse, (nearStride as usize) << 2)
      for (let column = 0; column < nearColumns; column++) {
        const at = wordAt(place, column)
        const outcome = wordAt(rest, max(at, 0))
        let one = figureAt(cost, outcome)
        let share: f32 = 0
        let dearest = at < 0 ? ONE_BY_ONE : figureAt(relief, outcome)
        const stretch = (BLOCK + column) / BLOCK
        if (dearest != PLAIN) share = figureAt(back, outcome)
        const slot = slant == 0 ? 0 : slotOf(frame, slant, atRow, nearColumn + column)
        if (slot > 0) {
          const left = figureAt(address(slant + S_LEFT), slot - 1)
          catchOf(frame, slant, slot - 1, dearest)
          dearest = dearestRelief
          one = left > 0 ? caughtSum + left * one : caughtSum
          share = caughtBack + left * share
        }
        setFigure(sum, BLOCK + column, one)
        setFigure(returned, BLOCK + column, share)
        setFigure(dropped, BLOCK + column, dearest)
        if (dearest != PLAIN) setFigure(dear, stretch, max(figureAt(dear, stretch), dearest))
      }
    }
  }
}

@inline function slotOf(frame: usize, slant: usize, row: i32, column: i32): i32 {
  const at = ((row * (word(frame + COLUMNS) + BLOCK) + column) as usize) << 1
  return load<u16>(address(slant + S_SLOT) + at) as i32
}

/** What an outcome costs a ball struck from where the value is `here`: the sum, and the share that goes back in `shareBack`. */
// @ts-ignore: decorator
@inline function addOutcome(frame: usize, outcome: i32, chance: f32, here: f32): f32 {
  const relief = figureAt(address(frame + RELIEF), outcome)
  if (relief == PLAIN) return chance * figureAt(address(frame + COST), outcome)
  if (relief > <f32>1 + here) {
    shareBack +=
      chance * (figureAt(address(frame + RETURNED), outcome) + figureAt(address(frame + RELIEVED), outcome))
    return chance * figureAt(address(frame + KEPT), outcome)
  }
  shareBack += chance * figureAt(address(frame + BACK), outcome)
  return chance * figureAt(address(frame + COST), outcome)
}

let shareBack: f32 = 0

/** Works out what is caught on the way up, for each cell that balls leave from. */
export function layRise(frame: usize, slant: usize): void {
  const columns = word(frame + COLUMNS)
  const stride = columns + BLOCK
  const here = address(frame + HERE)
  const cells = address(slant + S_CELLS)
  const firsts = address(slant + S_FIRST)
  const outcomes = address(slant + S_OUTCOME)
  const chances = address(slant + S_CHANCE)
  const count = word(slant + S_COUNT)
  for (let number = 0; number < count; number++) {
    const cell = wordAt(cells, number)
    const row = cell / columns
    const value = figureAt(here, row * stride + (cell - row * columns))
    let sum: f32 = 0
    shareBack = 0
    const last = wordAt(firsts, number + 1)
    for (let at = wordAt(firsts, number); at < last; at++)
      sum += addOutcome(frame, wordAt(outcomes, at), figureAt(chances, at), value)
    setFigure(address(slant + S_SUM), number, sum)
    setFigure(address(slant + S_BACK), number, shareBack)
  }
}

/** One strike from one cell in full, where relief may be dearer than going back. */
function landOne(frame: usize, landing: usize, strike: usize, column: i32, row: i32, here: f32): f32 {
  const columns = word(frame + COLUMNS)
  const atColumn = clamp(column + word(strike + K_COLUMN), columns)
  const atRow = clamp(row + word(strike + K_ROW), word(frame + ROWS))
  const nearColumn = atColumn - word(frame + NEAR_COLUMN)
  const nearRow = atRow - word(frame + NEAR_ROW)
  const nearRows = word(frame + NEAR_ROWS)
  const nearColumns = word(frame + NEAR_COLUMNS)
  let outcome = 0
  if (nearColumn >= 0 && nearRow >= 0 && nearColumn < nearColumns && nearRow < nearRows) {
    const phase = word(strike + K_PHASE)
    const at = wordAt(address(frame + NEAR_PLACES), (phase * nearRows + nearRow) * nearColumns + nearColumn)
    outcome = at < 0 ? wordAt(address(strike + K_GREEN), -1 - at) : wordAt(address(landing + L_REST), at)
  } else outcome = wordAt(address(landing + L_REST), atRow * columns + atColumn)
  shareBack = 0
  const slant = address(landing + L_SLANT)
  const slot = slant == 0 ? 0 : slotOf(frame, slant, atRow, atColumn)
  if (slot == 0) return addOutcome(frame, outcome, 1, here)
  let sum: f32 = 0
  const firsts = address(slant + S_FIRST)
  const last = wordAt(firsts, slot)
  for (let at = wordAt(firsts, slot - 1); at < last; at++)
    sum += addOutcome(
      frame,
      wordAt(address(slant + S_OUTCOME), at),
      figureAt(address(slant + S_CHANCE), at),
      here,
    )
  const left = figureAt(address(slant + S_LEFT), slot - 1)
  return left > 0 ? sum + addOutcome(frame, outcome, left, here) : sum
}

/**
 * Whether an action may be among the cheapest of sixteen cells: each cost when last weighed, less how far any value can
 * have fallen since, is compared with the present value.
 */
// @ts-ignore: decorator
@inline function isLive(memo: usize, own: usize, fallen: v128, margin: v128, count: i32): bool {
  const live =
    i32x4.bitmask(f32x4.le(f32x4.sub(v128.load(memo), fallen), f32x4.add(v128.load(own), margin))) |
    (i32x4.bitmask(f32x4.le(f32x4.sub(v128.load(memo, 16), fallen), f32x4.add(v128.load(own, 16), margin))) << 4) |
    (i32x4.bitmask(f32x4.le(f32x4.sub(v128.load(memo, 32), fallen), f32x4.add(v128.load(own, 32), margin))) << 8) |
    (i32x4.bitmask(f32x4.le(f32x4.sub(v128.load(memo, 48), fallen), f32x4.add(v128.load(own, 48), margin))) << 12)
  return (live & ((1 << count) - 1)) != 0
}

/** Whether an action need be weighed at all. */
export function hasLive(frame: usize, segments: usize, segmentCount: i32, memo: usize): bool {
  const stateStride = word(frame + COLUMNS) + BLOCK
  const here = address(frame + HERE)
  const fallen = f32x4.splat(load<f32>(frame + FALLEN))
  const margin = f32x4.splat(load<f32>(frame + MARGIN))
  let next = memo
  for (let segment = 0; segment < segmentCount; segment++) {
    const at = segments + (segment as usize) * SEGMENT_BYTES
    const until = word(at + 8)
    for (let column = word(at + 4); column < until; column += BLOCK, next += 64) {
      const own = here + (((word(at) * stateStride + column) as usize) << 2)
      if (isLive(next, own, fallen, margin, min(BLOCK, until - column))) return true
    }
  }
  return false
}

/**
 * Weighs one action from every cell of its segments and keeps the cheapest few of each cell. `memo` holds by block of
 * cells what it cost when last weighed, with what values had fallen by then.
 */
export function weighAction(
  frame: usize,
  action: i32,
  groups: usize,
  groupCount: i32,
  segments: usize,
  segmentCount: i32,
  memo: usize,
): void {
  const columns = word(frame + COLUMNS)
  const rows = word(frame + ROWS)
  const stride = columns + 2 * BLOCK
  const dearStride = stretches(stride)
  const stateStride = columns + BLOCK
  const nearColumn = word(frame + NEAR_COLUMN)
  const nearRow = word(frame + NEAR_ROW)
  const nearColumns = word(frame + NEAR_COLUMNS)
  const nearRows = word(frame + NEAR_ROWS)
  const nearStride = nearColumns + 2 * BLOCK
  const nearDearStride = stretches(nearStride)
  const hasPlanes = word(frame + HAS_PLANES) != 0
  const nearPlaces = address(frame + NEAR_PLACES)
  const here = address(frame + HERE)
  const worst = address(frame + WORST)
  const zero = f32x4.splat(0)
  const one = f32x4.splat(1)
  const least = f32x4.splat(1e-6)
  const fallen = f32x4.splat(load<f32>(frame + FALLEN))
  const margin = f32x4.splat(load<f32>(frame + MARGIN))
  let nextMemo = memo
  const lanes = memory.data(64)
  const lanesBack = memory.data(64)
  const lanesShare = memory.data(64)
  for (let segment = 0; segment < segmentCount; segment++) {
    const at = segments + (segment as usize) * SEGMENT_BYTES
    const row = word(at)
    const until = word(at + 8)
    for (let column = word(at + 4); column < until; column += BLOCK) {
      const state = ((row * stateStride + column) as usize) << 2
      const count = min(BLOCK, until - column)
      const remembered = nextMemo
      nextMemo += 64
      if (!isLive(remembered, here + state, fallen, margin, count)) continue
      let leastHere = f32.MAX_VALUE
      for (let lane = 0; lane < count; lane++) leastHere = min(leastHere, figureAt(here + state, lane))
      const dearFrom: f32 = <f32>1 + leastHere
      let s0 = one
      let s1 = one
      let s2 = one
      let s3 = one
      let p0 = zero
      let p1 = zero
      let p2 = zero
      let p3 = zero
      let g0 = zero
      let g1 = zero
      let g2 = zero
      let g3 = zero
      let b0 = zero
      let b1 = zero
      let b2 = zero
      let b3 = zero
      let weight: f32 = 0
      let isOwn = false
      // One group more than there are: the last time round only adds what the last group left.
      for (let group = 0; group <= groupCount; group++) {
        const struck = groups + (group as usize) * GROUP_BYTES
        const slant = group == groupCount ? 0 : address(struck + G_SLANT)
        let isCaught = false
        if (slant != 0) {
          const slots = address(slant + S_SLOT) + (state >> 1)
          isCaught = v128.any_true(v128.or(v128.load(slots), v128.load(slots, 16)))
        }
        const next: f32 = group == groupCount ? -1 : load<f32>(struck + G_WEIGHT)
        if (next != weight || isCaught || isOwn) {
          const w = f32x4.splat(weight)
          s0 = f32x4.add(s0, f32x4.mul(g0, w))
          s1 = f32x4.add(s1, f32x4.mul(g1, w))
          s2 = f32x4.add(s2, f32x4.mul(g2, w))
          s3 = f32x4.add(s3, f32x4.mul(g3, w))
          p0 = f32x4.add(p0, f32x4.mul(b0, w))
          p1 = f32x4.add(p1, f32x4.mul(b1, w))
          p2 = f32x4.add(p2, f32x4.mul(b2, w))
          p3 = f32x4.add(p3, f32x4.mul(b3, w))
          g0 = zero
          g1 = zero
          g2 = zero
          g3 = zero
          b0 = zero
          b1 = zero
          b2 = zero
          b3 = zero
          weight = next
          isOwn = isCaught
        }
        if (group == groupCount) break
        const lastStrike = address(struck + G_LAST)
        for (let strike = address(struck + G_FIRST); strike < lastStrike; strike += STRIKE_BYTES) {
          const landing = address(strike + K_LANDING)
          const atRow = clamp(row + word(strike + K_ROW), rows)
          const raw = column + word(strike + K_COLUMN)
          const atColumn = (raw < -BLOCK ? -BLOCK : raw > columns ? columns : raw) + BLOCK
          const fromRow = atRow - nearRow
          const fromColumn = atColumn - nearColumn
          let sum: usize
          let back: usize
          let dear: f32
          const isNear =
            hasPlanes &&
            (fromRow as u32) < (nearRows as u32) && (fromColumn as u32) < ((nearColumns + BLOCK) as u32)
          if (isNear) {
            const offset =
              (((word(strike + K_PHASE) * nearRows + fromRow) * nearStride + fromColumn) as usize) << 2
            sum = address(landing + L_NEAR_SUM) + offset
            back = address(landing + L_NEAR_BACK) + offset
            const dears = address(landing + L_NEAR_DEAR)
            const stretch = fromRow * nearDearStride + (fromColumn >> 4)
            dear = max(figureAt(dears, stretch), (fromColumn & 15) == 0 ? PLAIN : figureAt(dears, stretch + 1))
          } else {
            const offset = ((atRow * stride + atColumn) as usize) << 2
            sum = address(landing + L_SUM) + offset
            back = address(landing + L_BACK) + offset
            const dears = address(landing + L_DEAR)
            const stretch = atRow * dearStride + (atColumn >> 4)
            dear = max(figureAt(dears, stretch), (atColumn & 15) == 0 ? PLAIN : figureAt(dears, stretch + 1))
          }
          if (dear > dearFrom) {
            const own = here + state
            const relief = isNear
              ? address(landing + L_NEAR_RELIEF) + (sum - address(landing + L_NEAR_SUM))
              : address(landing + L_RELIEF) + (sum - address(landing + L_SUM))
            let dearer =
              i32x4.bitmask(f32x4.gt(v128.load(relief), f32x4.add(one, v128.load(own)))) |
              (i32x4.bitmask(f32x4.gt(v128.load(relief, 16), f32x4.add(one, v128.load(own, 16)))) << 4) |
              (i32x4.bitmask(f32x4.gt(v128.load(relief, 32), f32x4.add(one, v128.load(own, 32)))) << 8) |
              (i32x4.bitmask(f32x4.gt(v128.load(relief, 48), f32x4.add(one, v128.load(own, 48)))) << 12)
            dearer &= (1 << count) - 1
            if (dearer != 0) {
              memory.copy(lanes, sum, 64)
              memory.copy(lanesBack, back, 64)
              if (address(landing + L_SLANT) == 0 && (fromRow as u32) < (nearRows as u32)) {
                // The places of neighbouring cells lie side by side.
                const from = (word(strike + K_PHASE) * nearRows + fromRow) * nearColumns + fromColumn - BLOCK
                const rest = address(landing + L_REST)
                const green = address(strike + K_GREEN)
                for (; dearer != 0; dearer &= dearer - 1) {
                  const lane = ctz(dearer)
                  const atLane = fromColumn - BLOCK + lane
                  let outcome: i32
                  if ((atLane as u32) < (nearColumns as u32)) {
                    const place = wordAt(nearPlaces, from + lane)
                    outcome = place < 0 ? wordAt(green, -1 - place) : wordAt(rest, place)
                  } else outcome = wordAt(rest, atRow * columns + clamp(raw + lane, columns))
                  shareBack = 0
                  setFigure(lanes, lane, addOutcome(frame, outcome, 1, figureAt(own, lane)))
                  setFigure(lanesBack, lane, shareBack)
                }
              } else
                for (; dearer != 0; dearer &= dearer - 1) {
                  const lane = ctz(dearer)
                  setFigure(lanes, lane, landOne(frame, landing, strike, column + lane, row, figureAt(own, lane)))
                  setFigure(lanesBack, lane, shareBack)
                }
              sum = lanes
              back = lanesBack
            }
          }
          g0 = f32x4.add(g0, v128.load(sum))
          g1 = f32x4.add(g1, v128.load(sum, 16))
          g2 = f32x4.add(g2, v128.load(sum, 32))
          g3 = f32x4.add(g3, v128.load(sum, 48))
          if (dear == PLAIN) continue
          b0 = f32x4.add(b0, v128.load(back))
          b1 = f32x4.add(b1, v128.load(back, 16))
          b2 = f32x4.add(b2, v128.load(back, 32))
          b3 = f32x4.add(b3, v128.load(back, 48))
        }
        if (!isCaught) continue
        const strikes = ((lastStrike - address(struck + G_FIRST)) / STRIKE_BYTES) as f32
        for (let lane = 0; lane < BLOCK; lane++) {
          const slot = load<u16>(address(slant + S_SLOT) + (state >> 1) + ((lane as usize) << 1)) as i32
          setFigure(lanesShare, lane, slot == 0 ? 1 : figureAt(address(slant + S_LEFT), slot - 1))
          setFigure(lanes, lane, slot == 0 ? 0 : strikes * figureAt(address(slant + S_SUM), slot - 1))
          setFigure(lanesBack, lane, slot == 0 ? 0 : strikes * figureAt(address(slant + S_BACK), slot - 1))
        }
        g0 = f32x4.add(f32x4.mul(g0, v128.load(lanesShare)), v128.load(lanes))
        g1 = f32x4.add(f32x4.mul(g1, v128.load(lanesShare, 16)), v128.load(lanes, 16))
        g2 = f32x4.add(f32x4.mul(g2, v128.load(lanesShare, 32)), v128.load(lanes, 32))
        g3 = f32x4.add(f32x4.mul(g3, v128.load(lanesShare, 48)), v128.load(lanes, 48))
        b0 = f32x4.add(f32x4.mul(b0, v128.load(lanesShare)), v128.load(lanesBack))
        b1 = f32x4.add(f32x4.mul(b1, v128.load(lanesShare, 16)), v128.load(lanesBack, 16))
        b2 = f32x4.add(f32x4.mul(b2, v128.load(lanesShare, 32)), v128.load(lanesBack, 32))
        b3 = f32x4.add(f32x4.mul(b3, v128.load(lanesShare, 48)), v128.load(lanesBack, 48))
      }
      // Balls that go back are replayed in closed form: (1 + S + p) / (1 − p).
      const q0 = f32x4.div(f32x4.add(s0, p0), f32x4.max(f32x4.sub(one, p0), least))
      const q1 = f32x4.div(f32x4.add(s1, p1), f32x4.max(f32x4.sub(one, p1), least))
      const q2 = f32x4.div(f32x4.add(s2, p2), f32x4.max(f32x4.sub(one, p2), least))
      const q3 = f32x4.div(f32x4.add(s3, p3), f32x4.max(f32x4.sub(one, p3), least))
      v128.store(remembered, f32x4.add(q0, fallen))
      v128.store(remembered, f32x4.add(q1, fallen), 16)
      v128.store(remembered, f32x4.add(q2, fallen), 32)
      v128.store(remembered, f32x4.add(q3, fallen), 48)
      const w = worst + state
      const isBetter = v128.or(
        v128.or(f32x4.lt(q0, v128.load(w)), f32x4.lt(q1, v128.load(w, 16))),
        v128.or(f32x4.lt(q2, v128.load(w, 32)), f32x4.lt(q3, v128.load(w, 48))),
      )
      if (!v128.any_true(isBetter)) continue
      v128.store(lanes, q0)
      v128.store(lanes, q1, 16)
      v128.store(lanes, q2, 32)
      v128.store(lanes, q3, 48)
      for (let lane = 0; lane < count; lane++)
        if (figureAt(lanes, lane) < figureAt(w, lane)) keep(frame, row, column + lane, action, figureAt(lanes, lane))
    }
  }
}

/** Puts an action among the few cheapest of a cell, in order of cost. */
function keep(frame: usize, row: i32, column: i32, action: i32, cost: f32): void {
  const columns = word(frame + COLUMNS)
  const slots = word(frame + KEPT_COUNT)
  const first = (row * columns + column) * slots
  const costs = address(frame + KEPT_COSTS)
  const actions = address(frame + KEPT_ACTIONS)
  let slot = first + slots - 1
  for (; slot > first && figureAt(costs, slot - 1) > cost; slot--) {
    setFigure(costs, slot, figureAt(costs, slot - 1))
    store<i32>(actions + ((slot as usize) << 2), wordAt(actions, slot - 1))
  }
  setFigure(costs, slot, cost)
  store<i32>(actions + ((slot as usize) << 2), action)
  setFigure(address(frame + WORST), row * (columns + BLOCK) + column, figureAt(costs, first + slots - 1))
}

// The inner loops of a hole's solve: what landing somewhere costs, and what a stroke costs as a sum of shifted copies of
// that. Everything lies in one memory that the caller lays out: `src/numbers/kernels/weigh-layout.ts` names every word, and
// `src/numbers/kernels/weigh-plainly.ts` says the same in plain loops.

import {
  COLUMNS,
  ROWS,
  NEAR_COLUMN,
  NEAR_ROW,
  NEAR_COLUMNS,
  NEAR_ROWS,
  NEAR_PLACES,
  HERE,
  KEPT_COSTS,
  KEPT_ACTIONS,
  KEPT_COUNT,
  WORST,
  HAS_PLANES,
  FALLEN,
  MARGIN,
  L_REST,
  L_SLANT,
  L_SUM,
  L_BACK,
  L_DEAR,
  L_NEAR_SUM,
  L_NEAR_BACK,
  L_NEAR_DEAR,
  L_RELIEF,
  L_NEAR_RELIEF,
  S_LEFT,
  S_SUM,
  S_BACK,
  STRIKE_BYTES,
  K_LANDING,
  K_ROW,
  K_COLUMN,
  K_PHASE,
  K_GREEN,
  GROUP_BYTES,
  G_FIRST,
  G_LAST,
  G_WEIGHT,
  G_SLANT,
  SEGMENT_BYTES,
  BLOCK,
  PLAIN,
  word,
  address,
  clamp,
  wordAt,
  figureAt,
  setFigure,
  stretches,
  slotOf,
  isAnyMet,
} from './layout'
import { addOutcome, shareBack, clearBack } from './outcome'
import { landOne } from './one-by-one'

export { layLanding } from './lay-landing'
export { layRise } from './one-by-one'

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
          isCaught = isAnyMet(frame, slant, row, column)
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
                  clearBack()
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
          const slot = slotOf(frame, slant, row, column + lane)
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

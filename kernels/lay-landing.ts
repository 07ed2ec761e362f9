// What landing costs, over the whole hole.
import {
  COLUMNS,
  ROWS,
  NEAR_COLUMN,
  NEAR_ROW,
  NEAR_COLUMNS,
  NEAR_ROWS,
  PHASES,
  NEAR_PLACES,
  COST,
  BACK,
  RELIEF,
  IS_NEAR,
  HAS_PLANES,
  L_REST,
  L_SLANT,
  L_HAS_NEAR,
  L_ROW_FROM,
  L_ROW_TO,
  L_SUM,
  L_BACK,
  L_DEAR,
  L_NEAR_SUM,
  L_NEAR_BACK,
  L_NEAR_DEAR,
  L_RELIEF,
  L_NEAR_RELIEF,
  S_CELLS,
  S_LEFT,
  S_FIRST,
  S_OUTCOME,
  S_CHANCE,
  S_COUNT,
  BLOCK,
  PLAIN,
  NEVER_DEARER,
  ONE_BY_ONE,
  word,
  address,
  wordAt,
  figureAt,
  setFigure,
  rowOf,
  stretches,
  slotOf,
} from './layout'

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

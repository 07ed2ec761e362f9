// What is looked up cell by cell: balls caught as they leave, and landings where relief may be dearer than going back.
import {
  COLUMNS,
  ROWS,
  NEAR_COLUMN,
  NEAR_ROW,
  NEAR_COLUMNS,
  NEAR_ROWS,
  NEAR_PLACES,
  HERE,
  L_REST,
  L_SLANT,
  S_CELLS,
  S_LEFT,
  S_FIRST,
  S_OUTCOME,
  S_CHANCE,
  S_COUNT,
  S_SUM,
  S_BACK,
  K_ROW,
  K_COLUMN,
  K_PHASE,
  K_GREEN,
  BLOCK,
  word,
  address,
  clamp,
  wordAt,
  figureAt,
  setFigure,
  slotOf,
} from './layout'
import { addOutcome, shareBack, clearBack } from './outcome'

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
    clearBack()
    const last = wordAt(firsts, number + 1)
    for (let at = wordAt(firsts, number); at < last; at++)
      sum += addOutcome(frame, wordAt(outcomes, at), figureAt(chances, at), value)
    setFigure(address(slant + S_SUM), number, sum)
    setFigure(address(slant + S_BACK), number, shareBack)
  }
}

/** One strike from one cell in full, where relief may be dearer than going back. */
export function landOne(frame: usize, landing: usize, strike: usize, column: i32, row: i32, here: f32): f32 {
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
  clearBack()
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

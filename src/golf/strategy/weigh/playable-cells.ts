import { centreToday, type HoleModel } from '../hole-model.ts'
import type { LineGroup } from '../line-groups.ts'
import { headingOf } from '../lines-of-play.ts'
import { MOST_OFF_LINE_METRES, PARTIAL_SWING_METRES } from '../settings.ts'
import { isLow, isPartial, type Shot } from '../shots.ts'
import { isAtPin } from '../states.ts'

/**
 * The cells of a group from which a shot is played on its line: not much too long, low shots only where trees are in the
 * way, partial swings only on approaches, and only where the middle of the finishes lies on the hole. In the order of the
 * group. `reach`: by cell, the longest total that is tried there.
 */
export function playableCells(
  model: HoleModel,
  shot: Shot,
  group: LineGroup,
  reach: Float64Array,
): readonly number[] {
  const { places, states } = model
  const { columns, rows, resolution } = places.coarse
  const { offLine, isHampered } = states
  const { heading, total } = centreToday(model, shot, headingOf(group.line))
  const partialReach = isPartial(shot)
    ? shot.stock.totalMetres + PARTIAL_SWING_METRES
    : Number.POSITIVE_INFINITY
  const onlyHampered = isLow(shot)
  const byColumns = Math.round((total * Math.sin(heading)) / resolution)
  const byRows = Math.round((total * Math.cos(heading)) / resolution)
  const cells: number[] = []
  for (const cell of group.states) {
    if (total > (reach[cell] as number)) continue
    if (onlyHampered && isHampered[cell] === 0) continue
    if ((places.toPin[cell] as number) > partialReach) continue
    const row = Math.floor(cell / columns)
    const atColumn = held(cell - row * columns + byColumns, columns)
    const atRow = held(row + byRows, rows)
    const off = offLine[atRow * columns + atColumn] as number
    if (
      off <= MOST_OFF_LINE_METRES ||
      off <= (offLine[cell] as number) ||
      isAtPin(model, cell, heading, total)
    )
      cells.push(cell)
  }
  return cells
}

function held(index: number, size: number): number {
  return index < 0 ? 0 : index >= size ? size - 1 : index
}

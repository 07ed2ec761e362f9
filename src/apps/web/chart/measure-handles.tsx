import type { ReactElement } from 'react'
import type { Point } from '#numbers/geometry/point.ts'
import type { Sheet } from '#paper/draw/sheet.ts'
import { onArrows } from './on-arrows.ts'
import { useDrag } from './use-drag.ts'

/** The two ends of what is measured. */
export type Measured = readonly [Point, Point]

/** Handles at both ends of a measured line. */
export function MeasureHandles(props: {
  readonly measured: Measured
  readonly sheet: Sheet
  /** Metres of one step by key. */
  readonly step: number
  readonly ground: (at: Point) => Point
  readonly onMeasured: (measured: Measured) => void
}): ReactElement {
  const { measured, onMeasured } = props
  const [from, to] = measured
  return (
    <>
      <MeasureEnd {...props} label="Measured from" at={from} onMove={(at) => onMeasured([at, to])} />
      <MeasureEnd {...props} label="Measured to" at={to} onMove={(at) => onMeasured([from, at])} />
    </>
  )
}

function MeasureEnd(props: {
  readonly label: string
  readonly at: Point
  readonly sheet: Sheet
  readonly step: number
  readonly ground: (at: Point) => Point
  readonly onMove: (at: Point) => void
}): ReactElement {
  const { label, at, sheet, step, ground, onMove } = props
  const drag = useDrag(({ now }) => onMove(ground(now)))
  const [x, y] = sheet.toSheet(at)
  return (
    <button
      type="button"
      className="handle handle-measure"
      style={{ left: x, top: y }}
      aria-label={`${label}: arrow keys move it`}
      onKeyDown={(event) =>
        onArrows(event, (right, further) => onMove([at[0] + right * step, at[1] + further * step]))
      }
      {...drag}
    />
  )
}

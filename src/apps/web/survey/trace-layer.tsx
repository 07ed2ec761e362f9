import type { ReactElement } from 'react'
import type { Point } from '#numbers/geometry/point.ts'
import type { Sheet } from '#paper/draw/sheet.ts'

/** What is being traced, the corners of the chosen outline and the cross, over the chart. */
export function TraceLayer(props: {
  readonly sheet: Sheet
  readonly draft: readonly Point[]
  readonly chosen: readonly Point[]
  /** `null` while nothing is traced. */
  readonly cross: Point | null
}): ReactElement {
  const { sheet } = props
  const [draft, chosen] = [props.draft.map(sheet.toSheet), props.chosen.map(sheet.toSheet)]
  const [x, y] = props.cross === null ? [0, 0] : sheet.toSheet(props.cross)
  return (
    <svg
      className="chart-layer trace-layer"
      width={sheet.width}
      height={sheet.height}
      viewBox={`0 0 ${sheet.width} ${sheet.height}`}
      aria-hidden="true"
    >
      {chosen.length > 0 && <polygon points={pointsText(chosen)} />}
      {draft.length > 0 && <polyline points={pointsText(draft)} />}
      {[...chosen, ...draft].map(([cx, cy], index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: corners have no other name.
        <circle key={index} cx={cx} cy={cy} r={index === chosen.length ? 7 : 4.5} />
      ))}
      {props.cross !== null && (
        <path
          className="trace-cross"
          d={`M${x - 12} ${y}H${x - 4}M${x + 4} ${y}H${x + 12}M${x} ${y - 12}V${y - 4}M${x} ${y + 4}V${y + 12}`}
        />
      )}
    </svg>
  )
}

function pointsText(points: readonly Point[]): string {
  return points.map((at) => at.join(',')).join(' ')
}

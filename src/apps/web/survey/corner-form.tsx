import type { ReactElement } from 'react'
import type { Point } from '#numbers/geometry/point.ts'
import type { TableUnit } from '#outside/formats/table-unit.ts'
import { FigureField } from './figure-field.tsx'

/** The corners of a traced outline as figures: along the first leg and beside it, left negative. */
export function CornerForm(props: {
  readonly corners: readonly Point[]
  readonly unit: TableUnit
  readonly onCorners: (kind: string, corners: readonly Point[]) => void
}): ReactElement {
  const { corners, unit, onCorners } = props
  return (
    <table className="corner-table">
      <caption>
        Corners in {unit}, along the first leg of the line and beside it, left of it with a minus.
      </caption>
      <thead>
        <tr>
          <th scope="col">No.</th>
          <th scope="col">along</th>
          <th scope="col">beside</th>
          <th scope="col">
            <span className="unseen">Change</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {corners.map((corner, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: corners have no other name.
          <tr key={index}>
            <th scope="row">{index + 1}</th>
            {([1, 0] as const).map((axis) => (
              <td key={axis}>
                <FigureField
                  label={`Corner ${index + 1}, ${axis === 1 ? 'along' : 'beside'}`}
                  metres={corner[axis]}
                  unit={unit}
                  onMetres={(metres) =>
                    onCorners(
                      `corner ${index} ${axis}`,
                      corners.with(index, axis === 1 ? [corner[0], metres] : [metres, corner[1]]),
                    )
                  }
                />
              </td>
            ))}
            <td className="corner-buttons">
              <button
                type="button"
                className="quiet"
                aria-label={`Another corner after ${index + 1}`}
                onClick={() => onCorners('insert', corners.toSpliced(index + 1, 0, between(corners, index)))}
              >
                +
              </button>
              <button
                type="button"
                className="quiet"
                aria-label={`Remove corner ${index + 1}`}
                disabled={corners.length <= 3}
                onClick={() => onCorners('remove', corners.toSpliced(index, 1))}
              >
                ×
              </button>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

function between(corners: readonly Point[], index: number): Point {
  const [a, b] = [corners[index] ?? [0, 0], corners[(index + 1) % corners.length] ?? [0, 0]]
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]
}

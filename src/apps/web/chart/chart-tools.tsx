import type { ReactElement } from 'react'
import { DESK_SETTINGS } from '../settings.ts'
import type { ChartSight } from './use-chart-view.ts'

/** What is done to the chart and not to the hole: enlarge, measure, show the expected score. */
export function ChartTools(props: {
  readonly sight: ChartSight | null
  readonly isMeasuring: boolean
  readonly onMeasure: (isOn: boolean) => void
  /** `null` while no plan knows the scores. */
  readonly hasScores: boolean | null
  readonly onScores: (isOn: boolean) => void
}): ReactElement {
  const { sight, isMeasuring, hasScores } = props
  return (
    <div className="chart-tools" role="toolbar" aria-label="The chart">
      <button type="button" onClick={() => sight?.enlarge(DESK_SETTINGS.enlargeStep)}>
        Nearer
      </button>
      <button
        type="button"
        disabled={sight?.isEnlarged !== true}
        onClick={() => sight?.enlarge(1 / DESK_SETTINGS.enlargeStep)}
      >
        Further
      </button>
      <button type="button" disabled={sight?.isEnlarged !== true} onClick={() => sight?.showWhole()}>
        Whole hole
      </button>
      <button type="button" aria-pressed={isMeasuring} onClick={() => props.onMeasure(!isMeasuring)}>
        Measure
      </button>
      <button
        type="button"
        aria-pressed={hasScores === true}
        disabled={hasScores === null}
        onClick={() => props.onScores(hasScores !== true)}
      >
        Scores
      </button>
    </div>
  )
}

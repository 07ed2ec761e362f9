import type { ReactElement } from 'react'
import { useCommands } from '../commands/use-commands.ts'
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
  const isEnlarged = sight?.isEnlarged === true
  const nearer = (): void => sight?.enlarge(DESK_SETTINGS.enlargeStep)
  const awayFrom = (): void => sight?.enlarge(1 / DESK_SETTINGS.enlargeStep)
  const wholeHole = (): void => sight?.showWhole()
  const measure = (): void => props.onMeasure(!isMeasuring)
  const scores = (): void => props.onScores(hasScores !== true)
  useCommands({
    nearer,
    awayFrom: isEnlarged ? awayFrom : null,
    wholeHole: isEnlarged ? wholeHole : null,
    measure,
    scores: hasScores === null ? null : scores,
  })
  return (
    <div className="chart-tools" role="toolbar" aria-label="The chart">
      <button type="button" onClick={nearer}>
        Nearer
      </button>
      <button type="button" disabled={!isEnlarged} onClick={awayFrom}>
        Further
      </button>
      <button type="button" disabled={!isEnlarged} onClick={wholeHole}>
        Whole hole
      </button>
      <button type="button" aria-pressed={isMeasuring} onClick={measure}>
        Measure
      </button>
      <button type="button" aria-pressed={hasScores === true} disabled={hasScores === null} onClick={scores}>
        Scores
      </button>
    </div>
  )
}

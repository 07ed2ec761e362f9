import type { ReactElement } from 'react'
import { Choice } from '../ledger/choice.tsx'
import { TRACED_KINDS } from './row-kinds.ts'

/** What a tap on the chart does: choose traced ground, or put down the corners of new ground. */
export function TraceSection(props: {
  readonly tracing: string | null
  readonly what: string
  readonly corners: number
  readonly onWhat: (what: string) => void
  readonly onTrace: (isOn: boolean) => void
  readonly onClose: () => void
  readonly onDrop: () => void
}): ReactElement {
  const { tracing, what, corners } = props
  return (
    <>
      <div className="made-buttons">
        <button type="button" aria-pressed={tracing !== null} onClick={() => props.onTrace(tracing === null)}>
          Trace
        </button>
        <Choice label="What a tap traces" value={what} options={TRACED_KINDS} onChange={props.onWhat} />
        <button type="button" disabled={corners < 3} onClick={props.onClose}>
          Close the outline
        </button>
        <button type="button" disabled={corners === 0} onClick={props.onDrop}>
          Let it go
        </button>
      </div>
      <p role="status">{words(tracing, what, corners)}</p>
    </>
  )
}

function words(tracing: string | null, what: string, corners: number): string {
  if (tracing === null)
    return 'Ground can be traced on the chart, over a picture of your own, a map, or on blank paper.'
  if (what === 'tee') return 'Tap where the markers stand.'
  if (corners === 0) return 'Tap the outline, corner by corner.'
  if (corners < 3) return corners === 1 ? '1 corner.' : `${corners} corners.`
  return `${corners} corners. Tap the last one again, or press enter on the chart, to close it.`
}

import type { ReactElement } from 'react'
import '../style/plan-progress.css'
import type { Work } from './use-work.ts'

/** How far the plans of a round are, with a way to stop and to go on; nothing once all are there. */
export function PlanProgress({ work }: { readonly work: Work<unknown> }): ReactElement | null {
  const { done, of, isRunning, stop, goOn } = work
  if (done >= of) return null
  return (
    <div className="plan-progress">
      <progress max={of} value={done} aria-label="Holes planned" />
      <p role="status">
        {isRunning
          ? `${done} of ${of} holes are planned.`
          : `Stopped: ${of - done} of ${of} holes are not planned.`}
      </p>
      {isRunning ? (
        <button type="button" onClick={stop}>
          Stop planning
        </button>
      ) : (
        <button type="button" onClick={goOn}>
          Plan the rest
        </button>
      )}
    </div>
  )
}

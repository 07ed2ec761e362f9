import type { ReactElement } from 'react'
import type { RoundPlans } from './use-round-plans.ts'

/** How far the plans of the round are, with a way to stop and to go on; nothing once all are there. */
export function PlanProgress(props: {
  readonly plans: RoundPlans
  readonly of: number
}): ReactElement | null {
  const { plans, of } = props
  const { done, isRunning, stop, goOn } = plans
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

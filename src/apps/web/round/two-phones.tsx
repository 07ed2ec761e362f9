import type { ReactElement } from 'react'
import { type LogStep, playAfter, removeStroke } from '#golf/round/log-steps.ts'
import type { HoleOfLog } from '#golf/round/round-of-log.ts'

/** Strokes that two phones wrote down under one number: a person says whether they are the same. */
export function TwoPhones(props: {
  readonly hole: HoleOfLog
  readonly step: (step: LogStep) => void
}): ReactElement | null {
  const { hole, step } = props
  const ids = hole.setAside.map(({ id }) => id)
  if (ids.length === 0) return null
  const names = hole.setAside.map(({ stroke }) => stroke.club ?? 'a club').join(', ')
  return (
    <section role="alert" className="two-phones">
      <p>Two phones wrote strokes of this hole down. Counted are those below; set aside: {names}.</p>
      <div className="keys two">
        <button
          type="button"
          onClick={() => step((log, by) => ids.flatMap((id) => removeStroke(id)(log, by)))}
        >
          They are the same strokes
        </button>
        <button type="button" onClick={() => step(playAfter(ids))}>
          They were played after these
        </button>
      </div>
    </section>
  )
}

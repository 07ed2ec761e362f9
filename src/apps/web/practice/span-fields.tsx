import type { ReactElement } from 'react'
import { CountField } from '../page/count-field.tsx'

/** How much is practised, how long, and from which day. */
export interface PracticeSpan {
  readonly hours: number
  readonly weeks: number
  /** `2026-11-25`, or empty. */
  readonly from: string
}

/** As at the command line. */
const MOST = { hours: 500, weeks: 52 } as const

/** Hours, weeks and the first day; what is no whole number in reach is marked and changes nothing. */
export function SpanFields(props: {
  readonly span: PracticeSpan
  readonly onChange: (span: PracticeSpan) => void
}): ReactElement {
  const { span, onChange } = props
  return (
    <div className="note-fields">
      <CountField
        label="Hours of practice"
        value={span.hours}
        most={MOST.hours}
        onChange={(hours) => onChange({ ...span, hours })}
      />
      <CountField
        label="Weeks to the re-test"
        value={span.weeks}
        most={MOST.weeks}
        onChange={(weeks) => onChange({ ...span, weeks })}
      />
      <label>
        From
        <input
          type="date"
          value={span.from}
          onChange={(event) => onChange({ ...span, from: event.currentTarget.value })}
        />
      </label>
    </div>
  )
}

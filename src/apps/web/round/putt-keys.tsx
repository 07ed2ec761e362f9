import { type ReactElement, useState } from 'react'
import { type LogStep, say } from '#golf/round/log-steps.ts'
import type { HoleOfLog } from '#golf/round/round-of-log.ts'
import { PUTT, typedMetres, type Units } from './club-words.ts'

/** How many putts, and how long the first was. */
export function PuttKeys(props: {
  readonly hole: HoleOfLog
  readonly units: Units
  readonly step: (step: LogStep) => void
}): ReactElement {
  const { hole, units, step } = props
  const { sign, metres } = PUTT[units]
  const known =
    hole.firstPuttMetres === null ? '' : `${Math.round((hole.firstPuttMetres / metres) * 10) / 10}`
  const [typed, setTyped] = useState<string | null>(null)
  const keep = (): void => {
    if (typed === null || typed === known) return
    step(say({ kind: 'first putt', hole: hole.ref, metres: typedMetres(typed, metres) }))
    setTyped(null)
  }
  return (
    <fieldset className="keys putts">
      <legend>Putts</legend>
      {[0, 1, 2, 3, 4].map((putts) => (
        <button
          key={putts}
          type="button"
          aria-label={`${putts} putts`}
          aria-pressed={hole.putts === putts}
          onClick={() =>
            step(say({ kind: 'putts', hole: hole.ref, putts: hole.putts === putts ? null : putts }))
          }
        >
          {putts}
        </button>
      ))}
      <button
        type="button"
        onClick={() =>
          step(say({ kind: 'putts', hole: hole.ref, putts: Math.min(20, (hole.putts ?? 0) + 1) }))
        }
      >
        One more
      </button>
      <label className="left">
        First putt, {sign}
        <input
          inputMode="decimal"
          autoComplete="off"
          value={typed ?? known}
          onChange={(event) => setTyped(event.currentTarget.value)}
          onBlur={keep}
          onKeyDown={(event) => event.key === 'Enter' && keep()}
        />
      </label>
    </fieldset>
  )
}

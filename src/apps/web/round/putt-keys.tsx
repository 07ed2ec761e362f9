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
  // What is typed stands until the round says it, so that the field is never empty between.
  const [typed, setTyped] = useState({ text: known, over: known })
  const shown = typed.over === known ? typed.text : known
  const said = typedMetres(shown, metres)
  const isWrong = said === null && shown.trim() !== ''
  const keep = (): void => {
    if (shown !== known && !isWrong) step(say({ kind: 'first putt', hole: hole.ref, metres: said }))
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
          aria-invalid={isWrong || undefined}
          value={shown}
          onChange={(event) => setTyped({ text: event.currentTarget.value, over: known })}
          onBlur={keep}
          onKeyDown={(event) => event.key === 'Enter' && keep()}
        />
      </label>
    </fieldset>
  )
}

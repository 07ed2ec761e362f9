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
  const said = typedMetres(typed ?? known, metres)
  const isWrong = typed !== null && said === null && typed.trim() !== ''
  const keep = (): void => {
    if (typed === null || isWrong) return
    if (typed !== known) step(say({ kind: 'first putt', hole: hole.ref, metres: said }))
    // From here on it is shown as the round says it, once that is on the disk.
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
          aria-invalid={isWrong || undefined}
          value={typed ?? known}
          onChange={(event) => setTyped(event.currentTarget.value)}
          onBlur={keep}
          onKeyDown={(event) => event.key === 'Enter' && keep()}
        />
      </label>
    </fieldset>
  )
}

import type { ReactElement } from 'react'
import { Section } from '../ledger/section.tsx'
import { recapPlace } from '../page/places.ts'
import type { ClosedRound } from '../rounds/closed-rounds.ts'

/** Which rounds count, and on which day the season begins: those that count and are earlier are the season before. */
export interface CountedRounds {
  /** Ids of those that were taken out by hand. */
  readonly leftOut: ReadonlySet<string>
  /** `2026-04-01`; empty = all rounds are one season. */
  readonly begins: string
}

/** Whether a round is of the season before. One without a date is of this season. */
export function isOfSeasonBefore({ round }: ClosedRound, begins: string): boolean {
  return begins !== '' && round.date !== null && round.date < begins
}

/** Every round with the choice whether it counts, and the first day of the season. */
export function RoundsThatCount(
  props: CountedRounds & {
    readonly rounds: readonly ClosedRound[]
    readonly onChange: (counted: CountedRounds) => void
  },
): ReactElement {
  const { rounds, leftOut, begins, onChange } = props
  const turn = (id: string): void => {
    const left = new Set(leftOut)
    if (!left.delete(id)) left.add(id)
    onChange({ leftOut: left, begins })
  }
  return (
    <Section title="Rounds that count here" className="counted-rounds">
      <div className="note-fields">
        <label>
          The season begins on
          <input
            type="date"
            value={begins}
            onChange={(event) => onChange({ leftOut, begins: event.currentTarget.value })}
          />
        </label>
        <p className="after-basis">
          Rounds that are earlier become the season before, and what changed is told.
        </p>
      </div>
      <ul>
        {rounds.map((one) => {
          const { id, name, round, day } = one
          return (
            <li key={id} className="kept-round">
              <span>
                {name}, {round.holes.length} {round.holes.length === 1 ? 'hole' : 'holes'}
                {isOfSeasonBefore(one, begins) && ', of the season before'}
                {begins !== '' && round.date === null && ', of this season as it has no date'}
                {day === null && ', its day is not kept'}
              </span>
              <button
                type="button"
                aria-pressed={!leftOut.has(id)}
                aria-label={`${name} counts`}
                onClick={() => turn(id)}
              >
                Counts
              </button>
              <a className="button" href={recapPlace(id)} aria-label={`Recap of ${name}`}>
                Recap
              </a>
            </li>
          )
        })}
      </ul>
    </Section>
  )
}

import type { ReactElement } from 'react'
import { Section } from '../ledger/section.tsx'
import { Lines } from '../page/lines.tsx'
import { ROUNDS } from '../page/places.ts'
import type { RoundToLearn } from './rounds-to-learn.ts'

/** The rounds of the player: which of them are learned from, beside the shots that were put down. */
export function RoundChoices(props: {
  readonly playerName: string
  readonly rounds: readonly RoundToLearn[]
  /** What tells the rounds that the player was learned from before. */
  readonly learned: readonly string[]
  /** Ids of the rounds that are chosen. */
  readonly chosen: ReadonlySet<string>
  readonly notes: readonly string[]
  readonly onChoose: (id: string, isChosen: boolean) => void
}): ReactElement {
  const { playerName, rounds, learned, chosen, notes, onChoose } = props
  return (
    <Section title="Rounds to learn from" className="counted-rounds">
      {rounds.length === 0 && (
        <p>
          No closed round of {playerName} is kept yet.{' '}
          <a className="button" href={ROUNDS}>
            Write one down
          </a>
        </p>
      )}
      <ul>
        {rounds.map(({ id, key, name, course, round, day }) => (
          <li key={id} className="kept-round">
            <span>
              {name}, {course.name}, {round.holes.length} {round.holes.length === 1 ? 'hole' : 'holes'}
              {day === null && ', its day is not kept'}
            </span>
            {learned.includes(key) ? (
              <em>learned from before</em>
            ) : (
              <button
                type="button"
                aria-pressed={chosen.has(id)}
                aria-label={`Learn from it: ${name}`}
                onClick={() => onChoose(id, !chosen.has(id))}
              >
                Learn from it
              </button>
            )}
          </li>
        ))}
      </ul>
      <Lines of={notes} />
    </Section>
  )
}

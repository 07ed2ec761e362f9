import type { ReactElement } from 'react'
import type { OwnSentence } from '#golf/player/own-sentence.ts'
import type { ChangedSentence } from '#paper/book/own-words.ts'
import { PART_NAMES } from './part-names.ts'

/** Sentences under which the plan has changed since they were written, each beside what it proposes now. */
export function ChangedList(props: {
  readonly changed: readonly ChangedSentence[]
  readonly onTake: (sentence: OwnSentence) => void
  readonly onKeep: (sentence: OwnSentence) => void
}): ReactElement | null {
  const { changed, onTake, onKeep } = props
  if (changed.length === 0) return null
  return (
    <section className="changed-list" aria-label="To look at again">
      <h2>To look at again</h2>
      <ul>
        {changed.map(({ sentence, proposed, why }) => {
          const { hole, part, club, words } = sentence
          const place = `hole ${hole}, ${PART_NAMES[part]}`
          return (
            <li key={`${hole} ${part}`}>
              <p>
                <b>Hole {hole}</b>, {PART_NAMES[part]}:{' '}
                {why === 'units'
                  ? `yours is written in ${sentence.units}.`
                  : 'the plan has changed since you wrote.'}
              </p>
              <p>
                Yours: <q>{[club, words].filter((each) => each).join(': ') || 'nothing'}</q>
              </p>
              <p>
                The plan’s: <q>{proposed === '' ? 'nothing' : proposed}</q>
              </p>
              <button type="button" aria-label={`Take the plan’s: ${place}`} onClick={() => onTake(sentence)}>
                Take the plan’s
              </button>
              <button type="button" aria-label={`Keep mine: ${place}`} onClick={() => onKeep(sentence)}>
                Keep mine
              </button>
            </li>
          )
        })}
      </ul>
    </section>
  )
}

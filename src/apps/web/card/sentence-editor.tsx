import { type CSSProperties, type ReactElement, useEffect, useId, useRef } from 'react'
import {
  MOST_LETTERS,
  type OwnSentence,
  type SentencePart,
  type SentenceReader,
} from '#golf/player/own-sentence.ts'
import { type Advice, partWords } from '#paper/book/advice.ts'
import type { BookFacts } from '#paper/book/book-facts.ts'
import { adviceOf, ownSentences, proposedFor, wordsUnder } from '#paper/book/own-words.ts'
import type { BookHole } from '#paper/book/planned-hole.ts'
import { PART_NAMES } from './part-names.ts'

/** The parts that stand on the card of a reader. */
const PARTS: Readonly<Record<SentenceReader, readonly SentencePart[]>> = {
  player: ['stroke', 'next', 'never'],
  junior: ['stroke', 'never'],
}

/** The sentences of one hole to be written anew: the row above follows with every key. Escape or Done puts it away. */
export function SentenceEditor(props: {
  readonly one: BookHole
  readonly facts: BookFacts
  readonly whose: SentenceReader
  readonly units: 'yards' | 'metres'
  readonly style: CSSProperties
  readonly onWrite: (sentence: OwnSentence) => void
  readonly onDrop: (sentence: OwnSentence) => void
  readonly onDone: () => void
}): ReactElement {
  const { one, facts, whose, units } = props
  const place = useRef<HTMLFormElement>(null)
  const { ref } = one.hole
  useEffect(() => {
    const row = document.activeElement
    place.current?.querySelector('textarea')?.focus()
    place.current?.scrollIntoView({ block: 'nearest', inline: 'nearest' })
    return () => {
      if (row instanceof HTMLElement && row.isConnected) row.focus()
    }
  }, [])
  const proposed = proposedFor(whose, one, facts)
  const now = adviceOf(whose, one, facts)
  const own = ownSentences(facts, whose).filter(({ hole }) => hole === ref)

  const sentenceOf = (part: SentencePart, change: Partial<Advice>): OwnSentence => {
    const advice = { ...now, ...change }
    const at = { reader: whose, part, units }
    return {
      ...at,
      course: facts.course,
      hole: ref,
      ...(part === 'stroke' ? { club: advice.club } : {}),
      words: advice[part],
      under: wordsUnder(at, one, facts),
    }
  }
  const write = (part: SentencePart, change: Partial<Advice>): void => {
    const sentence = sentenceOf(part, change)
    const isPlan = partWords({ ...now, ...change }, part) === partWords(proposed, part)
    if (isPlan) props.onDrop(sentence)
    else props.onWrite(sentence)
  }
  return (
    <form
      ref={place}
      className="sentence-editor"
      style={props.style}
      aria-label={`Sentences of hole ${ref}`}
      onSubmit={(event) => {
        event.preventDefault()
        props.onDone()
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' && !(event.key === 'Enter' && event.target instanceof HTMLTextAreaElement))
          return
        event.preventDefault()
        props.onDone()
      }}
    >
      {PARTS[whose].map((part) => {
        const written = own.find((sentence) => sentence.part === part)
        return (
          <fieldset key={part}>
            <legend>
              Hole {ref}: {PART_NAMES[part]}
            </legend>
            {part === 'stroke' && (
              <Field
                label="Club"
                text={now.club}
                most={MOST_LETTERS.club}
                onText={(club) => write(part, { club })}
              />
            )}
            <Field
              label="Words"
              text={now[part]}
              most={MOST_LETTERS.words}
              isLong
              onText={(words) => write(part, { [part]: words })}
            />
            {written !== undefined && (
              <p className="plan-says">
                The plan’s: <q>{partWords(proposed, part) || 'nothing'}</q>{' '}
                <button type="button" onClick={() => props.onDrop(written)}>
                  Take the plan’s
                </button>
              </p>
            )}
          </fieldset>
        )
      })}
      <button type="submit">Done</button>
    </form>
  )
}

function Field(props: {
  readonly label: string
  readonly text: string
  readonly most: number
  readonly isLong?: boolean
  readonly onText: (text: string) => void
}): ReactElement {
  const { label, text, most, isLong = false } = props
  const id = useId()
  const take = (typed: string): void => props.onText(typed.replaceAll(/\s/g, ' ').slice(0, most))
  return (
    <div className="sentence-field">
      <label htmlFor={id}>{label}</label>
      {isLong ? (
        <textarea
          id={id}
          rows={2}
          maxLength={most}
          value={text}
          onChange={({ target }) => take(target.value)}
        />
      ) : (
        <input
          id={id}
          autoComplete="off"
          maxLength={most}
          value={text}
          onChange={({ target }) => take(target.value)}
        />
      )}
    </div>
  )
}

import { type ReactElement, useState } from 'react'
import { PRACTICE_PARTS, type PracticePart } from '#golf/round/improved-player.ts'
import type { PracticeNotes } from '#golf/round/practice-notes.ts'
import { practiceWords } from '#golf/round/practice-words.ts'
import { MOST_PRACTICE_RATE, PRACTICE_RATES } from '#golf/round/settings.ts'
import { capital } from '#golf/strategy/capital.ts'

/** For each part of the game: by how much an hour makes it better, and what to do, in the professional's own words. */
export function OwnNotes(props: {
  readonly notes: PracticeNotes
  readonly onChange: (notes: PracticeNotes) => void
}): ReactElement {
  const { notes, onChange } = props
  const { rates, drills } = notes
  return (
    <>
      {PRACTICE_PARTS.map((part) => (
        <fieldset key={part}>
          <legend>{capital(practiceWords(part))}</legend>
          <div className="note-fields">
            <RateField
              part={part}
              rate={rates[part]}
              onChange={(rate) => onChange({ ...notes, rates: { ...rates, [part]: rate } })}
            />
            <label className="drill">
              Drill
              <input
                type="text"
                value={drills[part] ?? ''}
                placeholder="your own words"
                onChange={(event) =>
                  onChange({ ...notes, drills: { ...drills, [part]: event.currentTarget.value } })
                }
              />
            </label>
          </div>
        </fieldset>
      ))}
    </>
  )
}

/** A rate in per cent an hour; an empty field takes ours, and what is no rate is marked and changes nothing. */
function RateField(props: {
  readonly part: PracticePart
  readonly rate: number
  readonly onChange: (rate: number) => void
}): ReactElement {
  const { part, rate, onChange } = props
  const [text, setText] = useState(() => percent(rate))
  // Of what is no number a browser gives an empty text, which is not an empty field.
  const [isNumber, setNumber] = useState(true)
  const most = 100 * MOST_PRACTICE_RATE
  const read = (typed: string): number | null => {
    if (typed.trim() === '') return PRACTICE_RATES[part]
    const value = Number(typed)
    return value >= 0 && value <= most ? value / 100 : null
  }
  return (
    <label>
      Better an hour, %
      <input
        type="number"
        min={0}
        max={most}
        step="any"
        value={text}
        placeholder={percent(PRACTICE_RATES[part])}
        aria-invalid={!isNumber || read(text) === null}
        onChange={(event) => {
          const { value: typed, validity } = event.currentTarget
          setText(typed)
          setNumber(!validity.badInput)
          const value = validity.badInput ? null : read(typed)
          if (value !== null) onChange(value)
        }}
      />
    </label>
  )
}

/** 0.004 → `0.4`. */
function percent(rate: number): string {
  return String(Number((100 * rate).toFixed(4)))
}

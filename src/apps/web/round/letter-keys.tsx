import { type ReactElement, useState } from 'react'
import { FINISH_LETTERS, type Finish, type FinishLetter } from '#golf/round/round.ts'
import { tabStorage } from '../documents/own-storage.ts'
import { LEFT, typedMetres, type Units } from './club-words.ts'

/** The letters of the paper log, with what was left to the pin where it is known; holed for a stroke that ends the hole. */
export function LetterKeys(props: {
  readonly units: Units
  /** Where there is a picture to tap the letters are folded away until they are asked for. */
  readonly hasPicture: boolean
  readonly onFinish: (finish: Finish | null) => void
}): ReactElement {
  const { units, hasPicture, onFinish } = props
  const [left, setLeft] = useState('')
  const { sign, metres } = LEFT[units]
  const press = (letter: FinishLetter): void => {
    onFinish({ letter, leftMetres: typedMetres(left, metres) })
    setLeft('')
  }
  return (
    <details
      open={!hasPicture || tabStorage.getItem(KEPT) === 'open'}
      onToggle={({ currentTarget }) => keepOpen(currentTarget.open)}
    >
      <summary>By letter</summary>
      <fieldset className="keys letters">
        <legend className="unseen">Where the ball came to rest</legend>
        <label className="left">
          Left, {sign}
          <input
            inputMode="decimal"
            autoComplete="off"
            value={left}
            onChange={(event) => setLeft(event.currentTarget.value)}
          />
        </label>
        {Object.entries(FINISH_LETTERS).map(([letter, words]) => (
          <button key={letter} type="button" onClick={() => press(letter as FinishLetter)}>
            <b>{letter}</b> <small>{words}</small>
          </button>
        ))}
        <button type="button" onClick={() => onFinish(null)}>
          <small>holed</small>
        </button>
      </fieldset>
    </details>
  )
}

const KEPT = 'marram.letters'

function keepOpen(isOpen: boolean): void {
  try {
    tabStorage.setItem(KEPT, isOpen ? 'open' : 'shut')
  } catch {
    // Then they are opened again on the next hole.
  }
}

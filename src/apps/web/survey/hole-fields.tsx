import { type ReactElement, useId } from 'react'
import type { CardLength } from '#golf/course/card-lengths.ts'
import type { Reader } from '../desk/desk.ts'
import { length } from '../words.ts'
import type { SurveyHole } from './survey.ts'
import type { HoleReading } from './survey-reading.ts'

/** A short typed field with its label above. */
export function TextField(props: {
  readonly label: string
  readonly value: string
  readonly isWide?: boolean
  readonly onChange: (text: string) => void
}): ReactElement {
  const id = useId()
  return (
    <div className={`typed-field${props.isWide === true ? ' name-field' : ' short-field'}`}>
      <label htmlFor={id}>{props.label}</label>
      <input
        id={id}
        type="text"
        autoComplete="off"
        value={props.value}
        onChange={(event) => props.onChange(event.target.value)}
      />
    </div>
  )
}

/** What the card says of the hole. */
export function HoleFields(props: {
  readonly name: string
  readonly hole: SurveyHole
  readonly onName: (name: string) => void
  readonly onHole: (field: 'ref' | 'par' | 'index', text: string) => void
}): ReactElement {
  const { name, hole, onName, onHole } = props
  return (
    <div className="hole-fields">
      <TextField label="Name of the course" value={name} isWide onChange={onName} />
      <TextField label="Hole" value={hole.ref} onChange={(text) => onHole('ref', text)} />
      <TextField label="Par" value={hole.par} onChange={(text) => onHole('par', text)} />
      <TextField label="Stroke index" value={hole.index} onChange={(text) => onHole('index', text)} />
    </div>
  )
}

/** Whether the line closes with the card, tee by tee, or by how much it does not. */
export function Closing(props: { readonly reading: HoleReading; readonly reader: Reader }): ReactElement {
  const { reading, reader } = props
  const { hole, cards, provisionalMetres } = reading
  return (
    <ul className="closing" aria-label="Lengths" aria-live="polite">
      {provisionalMetres !== null && (
        <li>
          No green yet: type its front and back. Until then the chart is drawn to{' '}
          {length(provisionalMetres, reader)}.
        </li>
      )}
      {provisionalMetres === null && hole !== null && (
        <li>The line is {length(hole.lengthMetres, reader)} long.</li>
      )}
      {cards.map((card) => (
        <li key={card.tee} className={card.isClosed ? undefined : 'is-open'}>
          {closingWords(card, reader)}
        </li>
      ))}
    </ul>
  )
}

function closingWords({ tee, cardMetres, measured, isClosed }: CardLength, reader: Reader): string {
  const name = tee === '' ? 'The card' : `The card from the ${tee} tee`
  const said = `${name} says ${length(cardMetres, reader)}`
  const [first] = measured
  if (first === undefined) return `${said}; there is no such tee.`
  if (isClosed) return `${said}: it closes.`
  const by = cardMetres - first
  return `${said}: the line is ${length(Math.abs(by), reader)} too ${by > 0 ? 'short' : 'long'}. It does not close.`
}

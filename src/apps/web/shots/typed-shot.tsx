import { type ReactElement, useId, useState } from 'react'
import type { Reader } from '../desk/desk.ts'
import { readerMetres, unitSign } from '../words.ts'
import { exactFigure, type MeasuredTo, parseLength, parseSide, reachable, type Spot } from './shot-words.ts'

/** A shot in figures, for numbers that a device or a sheet of paper says; Enter puts it down. */
export function TypedShot(props: {
  readonly to: MeasuredTo
  readonly reader: Reader
  readonly onPut: (spot: Spot) => void
}): ReactElement {
  const { to, reader, onPut } = props
  const id = useId()
  const [along, setAlong] = useState('')
  const [right, setRight] = useState('')
  const [fault, setFault] = useState('')
  const put = (form: HTMLFormElement): void => {
    const [length, side] = [parseLength(along), parseSide(right)]
    const unit = readerMetres(reader)
    const asked = { along: (length ?? 0) * unit, right: (side ?? 0) * unit }
    const near = reachable(asked, to, reader)
    const isThere =
      Math.abs(near.along - asked.along) < unit / 10 && Math.abs(near.right - asked.right) < unit / 10
    if (length === null || side === null || !isThere) {
      setFault(
        length === null
          ? 'How far is a number, such as 118.'
          : side === null
            ? 'How far off the line is a number with its side, such as 6 left, or -6.'
            : `No ball comes to rest there: ${exactFigure(near.along, reader)} ${unitSign(reader)} along and ${exactFigure(Math.abs(near.right), reader)} off the line would be the nearest.`,
      )
      return
    }
    setFault('')
    setAlong('')
    setRight('')
    form.querySelector('input')?.focus()
    onPut(near)
  }
  const field = (label: string, name: string, text: string, change: (text: string) => void): ReactElement => (
    <div className="typed-field">
      <label htmlFor={`${id}-${name}`}>{label}</label>
      <input
        id={`${id}-${name}`}
        type="text"
        inputMode={name === 'along' ? 'decimal' : 'text'}
        autoComplete="off"
        value={text}
        aria-invalid={fault !== ''}
        aria-describedby={`${id}-fault`}
        onChange={(event) => change(event.target.value)}
      />
    </div>
  )
  return (
    <form
      className="typed-shot"
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        put(event.currentTarget)
      }}
    >
      {field(`${to === 'carry' ? 'Carry' : 'Total'}, ${unitSign(reader)}`, 'along', along, setAlong)}
      {field(`Off the line, ${unitSign(reader)}`, 'right', right, setRight)}
      <button type="submit">Put down as typed</button>
      <p id={`${id}-fault`} className={fault === '' ? 'unseen' : 'question-fault'} role="status">
        {fault}
      </p>
    </form>
  )
}

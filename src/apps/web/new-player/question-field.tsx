import { type ReactElement, useId } from 'react'
import type { Fault } from '#faults/fault.ts'
import type { Field } from '#golf/player/player-questions.ts'

/** One field: what is asked, how to answer, and what is wrong with the answer. */
export function QuestionField(props: {
  readonly field: Field
  readonly units: 'yards' | 'metres'
  readonly text: string
  readonly fault: Fault | null
  readonly onText: (text: string) => void
  readonly onLeave: () => void
}): ReactElement {
  const { field, fault } = props
  const id = useId()
  const told = [`${id}-help`, ...(fault === null ? [] : [`${id}-fault`])].join(' ')
  const notes = (
    <>
      <p className="question-help" id={`${id}-help`}>
        {field.help}
      </p>
      {fault !== null && (
        <p className="question-fault" id={`${id}-fault`}>
          {fault.message} {fault.advice !== field.help && fault.advice}
        </p>
      )}
    </>
  )
  if (field.kind === 'choice')
    return (
      <fieldset className="question" aria-describedby={told} onBlur={props.onLeave}>
        <legend>{field.ask}</legend>
        {notes}
        <ChoiceRows {...props} name={id} />
      </fieldset>
    )
  const unit = field.kind === 'carries' ? props.units : field.unit === 'years' ? 'years' : null
  return (
    <div className="question">
      <label htmlFor={id}>
        {field.ask}
        {unit !== null && <span className="question-unit"> {unit}</span>}
      </label>
      <input
        id={id}
        data-field={field.id}
        type="text"
        inputMode={field.kind === 'number' && field.range?.[0] !== -10 ? 'decimal' : 'text'}
        autoComplete="off"
        className={field.kind === 'number' ? 'short' : ''}
        value={props.text}
        required={field.isNeeded === true}
        aria-describedby={told}
        aria-invalid={fault !== null}
        onChange={(event) => props.onText(event.target.value)}
        onBlur={props.onLeave}
      />
      {notes}
    </div>
  )
}

/** The answers of a choice as rows to hit, with one for not knowing where that is allowed. */
function ChoiceRows(props: {
  readonly field: Field
  readonly name: string
  readonly text: string
  readonly onText: (text: string) => void
}): ReactElement {
  const { field, name, text, onText } = props
  const open = field.isNeeded === true ? [] : [{ value: '', words: 'don’t know' }]
  const rows = [...(field.choices ?? []), ...open]
  const reached = rows.findIndex(({ value }) => value === text)
  return (
    <div className="choice-rows">
      {rows.map(({ value, words }, index) => (
        <label key={value} className={value === '' ? 'choice-row open' : 'choice-row'}>
          <input
            type="radio"
            name={name}
            value={value}
            checked={value === text && (value !== '' || field.isNeeded !== true)}
            data-field={index === Math.max(0, reached) ? field.id : undefined}
            onChange={() => onText(value)}
          />
          <span>{words}</span>
        </label>
      ))}
    </div>
  )
}

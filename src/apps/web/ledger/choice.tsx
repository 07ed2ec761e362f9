import { type ReactElement, useId } from 'react'

/** One of several by name: a ruled field with its label above. */
export function Choice(props: {
  readonly label: string
  readonly value: string
  readonly options: readonly { readonly value: string; readonly name: string }[]
  readonly onChange: (value: string) => void
}): ReactElement {
  const id = useId()
  return (
    <div className="choice">
      <label htmlFor={id}>{props.label}</label>
      <select id={id} value={props.value} onChange={(event) => props.onChange(event.target.value)}>
        {props.options.map(({ value, name }) => (
          <option key={value} value={value}>
            {name}
          </option>
        ))}
      </select>
    </div>
  )
}

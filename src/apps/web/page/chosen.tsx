import type { ReactElement } from 'react'

/** One of several by name, in a form: the label around its field. */
export function Chosen(props: {
  readonly label: string
  readonly value: string
  readonly of: readonly { readonly id: string; readonly name: string }[]
  readonly onChoose: (id: string) => void
}): ReactElement {
  const { label, value, of, onChoose } = props
  return (
    <label>
      {label}
      <select value={value} onChange={(event) => onChoose(event.currentTarget.value)}>
        {of.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
    </label>
  )
}

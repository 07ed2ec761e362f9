import { type ReactElement, useState } from 'react'

/** A field for a whole number within reach, its ends included; anything else is marked and changes nothing. */
export function CountField(props: {
  readonly label: string
  readonly value: number
  /** 1 unless given. */
  readonly least?: number
  readonly most: number
  readonly onChange: (value: number) => void
}): ReactElement {
  const { label, value, least = 1, most, onChange } = props
  const [text, setText] = useState(String(value))
  const isCount = (typed: string): boolean => {
    const count = Number(typed)
    return typed !== '' && Number.isInteger(count) && count >= least && count <= most
  }
  return (
    <label>
      {label}
      <input
        type="number"
        min={least}
        max={most}
        step={1}
        value={text}
        aria-invalid={!isCount(text)}
        onChange={(event) => {
          const typed = event.currentTarget.value
          setText(typed)
          if (isCount(typed)) onChange(Number(typed))
        }}
      />
    </label>
  )
}

import { type ReactElement, useState } from 'react'
import { METRES_PER_TABLE_UNIT, type TableUnit, tableFigure } from '#outside/formats/table-unit.ts'

/** A length that may stand half typed; `null` = none is known. */
export function FigureField(props: {
  /** Its name; absent where a label names it by `id`. */
  readonly label?: string
  readonly id?: string
  readonly metres: number | null
  readonly unit: TableUnit
  readonly isDisabled?: boolean
  readonly onMetres: (metres: number) => void
}): ReactElement {
  const { label, id, metres, unit, onMetres } = props
  const [typed, setTyped] = useState<string | null>(null)
  const number = typed === null || typed.trim() === '' ? Number.NaN : Number(typed.replace(',', '.'))
  return (
    <input
      id={id}
      type="text"
      inputMode="decimal"
      autoComplete="off"
      aria-label={label}
      aria-invalid={(typed !== null && !Number.isFinite(number)) || undefined}
      disabled={props.isDisabled}
      value={typed ?? (metres === null ? '' : tableFigure(metres, unit))}
      onChange={(event) => {
        const text = event.target.value
        setTyped(text)
        const value = Number(text.replace(',', '.'))
        if (text.trim() !== '' && Number.isFinite(value) && Math.abs(value) <= 1000)
          onMetres(value * METRES_PER_TABLE_UNIT[unit])
      }}
      onBlur={() => setTyped(null)}
    />
  )
}

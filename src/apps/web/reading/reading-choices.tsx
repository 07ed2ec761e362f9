import { type ReactElement, useEffect, useRef } from 'react'
import type { Reader } from '../desk/desk.ts'
import { Choice } from '../ledger/choice.tsx'

/** How the reader likes to read, all in one place: light, size of print, units. Escape or a press elsewhere closes it. */
export function ReadingChoices(props: {
  readonly reader: Reader
  readonly onReader: (reader: Reader) => void
  /** False where no wind is shown. */
  readonly hasWind?: boolean
}): ReactElement {
  const { reader, onReader, hasWind = false } = props
  const place = useRef<HTMLDetailsElement>(null)
  useEffect(() => {
    const close = ({ target }: PointerEvent): void => {
      if (place.current !== null && !place.current.contains(target as Node)) place.current.open = false
    }
    addEventListener('pointerdown', close)
    return () => removeEventListener('pointerdown', close)
  }, [])
  return (
    <details
      ref={place}
      className="reading"
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return
        event.currentTarget.open = false
        event.currentTarget.querySelector('summary')?.focus()
      }}
    >
      <summary className="button">Reading</summary>
      <div className="reading-choices">
        <Choice
          label="Light"
          value={reader.theme}
          options={LIGHTS}
          onChange={(value) => onReader({ ...reader, theme: oneOf(LIGHTS, value) })}
        />
        <Choice
          label="Print"
          value={reader.print}
          options={PRINTS}
          onChange={(value) => onReader({ ...reader, print: oneOf(PRINTS, value) })}
        />
        <Choice
          label="Lengths"
          value={reader.units}
          options={UNITS}
          onChange={(value) => onReader({ ...reader, units: oneOf(UNITS, value) })}
        />
        {hasWind && (
          <Choice
            label="Wind in"
            value={reader.windUnit}
            options={WINDS}
            onChange={(value) => onReader({ ...reader, windUnit: oneOf(WINDS, value) })}
          />
        )}
      </div>
    </details>
  )
}

interface Option<Value extends string> {
  readonly value: Value
  readonly name: string
}

const LIGHTS: readonly Option<Reader['theme']>[] = [
  { value: 'day', name: 'indoors' },
  { value: 'night', name: 'dark' },
  { value: 'sun', name: 'full sun' },
]
const PRINTS: readonly Option<Reader['print']>[] = [
  { value: 'usual', name: 'usual' },
  { value: 'large', name: 'large' },
]
const UNITS: readonly Option<Reader['units']>[] = [
  { value: 'yards', name: 'yards' },
  { value: 'metres', name: 'metres' },
]
const WINDS: readonly Option<Reader['windUnit']>[] = [
  { value: 'm/s', name: 'metres a second' },
  { value: 'mph', name: 'miles an hour' },
  { value: 'knots', name: 'knots' },
]

function oneOf<Value extends string>(options: readonly Option<Value>[], value: string): Value {
  const chosen = options.find((each) => each.value === value)
  if (chosen === undefined) throw new RangeError(`${value} is none of the choices`)
  return chosen.value
}

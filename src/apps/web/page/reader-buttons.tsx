import type { ReactElement } from 'react'
import type { Reader } from '../desk/desk.ts'

interface ReaderButtonProps {
  readonly reader: Reader
  readonly onReader: (reader: Reader) => void
}

/** Yards or metres, as the reader likes. */
export function UnitsButton({ reader, onReader }: ReaderButtonProps): ReactElement {
  return (
    <button
      type="button"
      aria-label={`Lengths in ${reader.units}: change`}
      onClick={() => onReader({ ...reader, units: reader.units === 'yards' ? 'metres' : 'yards' })}
    >
      {reader.units}
    </button>
  )
}

/** The page in the dark, ink and paper changed about. */
export function NightButton({ reader, onReader }: ReaderButtonProps): ReactElement {
  return (
    <button
      type="button"
      aria-pressed={reader.theme === 'night'}
      onClick={() => onReader({ ...reader, theme: reader.theme === 'night' ? 'day' : 'night' })}
    >
      Night
    </button>
  )
}

import type { ReactElement, ReactNode } from 'react'
import type { Reader } from '../desk/desk.ts'
import { ReadingChoices } from '../reading/reading-choices.tsx'
import { DESK } from './places.ts'

/** The head of every page but the desk: what it is, what is chosen on it, the way back, and how the reader reads. */
export function PageHead(props: {
  readonly what: string
  /** Where the way back leads; to the desk as it was unless given. */
  readonly back?: string
  /** What is there; the desk unless given. */
  readonly backTo?: string
  readonly reader: Reader
  readonly onReader: (reader: Reader) => void
  readonly hasWind?: boolean
  readonly choices?: ReactNode
  /** Buttons and links between the way back and the reading menu. */
  readonly children?: ReactNode
}): ReactElement {
  const {
    what,
    back = DESK,
    backTo = 'the desk',
    reader,
    onReader,
    hasWind = false,
    choices,
    children,
  } = props
  return (
    <header className="desk-head">
      <h1>
        Marram <small>{what}</small>
      </h1>
      <div className="choices">{choices}</div>
      <div className="head-buttons">
        <a className="button" href={back}>
          Back to {backTo}
        </a>
        {children}
        <ReadingChoices reader={reader} onReader={onReader} hasWind={hasWind} />
      </div>
    </header>
  )
}

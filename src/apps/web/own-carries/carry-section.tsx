import type { ReactElement } from 'react'
import '../style/new-player.css'
import '../style/shots.css'
import '../style/own-carries.css'
import type { OwnCarries } from '#golf/player/own-carries.ts'
import type { Player } from '#golf/player/player.ts'
import type { Reader } from '../desk/desk.ts'
import { Section } from '../ledger/section.tsx'
import { CarryTable } from './carry-table.tsx'
import { KeepPlayer } from './keep-player.tsx'

/** The carries that are known, typed club by club, and what the others are then taken to be. */
export function CarrySection(props: {
  readonly own: Player
  readonly carries: OwnCarries
  readonly reader: Reader
  /** True when a person has just asked for it: the first field has the focus. */
  readonly isAsked: boolean
  readonly onCarries: (carries: OwnCarries) => void
  readonly onClose: () => void
  readonly onKept: (id: string) => void
}): ReactElement {
  const { own, carries, reader, onCarries } = props
  const hasAny = Object.keys(carries).length > 0
  return (
    <Section title="Own carries" className="own-carries">
      <p className="question-help">
        Two or three carries that are known well: how far a good strike flies, without the run. The other
        clubs are filled in from these and marked as a guess; how the shots spread and bend stays {own.name}
        ’s.
      </p>
      <CarryTable
        // Another player has another bag, other units other figures.
        key={`${own.name} ${reader.units}`}
        clubs={own.clubs}
        carries={carries}
        reader={reader}
        isAsked={props.isAsked}
        onCarries={onCarries}
      />
      <div className="made-buttons">
        {hasAny && <KeepPlayer own={own} onKept={props.onKept} />}
        <button
          type="button"
          onClick={() => {
            if (hasAny) onCarries({})
            props.onClose()
          }}
        >
          {hasAny ? `Back to the carries of ${own.name}` : 'Close'}
        </button>
      </div>
    </Section>
  )
}

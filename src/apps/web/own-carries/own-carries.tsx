import { type ReactElement, useState } from 'react'
import type { OwnCarries } from '#golf/player/own-carries.ts'
import type { Player } from '#golf/player/player.ts'
import type { Reader } from '../desk/desk.ts'
import { LatePart } from '../page/late-part.tsx'

const loadCarries = async () => (await import('./carry-section.tsx')).CarrySection

/** Carries of one's own for the player shown: a button, and the table once it was asked for or there are some. */
export function OwnCarriesPart(props: {
  /** The player with the carries typed so far. */
  readonly own: Player
  readonly carries: OwnCarries
  readonly reader: Reader
  readonly onCarries: (carries: OwnCarries) => void
  /** The player was kept under this id. */
  readonly onKept: (id: string) => void
}): ReactElement {
  const [isOpen, setOpen] = useState(false)
  const isShown = isOpen || Object.keys(props.carries).length > 0
  if (!isShown)
    return (
      <p>
        <button type="button" className="quiet" onClick={() => setOpen(true)}>
          Type own carries
        </button>
      </p>
    )
  const show = { ...props, isAsked: isOpen, onClose: () => setOpen(false) }
  return <LatePart what="the table" load={loadCarries} show={show} />
}

import { type ReactElement, useId, useState } from 'react'
import { encodePlayer } from '#golf/player/encode-player.ts'
import type { Player } from '#golf/player/player.ts'
import { documentId } from '#outside/formats/document-id.ts'
import { keepNewDocument } from '../documents/fetch-document.ts'
import { troubleOf } from '../documents/use-library.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import type { Trouble } from '../planning/questions.ts'

/** Keeps the player with their own carries as a new one beside the others. */
export function KeepPlayer(props: {
  readonly own: Player
  readonly onKept: (id: string) => void
}): ReactElement {
  const { own, onKept } = props
  const id = useId()
  const [name, setName] = useState('')
  const [isKeeping, setKeeping] = useState(false)
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const keep = (): void => {
    setKeeping(true)
    setTrouble(null)
    // What was written for the other's cards is the other's.
    const { sentences: _, ...numbers } = own
    keepNewDocument('players', documentId(name, 'player'), encodePlayer({ ...numbers, name: name.trim() }))
      .then(onKept)
      .catch((error: unknown) => {
        setTrouble(troubleOf(error))
        setKeeping(false)
      })
  }
  return (
    <form
      className="keep-player"
      onSubmit={(event) => {
        event.preventDefault()
        keep()
      }}
    >
      <div className="typed-field">
        <label htmlFor={id}>Name of the new player</label>
        <input id={id} autoComplete="off" value={name} onChange={(event) => setName(event.target.value)} />
      </div>
      <button type="submit" disabled={isKeeping || name.trim() === ''}>
        Keep as a new player
      </button>
      {trouble !== null && <TroubleNote trouble={trouble} />}
    </form>
  )
}

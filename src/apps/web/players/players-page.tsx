import { type ReactElement, useState } from 'react'
import '../style/course.css'
import type { Reader } from '../desk/desk.ts'
import { fetchDocument, keepNewDocument, removeDocument } from '../documents/fetch-document.ts'
import { ownStorage } from '../documents/own-storage.ts'
import { troubleOf, useLibrary } from '../documents/use-library.ts'
import { PageHead } from '../page/page-head.tsx'
import { NEW_PLAYER } from '../page/places.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import type { Trouble } from '../planning/questions.ts'
import { KeptPlayerEntry } from './kept-player-entry.tsx'
import { putRoundsBack, type RoundOfPlayer, removeRoundsOf } from './rounds-of-player.ts'

/** A player that was taken out of the store, as long as the page is open. */
interface Removed {
  readonly id: string
  readonly name: string
  readonly text: string
  /** Shots that were put down and not learned from; `null` = none. */
  readonly shots: string | null
  readonly rounds: readonly RoundOfPlayer[]
}

/** The players that are kept: what is known of each, the ways to the desk and the shots, a file for them, and deletion. */
export function PlayersPage(props: {
  readonly reader: Reader
  readonly onReader: (reader: Reader) => void
}): ReactElement {
  const { reader, onReader } = props
  const { library, trouble, reload } = useLibrary()
  const [removed, setRemoved] = useState<Removed | null>(null)
  const [fault, setFault] = useState<Trouble | null>(null)
  // What is still being deleted cannot be taken back whole.
  const [isBusy, setBusy] = useState(false)
  const work = (what: Promise<void>): void => {
    setFault(null)
    setBusy(true)
    what
      .catch((error: unknown) => setFault(troubleOf(error)))
      .finally(() => {
        setBusy(false)
        reload()
      })
  }
  const remove = async (id: string, name: string): Promise<void> => {
    const text = await fetchDocument('players', id)
    await removeDocument('players', id)
    const shots = ownStorage.getItem(shotsKey(id))
    ownStorage.removeItem(shotsKey(id))
    // From here on the deletion can be taken back, whatever becomes of the rounds.
    setRemoved({ id, name, text, shots, rounds: [] })
    await removeRoundsOf(id, (round) =>
      setRemoved((now) => now && { ...now, rounds: [...now.rounds, round] }),
    )
  }
  const takeBack = async ({ id, text, shots, rounds }: Removed): Promise<void> => {
    const kept = await keepNewDocument('players', id, text)
    if (shots !== null) ownStorage.setItem(shotsKey(kept), shots)
    await putRoundsBack(rounds)
    setRemoved(null)
  }
  const shown = fault ?? (removed === null ? trouble : null)
  return (
    <>
      <PageHead what="the players" reader={reader} onReader={onReader}>
        <a className="button" href={NEW_PLAYER}>
          New player
        </a>
      </PageHead>
      <main className="players-page">
        {shown !== null && <TroubleNote trouble={shown} />}
        <p className="player-note" role="status">
          {removed !== null &&
            `${removed.name} was deleted${fault === null ? ' with all rounds' : ''}: from the store, and from this browser.`}
        </p>
        {removed !== null && (
          <p>
            <button type="button" disabled={isBusy} onClick={() => work(takeBack(removed))}>
              Take the deletion back
            </button>
          </p>
        )}
        {library?.players.map(({ id, name, revision }) => (
          <KeptPlayerEntry
            key={`${id} ${revision}`}
            id={id}
            name={name}
            reader={reader}
            onDelete={() => work(remove(id, name))}
          />
        ))}
      </main>
    </>
  )
}

/** Where the shots of a player are kept until they are learned from. */
function shotsKey(id: string): string {
  return `marram.shots.${id}`
}

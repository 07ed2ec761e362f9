import { type ReactElement, useEffect, useState } from 'react'
import { hasShelf, type WaitingChange } from '../documents/local-shelf.ts'
import { keepBeside, putInPlace, takeTheirs } from '../documents/send-waiting.ts'
import { troubleOf } from '../documents/use-library.ts'
import { useServerAway } from '../documents/use-server-away.ts'
import { useWaiting } from '../documents/use-waiting.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import type { Trouble } from '../planning/questions.ts'
import { keepPages } from './keep-pages.ts'

/** That the server is away, what waits for it, what it would not have and what to do about it, and a newer version of the desk; nothing when all is well. */
export function OfflineNote(): ReactElement | null {
  const waiting = useWaiting()
  const isAway = useServerAway()
  const [takeOver, setTakeOver] = useState<(() => void) | null>(null)
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const [keepsNothing, setKeepsNothing] = useState(false)
  useEffect(() => {
    void hasShelf().then((has) => setKeepsNothing(!has))
    keepPages((newer) => setTakeOver(() => newer)).catch(() => {})
  }, [])
  const unsent = waiting.filter(({ refusal }) => refusal === '')
  const refused = waiting.filter(({ refusal }) => refusal !== '')
  if (waiting.length === 0 && takeOver === null && !keepsNothing && !isAway) return null
  const settle = (change: Promise<void>): void => {
    setTrouble(null)
    change.catch((error: unknown) => setTrouble(troubleOf(error)))
  }
  return (
    <section className="offline-note" aria-label="What waits" aria-live="polite">
      {keepsNothing && <p>This browser keeps no copies here: the desk needs its server.</p>}
      {isAway && !keepsNothing && (
        <p>The server does not answer. The desk works on with the copies in this browser.</p>
      )}
      {unsent.length > 0 && (
        <p>
          {unsent.map(({ name }) => name).join(', ')}: kept in this browser until the server answers again.
        </p>
      )}
      {refused.map((change) => (
        <Refused key={`${change.kind}/${change.id}`} change={change} onSettle={settle} />
      ))}
      {takeOver !== null && (
        <p>
          A newer version of the desk is here.
          <button type="button" onClick={takeOver}>
            Open it
          </button>
        </p>
      )}
      {trouble !== null && <TroubleNote trouble={trouble} />}
    </section>
  )
}

function Refused(props: {
  readonly change: WaitingChange
  readonly onSettle: (change: Promise<void>) => void
}): ReactElement {
  const { change, onSettle } = props
  return (
    <p>
      {change.name}, changed here: {change.refusal}
      <button type="button" onClick={() => onSettle(keepBeside(change))}>
        Keep mine beside it
      </button>
      <button type="button" onClick={() => onSettle(putInPlace(change))}>
        Put mine in its place
      </button>
      <button type="button" onClick={() => onSettle(takeTheirs(change))}>
        Take the other
      </button>
    </p>
  )
}

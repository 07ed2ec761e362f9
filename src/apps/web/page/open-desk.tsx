import type { ReactElement } from 'react'
import type { Reader } from '../desk/desk.ts'
import { useLibrary } from '../documents/use-library.ts'
import { HoleDesk } from './hole-desk.tsx'
import { NEW_PLAYER } from './places.ts'
import { TroubleNote } from './trouble-note.tsx'
import { WaitingFor } from './waiting-for.tsx'

/** Opens the desk once the store has answered, with the player that was made last. */
export function OpenDesk(props: {
  readonly reader: Reader
  readonly onReader: (reader: Reader) => void
  readonly playerId: string | null
}): ReactElement {
  const { library, trouble, reload } = useLibrary()
  if (trouble !== null)
    return (
      <main className="desk">
        <h1 className="unseen">Marram, the hole desk</h1>
        <TroubleNote trouble={trouble} />
        {trouble.code === 'MAR-WEB-003' && (
          <p>
            <a className="button" href={NEW_PLAYER}>
              New player
            </a>
          </p>
        )}
      </main>
    )
  if (library === null)
    return (
      <main className="desk" aria-busy="true">
        <WaitingFor what="the lists of courses, players and days" />
      </main>
    )
  return <HoleDesk library={library} {...props} onKept={reload} />
}

import type { ReactElement } from 'react'
import '../style/after.css'
import '../style/new-player.css'
import '../style/shots.css'
import type { Reader } from '../desk/desk.ts'
import { type Library, useLibrary } from '../documents/use-library.ts'
import { Choice } from '../ledger/choice.tsx'
import { PageHead } from '../page/page-head.tsx'
import { shotsPlace } from '../page/places.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import { ShotDesk } from './shot-desk.tsx'
import { useKeptPlayer } from './use-kept-player.ts'

/** The page on which a player's shots are put down and learned from. */
export function ShotsPage(props: {
  readonly reader: Reader
  readonly onReader: (reader: Reader) => void
  /** The player of the address; `null` = the first of the store. */
  readonly playerId: string | null
  readonly onKept: (id: string) => void
}): ReactElement {
  const { reader, onReader } = props
  const { library, trouble } = useLibrary()
  const id = props.playerId ?? library?.players[0]?.id ?? null
  return (
    <>
      <PageHead
        what="shots"
        reader={reader}
        onReader={onReader}
        choices={
          library !== null &&
          id !== null && (
            <Choice
              label="Player"
              value={id}
              options={library.players.map((player) => ({ value: player.id, name: player.name }))}
              onChange={(next) => {
                location.hash = shotsPlace(next)
              }}
            />
          )
        }
      />
      <main className="desk">
        {trouble !== null && <TroubleNote trouble={trouble} />}
        {id !== null && library !== null && (
          <PlayerShots key={id} id={id} library={library} reader={reader} onKept={props.onKept} />
        )}
      </main>
    </>
  )
}

function PlayerShots(props: {
  readonly id: string
  readonly library: Library
  readonly reader: Reader
  readonly onKept: (id: string) => void
}): ReactElement {
  const { kept, trouble, reload } = useKeptPlayer(props.id)
  if (trouble !== null) return <TroubleNote trouble={trouble} />
  if (kept === null) return <p className="silent">Fetching the player.</p>
  return (
    <ShotDesk
      kept={kept}
      library={props.library}
      reader={props.reader}
      onReload={reload}
      onKept={props.onKept}
    />
  )
}

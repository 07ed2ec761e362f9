import { type ReactElement, useState } from 'react'
import { NewPlayer } from '../new-player/new-player.tsx'
import { ShotsPage } from '../shots/shots-page.tsx'
import { OpenDesk } from './open-desk.tsx'
import { DESK, NEW_PLAYER, playerOfPlace, usePlace } from './places.ts'
import { useReader } from './use-reader.ts'

/** The desk, the ten questions that lead to it, or the shots of a player. */
export function OpenPage(): ReactElement {
  const [reader, setReader] = useReader()
  const [playerId, setPlayerId] = useState<string | null>(null)
  const place = usePlace()
  const shotsOf = playerOfPlace(place)
  if (shotsOf !== undefined)
    return (
      <ShotsPage
        reader={reader}
        onReader={setReader}
        playerId={shotsOf}
        onKept={(id) => {
          setPlayerId(id)
          location.hash = DESK
        }}
      />
    )
  if (place !== NEW_PLAYER) return <OpenDesk reader={reader} onReader={setReader} playerId={playerId} />
  return (
    <NewPlayer
      reader={reader}
      onReader={setReader}
      onKept={(id) => {
        setPlayerId(id)
        location.hash = DESK
      }}
    />
  )
}

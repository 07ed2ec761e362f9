import { type ReactElement, useState } from 'react'
import { NewPlayer } from '../new-player/new-player.tsx'
import { OpenDesk } from './open-desk.tsx'
import { DESK, NEW_PLAYER, usePlace } from './places.ts'
import { useReader } from './use-reader.ts'

/** The desk, or the ten questions that lead to it. */
export function OpenPage(): ReactElement {
  const [reader, setReader] = useReader()
  const [playerId, setPlayerId] = useState<string | null>(null)
  const place = usePlace()
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

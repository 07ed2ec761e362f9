import { useCallback, useEffect, useState } from 'react'
import { completePlayer } from '#golf/player/complete-player.ts'
import { parsePlayer } from '#golf/player/parse-player.ts'
import type { Player } from '#golf/player/player.ts'
import type { PlayerFile } from '#golf/player/player-file.ts'
import { fetchKept } from '../documents/fetch-document.ts'
import { troubleOf } from '../documents/use-library.ts'
import type { Trouble } from '../planning/questions.ts'

/** A player as the store has them now: what was written, every number filled, and the revision a change must name. */
export interface KeptPlayer {
  readonly id: string
  readonly file: PlayerFile
  readonly player: Player
  readonly revision: string
}

/** The player of an id, and how to ask the store again. */
export function useKeptPlayer(id: string): {
  readonly kept: KeptPlayer | null
  readonly trouble: Trouble | null
  readonly reload: () => void
} {
  const [state, setState] = useState<{ kept: KeptPlayer | null; trouble: Trouble | null }>({
    kept: null,
    trouble: null,
  })
  const [times, setTimes] = useState(0)
  // biome-ignore lint/correctness/useExhaustiveDependencies: `times` asks the store again for the same player.
  useEffect(() => {
    let isWanted = true
    fetchKept('players', id)
      .then(({ text, revision }) => {
        const file = parsePlayer(text, `players/${id}`)
        if (isWanted) setState({ kept: { id, file, player: completePlayer(file), revision }, trouble: null })
      })
      .catch((error: unknown) => isWanted && setState({ kept: null, trouble: troubleOf(error) }))
    return () => {
      isWanted = false
    }
  }, [id, times])
  const reload = useCallback(() => setTimes((before) => before + 1), [])
  return { ...state, reload }
}

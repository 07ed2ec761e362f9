import { useEffect, useRef, useState } from 'react'
import type { Player } from '#golf/player/player.ts'
import { loadPlayer } from '../documents/load-player.ts'
import { troubleOf } from '../documents/use-library.ts'

/** A player of the group: every number filled, or why the file cannot be read. */
export type FieldPlayer = { readonly player: Player } | { readonly trouble: string }

/** The players of some ids by id, each asked for once and there as soon as the store has answered. */
export function useField(ids: readonly string[]): Readonly<Record<string, FieldPlayer>> {
  const [field, setField] = useState<Readonly<Record<string, FieldPlayer>>>({})
  const asked = useRef(new Set<string>())
  useEffect(() => {
    for (const id of ids) {
      if (asked.current.has(id)) continue
      asked.current.add(id)
      loadPlayer(id)
        .then((player): FieldPlayer => ({ player }))
        .catch((error: unknown): FieldPlayer => ({ trouble: troubleOf(error).message }))
        .then((loaded) => setField((before) => ({ ...before, [id]: loaded })))
    }
  }, [ids])
  return field
}

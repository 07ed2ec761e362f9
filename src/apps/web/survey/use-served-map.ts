import { useEffect, useState } from 'react'
import { askServer } from '../documents/ask-server.ts'
import type { ServedMap } from './map-layer.tsx'

/** The map that the server was started with; `null` for none, and while the server is away. */
export function useServedMap(): ServedMap | null {
  const [map, setMap] = useState<ServedMap | null>(null)
  useEffect(() => {
    askServer('/api/map')
      .then(({ text }) => setMap((JSON.parse(text) as { readonly map: ServedMap | null }).map))
      .catch(() => setMap(null))
  }, [])
  return map
}

import { useSyncExternalStore } from 'react'

/** The address of the ten questions. */
export const NEW_PLAYER = '#/new-player'
/** The address of the hole desk, and what every other address leads to. */
export const DESK = '#/desk'

/** The part of the address after the page, and what follows it. */
export function usePlace(): string {
  return useSyncExternalStore(follow, () => location.hash)
}

function follow(onChange: () => void): () => void {
  addEventListener('hashchange', onChange)
  return () => removeEventListener('hashchange', onChange)
}

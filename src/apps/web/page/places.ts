import { useSyncExternalStore } from 'react'

/** The address of the ten questions. */
export const NEW_PLAYER = '#/new-player'
/** The address where a hole is typed or traced. */
export const SURVEY = '#/survey'
const SHOTS = '#/shots'
/** The address of the hole desk, and what every other address leads to. */
export const DESK = '#/desk'

/** The address where shots of a player are put down. */
export function shotsPlace(playerId: string): string {
  return `${SHOTS}/${playerId}`
}

/** Whose shots an address leads to: an id, `null` where it names nobody, `undefined` for any other address. */
export function playerOfPlace(place: string): string | null | undefined {
  if (place === SHOTS) return null
  return place.startsWith(`${SHOTS}/`) ? decodeURIComponent(place.slice(SHOTS.length + 1)) : undefined
}

/** The part of the address after the page, and what follows it. */
export function usePlace(): string {
  return useSyncExternalStore(follow, () => location.hash)
}

function follow(onChange: () => void): () => void {
  addEventListener('hashchange', onChange)
  return () => removeEventListener('hashchange', onChange)
}

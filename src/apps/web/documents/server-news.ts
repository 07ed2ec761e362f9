/** Whether the server answered when it was last asked. */
type ServerState = 'here' | 'away'

let state: ServerState = 'here'
const listeners = new Set<() => void>()

/** Notes how the server answered, and tells everybody when that has changed. */
export function tellServer(now: ServerState): void {
  if (now === state) return
  state = now
  for (const listener of listeners) listener()
}

/** How the server answered when it was last asked. */
export function serverState(): ServerState {
  return state
}

/** Listens until the returned function is called. */
export function onServer(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

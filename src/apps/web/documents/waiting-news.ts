/** Who wants to know when a change begins or ends to wait for the server. */
const listeners = new Set<() => void>()

/** Tells everybody that what waits has changed. */
export function tellWaiting(): void {
  for (const listener of listeners) listener()
}

/** Listens until the returned function is called. */
export function onWaiting(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

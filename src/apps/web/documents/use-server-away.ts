import { useEffect, useSyncExternalStore } from 'react'
import { listServed } from './server-documents.ts'
import { onServer, serverState } from './server-news.ts'

/** Whether the server did not answer when it was last asked; while it is away it is asked again every so often. */
export function useServerAway(): boolean {
  const isAway = useSyncExternalStore(onServer, serverState) === 'away'
  useEffect(() => {
    if (!isAway) return
    const ask = (): void => void listServed('days').catch(() => {})
    const again = setInterval(ask, ASK_MILLISECONDS)
    addEventListener('online', ask)
    return () => {
      clearInterval(again)
      removeEventListener('online', ask)
    }
  }, [isAway])
  return isAway
}

/** The server on the own machine comes back without telling the browser. */
const ASK_MILLISECONDS = 10_000

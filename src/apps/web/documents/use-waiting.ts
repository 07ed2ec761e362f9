import { useEffect, useState } from 'react'
import { type WaitingChange, waitingChanges } from './local-shelf.ts'
import { sendWaiting } from './send-waiting.ts'
import { onWaiting } from './waiting-news.ts'

/** Changes that the server does not have yet; sent when the page opens, when the network is back, and every so often. */
export function useWaiting(): readonly WaitingChange[] {
  const [waiting, setWaiting] = useState<readonly WaitingChange[]>([])
  const isSending = waiting.some(({ refusal }) => refusal === '')
  useEffect(() => {
    const look = (): void => {
      waitingChanges()
        .then(setWaiting)
        .catch(() => {})
    }
    const send = (): void => {
      sendWaiting().catch(() => {})
    }
    look()
    send()
    const stop = onWaiting(look)
    addEventListener('online', send)
    const again = isSending ? setInterval(send, SEND_MILLISECONDS) : undefined
    return () => {
      stop()
      removeEventListener('online', send)
      clearInterval(again)
    }
  }, [isSending])
  return waiting
}

/** The server on the own machine comes back without telling the browser: it is asked so often. */
const SEND_MILLISECONDS = 10_000

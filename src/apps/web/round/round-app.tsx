import { type ReactElement, useEffect } from 'react'
import { usePlace } from '../page/places.ts'
import { RoundPage } from './round-page.tsx'
import { sendWaitingRounds } from './send-round.ts'
import { StartPage } from './start-page.tsx'

/** The rounds on this phone, or one of them: `#/ROUND/HOLE`. */
export function RoundApp(): ReactElement {
  const place = usePlace()
  useEffect(() => {
    const send = (): void => void sendWaitingRounds()
    send()
    addEventListener('online', send)
    return () => removeEventListener('online', send)
  }, [])
  const [, id = '', ref = ''] = place.split('/').map(decodeURIComponent)
  return id === '' ? <StartPage /> : <RoundPage key={id} id={id} holeRef={ref} />
}

import { type ReactElement, useState } from 'react'
import { encodeRound } from '#golf/round/encode-round.ts'
import type { KeptRound } from '#golf/round/kept-round.ts'
import { type LogStep, say } from '#golf/round/log-steps.ts'
import { isClosed } from '#golf/round/round-of-log.ts'
import { saveTable } from '../page/save-table.ts'
import { removeRound } from './round-shelf.ts'
import { sendRound } from './send-round.ts'
import { wordsOf } from './trouble-words.ts'

/** Closing, handing over, and taking the round off the phone. */
export function RoundEnd(props: {
  readonly round: KeptRound
  readonly isToSend: boolean
  readonly step: (step: LogStep) => void
  readonly reload: () => void
}): ReactElement {
  const { round, isToSend, step, reload } = props
  const { id } = round.facts
  const [asks, setAsks] = useState<'close' | 'remove' | null>(null)
  const [said, setSaid] = useState('')
  const closed = isClosed(round.log)
  const send = (): void => {
    setSaid('Sending.')
    sendRound(id)
      .then(() => setSaid('The desk has the round.'))
      .catch((error: unknown) => setSaid(`It waits on this phone: ${wordsOf(error)}`))
      .finally(reload)
  }
  const close = (): void => {
    step(say({ kind: 'closed' }))
    setAsks(null)
    send()
  }
  const remove = (): void => {
    removeRound(id)
      .then(() => {
        location.hash = ''
      })
      .catch((error: unknown) => setSaid(wordsOf(error)))
  }
  return (
    <section aria-label="The round" className="round-end">
      <h2>The round</h2>
      {closed && <p>The round is closed. What was written down wrongly can still be corrected.</p>}
      {!closed && asks !== 'close' && (
        <button type="button" className="wide" onClick={() => setAsks('close')}>
          Close the round
        </button>
      )}
      {asks === 'close' && (
        <div className="keys two">
          <p>Is the round over? A closed round is not opened again.</p>
          <button type="button" onClick={close}>
            Yes, close it
          </button>
          <button type="button" onClick={() => setAsks(null)}>
            Not yet
          </button>
        </div>
      )}
      <button type="button" className="wide" onClick={send}>
        Send it to the desk
      </button>
      <button
        type="button"
        className="wide"
        onClick={() => saveTable(encodeRound(round), `${id}.round.json`, 'application/json')}
      >
        Save it as a file
      </button>
      <p role="status">{said === '' && isToSend ? 'It waits on this phone for the desk.' : said}</p>
      <a className="wide" href="#/">
        All rounds
      </a>
      {asks === 'remove' ? (
        <div className="keys two">
          <p>Take it off this phone for good? Send or save it first.</p>
          <button type="button" onClick={remove}>
            Yes, take it off
          </button>
          <button type="button" onClick={() => setAsks(null)}>
            Keep it
          </button>
        </div>
      ) : (
        <button type="button" className="wide" onClick={() => setAsks('remove')}>
          Take it off this phone
        </button>
      )}
    </section>
  )
}

import { type ReactElement, useCallback, useEffect, useState } from 'react'
import { parseKeptRound } from '#golf/round/parse-kept-round.ts'
import { fetchServed, type Listed, listServed } from '../documents/server-documents.ts'
import { LatePart } from '../page/late-part.tsx'
import { holePlace } from './places.ts'
import { type ListedRound, onOtherTab, putRound, roundsHere } from './round-shelf.ts'
import { wordsOf } from './trouble-words.ts'

const loadNewRound = async () => (await import('./new-round.tsx')).NewRound

/** The rounds on this phone, a new one, and one that another phone began. */
export function StartPage(): ReactElement {
  const [here, setHere] = useState<readonly ListedRound[]>([])
  const [there, setThere] = useState<readonly Listed[]>([])
  const [isNew, setNew] = useState(false)
  const [said, setSaid] = useState('')
  const look = useCallback(() => {
    roundsHere().then(setHere, (error: unknown) => setSaid(`This phone keeps nothing: ${wordsOf(error)}`))
    listServed('rounds').then(setThere, () => setThere([]))
  }, [])
  useEffect(() => {
    look()
    return onOtherTab(look)
  }, [look])
  const takeUp = async (text: string, name: string): Promise<void> => {
    const read = parseKeptRound(text, name)
    if (read === null) {
      setSaid(`${name} was not written down by taps: it has no log to go on from. Read it on the desk.`)
      return
    }
    const { id } = read.round.facts
    await putRound(read.round)
    // Without the course there are no pictures, and letters do.
    await import('./prepare-round.ts').then(({ preparePictures }) => preparePictures(id)).catch(() => {})
    location.hash = holePlace(id, '')
  }
  const taking = (work: Promise<void>): void => {
    setSaid('')
    work.catch((error: unknown) => setSaid(wordsOf(error)))
  }
  // Whoever plays a round that counts prepares nothing and opens no planner before it is closed.
  const isHeld = here.some((round) => round.isHeld)
  const others = there.filter(({ id }) => here.every((round) => round.id !== id))
  return (
    <main className="start">
      <h1>The round</h1>
      {said !== '' && <p role="alert">{said}</p>}
      {here.length > 0 && (
        <section aria-label="On this phone">
          <h2>On this phone</h2>
          {here.map(({ id, name }) => (
            <a key={id} className="wide" href={holePlace(id, '')}>
              {name}
            </a>
          ))}
        </section>
      )}
      {isHeld && (
        <p className="held">
          A round that counts is being played: nothing is prepared or planned here until it is closed (Rules
          of Golf 2023, Rule 4.3a).
        </p>
      )}
      {!isHeld && (
        <button type="button" className="wide" aria-expanded={isNew} onClick={() => setNew(!isNew)}>
          New round
        </button>
      )}
      {isNew && !isHeld && <LatePart what="the courses and players" load={loadNewRound} show={{}} />}
      {others.length > 0 && (
        <section aria-label="On the desk">
          <h2>Go on with a round of the desk</h2>
          {others.map(({ id, name }) => (
            <button
              key={id}
              type="button"
              className="wide"
              onClick={() => taking(fetchServed('rounds', id).then(({ text }) => takeUp(text, name)))}
            >
              {name}
            </button>
          ))}
        </section>
      )}
      <label className="wide file">
        Open a round from a file
        <input
          type="file"
          accept=".json,application/json"
          onChange={(event) => {
            const file = event.currentTarget.files?.[0]
            event.currentTarget.value = ''
            if (file !== undefined) taking(file.text().then((text) => takeUp(text, file.name)))
          }}
        />
      </label>
      {!isHeld && (
        <a className="wide" href="/">
          The hole desk
        </a>
      )}
    </main>
  )
}

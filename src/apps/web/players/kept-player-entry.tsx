import { type ReactElement, useState } from 'react'
import { clubWords } from '#golf/player/club-words.ts'
import type { Reader } from '../desk/desk.ts'
import { fetchDocument } from '../documents/fetch-document.ts'
import { troubleOf, usePlayer } from '../documents/use-library.ts'
import { deskPlace, shotsPlace } from '../page/places.ts'
import { saveTable } from '../page/save-table.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import type { Trouble } from '../planning/questions.ts'
import { length, unbroken } from '../words.ts'
import { knownWords } from './known-words.ts'

/** One player: hand, how the numbers are known, stock carries, and what can be done with them. */
export function KeptPlayerEntry(props: {
  readonly id: string
  readonly name: string
  readonly reader: Reader
  readonly onDelete: () => void
}): ReactElement {
  const { id, name, reader } = props
  const { value: player, trouble } = usePlayer(id)
  const [fault, setFault] = useState<Trouble | null>(null)
  const save = (): void => {
    setFault(null)
    fetchDocument('players', id)
      .then((text) => saveTable(text, `${id}.player.json`, 'application/json'))
      .catch((error: unknown) => setFault(troubleOf(error)))
  }
  const shown = fault ?? trouble
  return (
    <section className="kept-player" aria-label={name}>
      <h2>{name}</h2>
      {shown !== null && <TroubleNote trouble={shown} />}
      {player !== null && (
        <>
          <p>{knownWords(player)}</p>
          <ul className="kept-carries">
            {player.clubs.map((club) => (
              <li key={club.name}>
                {unbroken(clubWords(club.name))} <b>{length(club.carryMetres, reader)}</b>
                {club.isGuess && ', a guess'}
              </li>
            ))}
          </ul>
        </>
      )}
      <div className="kept-buttons">
        <a className="button" href={deskPlace({ playerId: id })} aria-label={`${name} on the desk`}>
          On the desk
        </a>
        <a className="button" href={shotsPlace(id)} aria-label={`Shots of ${name}`}>
          Shots
        </a>
        <button type="button" aria-label={`Save as a file: ${name}`} onClick={save}>
          Save as a file
        </button>
        <button type="button" aria-label={`Delete ${name}`} onClick={props.onDelete}>
          Delete
        </button>
      </div>
    </section>
  )
}

import { type ReactElement, useId, useState } from 'react'
import type { Fault } from '#faults/fault.ts'
import type { ShotRecord } from '#golf/player/shot-record.ts'
import { encodeShots } from '#outside/formats/encode-shots.ts'
import type { Reader } from '../desk/desk.ts'
import { troubleOf } from '../documents/use-library.ts'
import { OpenFile, TABLE_FILES } from '../page/open-file.tsx'
import { saveTable } from '../page/save-table.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import type { Trouble } from '../planning/questions.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { openShots } from './open-shots.ts'

/** Shots to a table on the disk, and from one. */
export function ShotFiles(props: {
  readonly shots: readonly ShotRecord[]
  readonly playerId: string
  readonly reader: Reader
  readonly onOpen: (shots: readonly ShotRecord[]) => void
}): ReactElement {
  const { shots, playerId, reader, onOpen } = props
  const id = useId()
  const [file, setFile] = useState<File | null>(null)
  const [columns, setColumns] = useState('')
  const [read, setRead] = useState<{ words: string; faults: readonly Fault[] } | null>(null)
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const open = (asked: File): void => {
    setFile(asked)
    setRead(null)
    setTrouble(null)
    openShots(asked, columns, shots)
      .then(({ found, ...told }) => {
        setRead(told)
        setColumns('')
        if (found.length > 0) onOpen(found)
      })
      .catch((error: unknown) => setTrouble(troubleOf(error)))
  }
  const more = (read?.faults.length ?? 0) - DESK_SETTINGS.shotRows
  return (
    <div className="shot-files">
      <div className="made-buttons">
        <button
          type="button"
          disabled={shots.length === 0}
          onClick={() => saveTable(encodeShots(shots, reader.units), `${playerId}.shots.csv`)}
        >
          Save as a table
        </button>
        <OpenFile words="Open a table" label="A table of shots" accept={TABLE_FILES} onOpen={open} />
      </div>
      {trouble !== null && <TroubleNote trouble={trouble} />}
      {trouble !== null && file !== null && COLUMN_CODES.has(trouble.code) && (
        <form
          className="typed-shot"
          onSubmit={(event) => {
            event.preventDefault()
            open(file)
          }}
        >
          <div className="typed-field wide">
            <label htmlFor={`${id}-columns`}>What its columns are: Club=club,Carry=carry_yd</label>
            <input
              id={`${id}-columns`}
              type="text"
              autoComplete="off"
              value={columns}
              onChange={(event) => setColumns(event.target.value)}
            />
          </div>
          <button type="submit">Read {file.name} so</button>
        </form>
      )}
      {read !== null && (
        <div role="status">
          <p>{read.words}</p>
          <ul className="read-faults">
            {read.faults.slice(0, DESK_SETTINGS.shotRows).map(({ place, message, advice }) => (
              <li key={`${place} ${message}`}>
                {place}: {message} {advice}
              </li>
            ))}
            {more > 0 && <li>And {more} more.</li>}
          </ul>
        </div>
      )}
    </div>
  )
}

/** Failures that go when the columns are said. */
const COLUMN_CODES: ReadonlySet<string> = new Set([
  'MAR-SHOTS-001',
  'MAR-SHOTS-002',
  'MAR-SHOTS-004',
  'MAR-SHOTS-005',
  'MAR-SHOTS-018',
])

import { type ReactElement, useId, useRef, useState } from 'react'
import type { Fault } from '#faults/fault.ts'
import type { ShotRecord } from '#golf/player/shot-record.ts'
import { encodeShots } from '#outside/formats/encode-shots.ts'
import type { Reader } from '../desk/desk.ts'
import { troubleOf } from '../documents/use-library.ts'
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
  const input = useRef<HTMLInputElement>(null)
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
        <button type="button" disabled={shots.length === 0} onClick={() => save(shots, playerId, reader)}>
          Save as a table
        </button>
        <button type="button" onClick={() => input.current?.click()}>
          Open a table
        </button>
        <input
          ref={input}
          type="file"
          accept=".csv,.txt,.tsv,text/csv"
          hidden
          aria-label="A table of shots"
          onChange={(event) => {
            const [asked] = event.target.files ?? []
            // The same file may be chosen again once it was put right.
            if (asked !== undefined) open(asked)
            event.target.value = ''
          }}
        />
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

function save(shots: readonly ShotRecord[], playerId: string, reader: Reader): void {
  const address = URL.createObjectURL(new Blob([encodeShots(shots, reader.units)], { type: 'text/csv' }))
  const link = document.createElement('a')
  link.href = address
  link.download = `${playerId}.shots.csv`
  link.click()
  URL.revokeObjectURL(address)
}

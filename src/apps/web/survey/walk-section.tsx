import { type ReactElement, useState } from 'react'
import type { Fault } from '#faults/fault.ts'
import { decodeText } from '#outside/formats/decode-text.ts'
import type { LineStart } from '#outside/formats/line-start.ts'
import type { TableUnit } from '#outside/formats/table-unit.ts'
import type { TypedRow } from '#outside/formats/typed-hole-table.ts'
import type { WalkedItem, WalkSheet } from '#outside/formats/walked-rows.ts'
import type { Reader } from '../desk/desk.ts'
import { troubleOf } from '../documents/use-library.ts'
import { Choice } from '../ledger/choice.tsx'
import { OpenFile } from '../page/open-file.tsx'
import { TroubleNote } from '../page/trouble-note.tsx'
import type { Trouble } from '../planning/questions.ts'
import { length } from '../words.ts'
import { TRACED_KINDS } from './row-kinds.ts'
import { FaultList } from './row-table.tsx'

/** Edges walked with a receiver and saved as GPX: what each walk is, the surveyor says; then they become rows of the hole. */
export function WalkSection(props: {
  /** Number of the hole that is worked on. */
  readonly holeRef: string
  /** Where it begins, and whether its line bends. */
  readonly start: LineStart | null
  readonly isBent: boolean
  readonly unit: TableUnit
  readonly reader: Reader
  readonly onRows: (rows: readonly TypedRow[]) => void
}): ReactElement {
  const { holeRef, unit, reader } = props
  const [sheet, setSheet] = useState<WalkSheet | null>(null)
  const [kinds, setKinds] = useState<ReadonlyMap<string, string>>(new Map())
  const [fault, setFault] = useState<Fault | null>(null)
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const [told, setTold] = useState('')
  const open = async (file: File): Promise<void> => {
    setTold('')
    setFault(null)
    setTrouble(null)
    try {
      const { readWalkSheet } = await import('#outside/formats/walked-rows.ts')
      const { text } = decodeText(new Uint8Array(await file.arrayBuffer()), file.name)
      const read = readWalkSheet(text, file.name)
      setSheet(read)
      // What names another hole stays out until the surveyor says otherwise.
      setKinds(
        new Map(
          read.items.map(({ id, kind, ref }) => [id, ref === null || ref === holeRef.trim() ? kind : '']),
        ),
      )
      if (read.items.length === 0) setTold(`${file.name} holds no walk and no waypoint.`)
    } catch (error) {
      setSheet(null)
      setTrouble(troubleOf(error))
    }
  }
  const put = (read: WalkSheet): void => {
    const laid = read.lay(kinds, unit, { start: props.start, isBent: props.isBent })
    setFault(laid.fault)
    if (laid.fault !== null) return
    props.onRows(laid.rows)
    setSheet(null)
    setTold(
      `${laid.rows.length === 1 ? '1 row' : `${laid.rows.length} rows`} from the walk, good to about ${length(read.accuracyMetres, reader)} under open sky and worse under trees. Undo takes them back.`,
    )
  }
  return (
    <>
      <p className="walk-words">
        Walk round each piece of ground with a receiver, mark the tee and the pin, and open the file here.
      </p>
      <div className="made-buttons">
        <OpenFile
          words="Open a walk"
          label="A walk, GPX"
          accept=".gpx,application/gpx+xml"
          onOpen={(file) => void open(file)}
        />
      </div>
      {trouble !== null && <TroubleNote trouble={trouble} />}
      {sheet !== null && sheet.items.length > 0 && (
        <>
          <ul className="walks">
            {sheet.items.map((item) => (
              <li key={item.id}>
                <Choice
                  label={item.name === '' ? item.id : item.name}
                  value={kinds.get(item.id) ?? ''}
                  options={item.isMark ? MARK_KINDS : WALK_KINDS}
                  onChange={(kind) => setKinds(new Map(kinds).set(item.id, kind))}
                />
                <p>{walkWords(item, reader)}</p>
              </li>
            ))}
          </ul>
          {sheet.faults.length > 0 && <FaultList faults={sheet.faults.map(withPlace)} />}
          {fault !== null && <FaultList faults={[fault]} />}
          <div className="made-buttons">
            <button type="button" onClick={() => put(sheet)}>
              Put them on the hole
            </button>
            <button type="button" onClick={() => setSheet(null)}>
              Leave them
            </button>
          </div>
        </>
      )}
      <p role="status">{told}</p>
    </>
  )
}

const LEFT_OUT = { value: '', name: 'leave out' }
const MARK_KINDS = [
  LEFT_OUT,
  { value: 'tee', name: 'tee' },
  { value: 'pin', name: 'pin' },
  { value: 'tree', name: 'tree' },
]
/** A ditch is a line and tee markers are a point: neither is walked round. */
const WALK_KINDS = [
  LEFT_OUT,
  ...TRACED_KINDS.filter(({ value }) => value !== 'tee' && !value.startsWith('ditch')),
]

function walkWords({ isMark, metres, openMetres }: WalkedItem, reader: Reader): string {
  if (isMark) return 'a waypoint'
  if (metres === 0) return 'one place only: no edge'
  const walked = `${length(metres, reader)} walked`
  return openMetres === null
    ? `${walked}, closed`
    : `${walked}, does not come back: ${length(openMetres, reader)} are missing and are closed straight`
}

/** A list under a file says where in it. */
function withPlace(fault: Fault): Fault {
  return { ...fault, message: `${fault.place}: ${fault.message}` }
}

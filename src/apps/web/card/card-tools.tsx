import { type ReactElement, useState } from 'react'
import type { CardKind } from '#paper/book/card-kinds.ts'
import { troubleOf } from '../documents/use-library.ts'
import { saveTable } from '../page/save-table.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import type { Trouble } from '../planning/questions.ts'
import type { LaidOut } from './lay-out.ts'
import { mailPlace } from './mail-place.ts'

/** Back and forth, and the ways out of the page: the printer, a PDF, a letter. */
export function CardTools(props: {
  readonly laid: LaidOut | null
  /** All plans are there, and the pages are of what is asked now. */
  readonly isReady: boolean
  /** The name of a file, without its ending. */
  readonly name: string
  readonly steps: { readonly undo: (() => void) | null; readonly redo: (() => void) | null }
  readonly keeping: 'kept' | 'keeping'
  /** What a letter says; `null` = what is shown cannot be said in words. */
  readonly text: CardKind | null
}): ReactElement {
  const { laid, isReady, name, steps, text } = props
  const [fault, setFault] = useState<Trouble | null>(null)
  const [isMaking, setMaking] = useState(false)
  const mayLeave = laid !== null && isReady && laid.faults.length === 0
  const save = (): void => {
    if (laid === null) return
    setFault(null)
    setMaking(true)
    import('./press.ts')
      .then(({ printFile }) => printFile(laid.sheets, `${laid.facts.course}, ${laid.facts.playerName}`))
      .then((bytes) => saveTable(bytes as Uint8Array<ArrayBuffer>, `${name}.pdf`, 'application/pdf'))
      .catch((error: unknown) => setFault(troubleOf(error)))
      .finally(() => setMaking(false))
  }
  return (
    <div className="card-tools">
      <div className="head-buttons">
        <button type="button" disabled={steps.undo === null} onClick={() => steps.undo?.()}>
          Undo
        </button>
        <button type="button" disabled={steps.redo === null} onClick={() => steps.redo?.()}>
          Redo
        </button>
        <button type="button" disabled={!mayLeave} onClick={() => print()}>
          Print
        </button>
        <button type="button" disabled={!mayLeave || isMaking} onClick={save}>
          Save as PDF
        </button>
        {mayLeave && text !== null && (
          <a className="button" href={mailPlace(laid.facts, text)}>
            Write an e-mail
          </a>
        )}
      </div>
      <p className="card-note" role="status">
        {props.keeping === 'keeping' ? 'Your words are being kept. ' : ''}
        {laid !== null &&
          !isReady &&
          laid.faults.length === 0 &&
          'It can be printed once the plans are there. '}
        {mayLeave &&
          text !== null &&
          'The e-mail opens in your own mail program, with the card as plain text. No file travels with it: save the PDF and attach it there.'}
      </p>
      {fault !== null && <TroubleNote trouble={fault} />}
    </div>
  )
}

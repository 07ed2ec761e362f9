import type { ReactElement } from 'react'
import type { CardKind } from '#paper/book/card-kinds.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import type { LaidOut } from './lay-out.ts'
import { mailPlace } from './mail-place.ts'
import { usePdf } from './use-pdf.ts'

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
  /** Told each time the page leaves the desk. */
  readonly onLeave: () => void
}): ReactElement {
  const { laid, isReady, name, steps, text, onLeave } = props
  const { save, isMaking, fault } = usePdf()
  const mayLeave = laid !== null && isReady && laid.faults.length === 0
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
        <button
          type="button"
          disabled={!mayLeave || isMaking}
          onClick={() => {
            if (laid === null) return
            onLeave()
            save(
              laid.sheets.map(({ drawing }) => drawing),
              `${laid.facts.course}, ${laid.facts.playerName}`,
              name,
            )
          }}
        >
          Save as PDF
        </button>
        {mayLeave && text !== null && (
          <a className="button" href={mailPlace(laid.facts, text)} onClick={onLeave}>
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

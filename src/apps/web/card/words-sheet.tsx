import { type ReactElement, useMemo, useState } from 'react'
import '../style/card.css'
import { recapSheet } from '#paper/book/recap-sheet.ts'
import type { Paper } from '#paper/book/settings.ts'
import type { SheetWords } from '#paper/book/sheet-words.ts'
import type { Drawing } from '#paper/draw/drawing.ts'
import { AS_DRAWN, EngravedFor } from '../chart/picture.tsx'
import { useCommands } from '../commands/use-commands.ts'
import { Choice } from '../ledger/choice.tsx'
import { TroubleNote } from '../page/trouble-note.tsx'
import { WaitingFor } from '../page/waiting-for.tsx'
import { keepChoice, keptChoice } from './card-choice.ts'
import { withFonts } from './fonts.ts'
import { SheetFrame } from './sheet-frame.tsx'
import { useLaidOut } from './use-laid-out.ts'
import { usePdf } from './use-pdf.ts'

/** A sheet of words and figures as it leaves the printer, with the ways there; `words` must be kept by the caller. */
export function WordsSheet(props: {
  readonly words: SheetWords
  /** Of the file, without its ending. */
  readonly name: string
}): ReactElement {
  const { words, name } = props
  const [paper, setPaper] = useState<Paper>(() => keptChoice().paper)
  const asked = useMemo(() => ({ ...words, paper }), [words, paper])
  const { laid, trouble } = useLaidOut(asked, layOutWords)
  const sheets = laid ?? NO_SHEETS
  const { save, isMaking, fault } = usePdf()
  useCommands({ print: sheets.length > 0 ? () => print() : null }, true)
  const choose = (value: string): void => {
    const chosen = value === 'letter' ? 'letter' : 'a4'
    keepChoice({ ...keptChoice(), paper: chosen })
    setPaper(chosen)
  }
  const shown = fault ?? trouble
  return (
    <>
      <h2>The sheet</h2>
      <div className="choices sheet-choices">
        <Choice
          label="Paper"
          value={paper}
          options={[
            { value: 'a4', name: 'A4' },
            { value: 'letter', name: 'letter' },
          ]}
          onChange={choose}
        />
        <button type="button" disabled={sheets.length === 0} onClick={() => print()}>
          Print
        </button>
        <button
          type="button"
          disabled={sheets.length === 0 || isMaking}
          onClick={() => save(sheets, words.title, name)}
        >
          Save as PDF
        </button>
      </div>
      {shown !== null && <TroubleNote trouble={shown} />}
      {sheets.length === 0 && shown === null && <WaitingFor what="the letters of the page" />}
      <EngravedFor value={AS_DRAWN}>
        {sheets.map((drawing) => (
          <SheetFrame key={drawing.title} drawing={drawing} paper={paper} />
        ))}
      </EngravedFor>
    </>
  )
}

/** The sheets of words. Rejects where the letters cannot be fetched. */
async function layOutWords(asked: SheetWords & { readonly paper: Paper }): Promise<readonly Drawing[]> {
  const { pressLetters } = await import('./press.ts')
  return withFonts(() => recapSheet({ ...asked, letters: pressLetters() }))
}

const NO_SHEETS: readonly Drawing[] = []

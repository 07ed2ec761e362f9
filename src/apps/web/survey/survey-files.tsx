import { type ReactElement, useState } from 'react'
import { decodeText } from '#outside/formats/decode-text.ts'
import { documentId } from '#outside/formats/document-id.ts'
import { parseTypedTable } from '#outside/formats/typed-hole-table.ts'
import { troubleOf } from '../documents/use-library.ts'
import { OpenFile, TABLE_FILES } from '../page/open-file.tsx'
import { saveTable } from '../page/save-table.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import type { Trouble } from '../planning/questions.ts'
import { type Survey, surveyOf } from './survey.ts'
import { tableText } from './survey-reading.ts'

/** The table to a file on the disk, and from one. */
export function SurveyFiles(props: {
  readonly survey: Survey
  readonly onOpen: (survey: Survey) => void
}): ReactElement {
  const { survey, onOpen } = props
  const [told, setTold] = useState('')
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const open = async (file: File): Promise<void> => {
    setTold('')
    setTrouble(null)
    try {
      const { text } = decodeText(new Uint8Array(await file.arrayBuffer()), file.name)
      const { unit, holes } = parseTypedTable(text, file.name)
      const name = file.name.replace(/\.[a-z]+$/i, '')
      if (holes.length > 0) onOpen(surveyOf(name, unit, holes, null, Date.now()))
      const rows = holes.reduce((sum, hole) => sum + hole.rows.length, 0)
      setTold(
        `${file.name}: ${rows} rows of ${holes.length === 1 ? '1 hole' : `${holes.length} holes`}. Undo brings back what was here.`,
      )
    } catch (error) {
      setTrouble(troubleOf(error))
    }
  }
  return (
    <>
      <div className="made-buttons">
        <button
          type="button"
          onClick={() => saveTable(tableText(survey), `${documentId(survey.name, 'course')}.csv`)}
        >
          Save as a table
        </button>
        <OpenFile
          words="Open a table"
          label="A hole table"
          accept={TABLE_FILES}
          onOpen={(file) => void open(file)}
        />
      </div>
      {trouble !== null && <TroubleNote trouble={trouble} />}
      <p role="status">{told}</p>
    </>
  )
}

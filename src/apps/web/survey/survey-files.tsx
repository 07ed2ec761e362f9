import { type ReactElement, useRef, useState } from 'react'
import { decodeText } from '#outside/formats/decode-text.ts'
import { parseTypedTable } from '#outside/formats/typed-hole-table.ts'
import { troubleOf } from '../documents/use-library.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import type { Trouble } from '../planning/questions.ts'
import { courseId } from './keep-survey.ts'
import { type Survey, surveyOf } from './survey.ts'
import { tableText } from './survey-reading.ts'

/** The table to a file on the disk, and from one. */
export function SurveyFiles(props: {
  readonly survey: Survey
  readonly onOpen: (survey: Survey) => void
}): ReactElement {
  const { survey, onOpen } = props
  const input = useRef<HTMLInputElement>(null)
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
        <button type="button" onClick={() => save(survey)}>
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
          aria-label="A hole table"
          onChange={(event) => {
            const [asked] = event.target.files ?? []
            // The same file may be chosen again once it was put right.
            if (asked !== undefined) void open(asked)
            event.target.value = ''
          }}
        />
      </div>
      {trouble !== null && <TroubleNote trouble={trouble} />}
      <p role="status">{told}</p>
    </>
  )
}

function save(survey: Survey): void {
  const address = URL.createObjectURL(new Blob([tableText(survey)], { type: 'text/csv' }))
  const link = document.createElement('a')
  link.href = address
  link.download = `${courseId(survey.name)}.csv`
  link.click()
  URL.revokeObjectURL(address)
}

import { useState } from 'react'
import type { Drawing } from '#paper/draw/drawing.ts'
import { troubleOf } from '../documents/use-library.ts'
import { saveTable } from '../page/save-table.ts'
import type { Trouble } from '../planning/questions.ts'

/** Makes one PDF of sheets in this browser and gives it to the reader as a file. */
export function usePdf(): {
  /** `name`: of the file, without its ending. */
  readonly save: (sheets: readonly Drawing[], title: string, name: string) => void
  readonly isMaking: boolean
  readonly fault: Trouble | null
} {
  const [fault, setFault] = useState<Trouble | null>(null)
  const [isMaking, setMaking] = useState(false)
  const save = (sheets: readonly Drawing[], title: string, name: string): void => {
    setFault(null)
    setMaking(true)
    import('./press.ts')
      .then(({ printFile }) => printFile(sheets, title))
      .then((bytes) => saveTable(bytes as Uint8Array<ArrayBuffer>, `${name}.pdf`, 'application/pdf'))
      .catch((error: unknown) => setFault(troubleOf(error)))
      .finally(() => setMaking(false))
  }
  return { save, isMaking, fault }
}

import { useEffect, useRef, useState } from 'react'
import { parseDay } from '#golf/course/parse-day.ts'
import type { Desk } from '../desk/desk.ts'
import * as edits from '../desk/edits.ts'
import { fetchDocument } from '../documents/fetch-document.ts'
import { troubleOf } from '../documents/use-library.ts'
import type { Trouble } from '../planning/questions.ts'
import type { Edit } from './use-desk.ts'

/** Chooses a day of the store, or with `''` the calm one; a day that cannot be had is told until the desk moves on. */
export function useDayChoice(
  desk: Desk,
  edit: Edit,
): { readonly chooseDay: (id: string) => void; readonly dayTrouble: Trouble | null } {
  const [dayTrouble, setDayTrouble] = useState<Trouble | null>(null)
  // The day asked for last: a slower answer for one before it comes too late.
  const asked = useRef('')
  // biome-ignore lint/correctness/useExhaustiveDependencies: any change of the desk moves on from the trouble
  useEffect(() => setDayTrouble(null), [desk])
  const chooseDay = (id: string): void => {
    setDayTrouble(null)
    asked.current = id
    if (id === '') {
      edit('day', (now) => edits.chooseDay(now, null, now.day))
      return
    }
    fetchDocument('days', id)
      .then((text) => {
        if (asked.current !== id) return
        const day = parseDay(text, `days/${id}`)
        edit('day', (now) => edits.chooseDay(now, id, day))
      })
      .catch((error: unknown) => asked.current === id && setDayTrouble(troubleOf(error)))
  }
  return { chooseDay, dayTrouble }
}

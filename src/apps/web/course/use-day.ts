import { useEffect, useState } from 'react'
import { type Day, REFERENCE_DAY } from '#golf/course/day.ts'
import { parseDay } from '#golf/course/parse-day.ts'
import { fetchDocument } from '../documents/fetch-document.ts'
import { troubleOf } from '../documents/use-library.ts'
import type { Trouble } from '../planning/questions.ts'

/** The day a course is looked at on, calm at first. */
export function useDay(): {
  readonly day: Day
  readonly dayId: string
  readonly chooseDay: (id: string) => void
  readonly dayTrouble: Trouble | null
} {
  const [dayId, chooseDay] = useState('')
  const [state, setState] = useState<{ day: Day; trouble: Trouble | null }>({
    day: REFERENCE_DAY,
    trouble: null,
  })
  useEffect(() => {
    if (dayId === '') return setState({ day: REFERENCE_DAY, trouble: null })
    let isWanted = true
    fetchDocument('days', dayId)
      .then((text) => isWanted && setState({ day: parseDay(text, `days/${dayId}`), trouble: null }))
      .catch((error: unknown) => isWanted && setState({ day: REFERENCE_DAY, trouble: troubleOf(error) }))
    return () => {
      isWanted = false
    }
  }, [dayId])
  return { day: state.day, dayId, chooseDay, dayTrouble: state.trouble }
}

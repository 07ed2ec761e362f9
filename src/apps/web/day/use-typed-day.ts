import { useState } from 'react'
import type { Day } from '#golf/course/day.ts'
import { encodeDay } from '#golf/course/encode-day.ts'
import { parseDay } from '#golf/course/parse-day.ts'
import { fetchKept, keepChanged, keepNewDocument } from '../documents/fetch-document.ts'
import { ownStorage } from '../documents/own-storage.ts'
import { troubleOf } from '../documents/use-library.ts'
import type { Trouble } from '../planning/questions.ts'
import { keepTypedDay, typedDayBefore } from './kept-typed-day.ts'
import { newDay, type TypedDay, typedFrom } from './typed-day.ts'

/** The day that is being typed: what was typed before and not kept is there again. */
export function useTypedDay(): {
  readonly typed: TypedDay
  /** Whether something was typed that the store does not have. */
  readonly isChanged: boolean
  readonly change: (change: Partial<TypedDay>) => void
  /** Begins from a day of the store, from a new one where the id is empty. */
  readonly begin: (dayId: string) => void
  /** Puts the day into the store; resolves to whether it is there. */
  readonly keep: (day: Day) => Promise<boolean>
  readonly trouble: Trouble | null
} {
  const [before] = useState(() => typedDayBefore(ownStorage))
  const [typed, setTyped] = useState<TypedDay>(before ?? newDay(today()))
  const [isChanged, setChanged] = useState(before !== null)
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const settle = (next: TypedDay): void => {
    setTyped(next)
    setChanged(false)
    setTrouble(null)
    keepTypedDay(null, ownStorage)
  }
  const from = async (dayId: string): Promise<void> => {
    const { text, revision } = await fetchKept('days', dayId)
    settle(typedFrom(parseDay(text, `days/${dayId}`), dayId, revision))
  }
  const fail = (error: unknown): void => setTrouble(troubleOf(error))
  return {
    typed,
    isChanged,
    trouble,
    change(change) {
      const next = { ...typed, ...change }
      setTyped(next)
      setChanged(true)
      keepTypedDay(next, ownStorage)
    },
    begin(dayId) {
      if (dayId === '') settle(newDay(today()))
      else from(dayId).catch(fail)
    },
    async keep(day) {
      try {
        const id = await put(typed, day)
        await from(id)
        return true
      } catch (error) {
        fail(error)
        return false
      }
    },
  }
}

/** The id under which the day is in the store. */
async function put({ dayId, revision }: TypedDay, day: Day): Promise<string> {
  if (dayId === '') return keepNewDocument('days', `day-${day.date ?? today()}`, encodeDay(day))
  await keepChanged('days', dayId, encodeDay(day), revision)
  return dayId
}

/** As the reader's clock has it, `2026-07-23`. */
function today(): string {
  return new Date().toLocaleDateString('sv-SE')
}

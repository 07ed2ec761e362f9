import { useCallback, useEffect, useState } from 'react'
import { ownStorage } from '../documents/own-storage.ts'

const KEPT = 'marram.lesson.open'

/** Whether the first lesson lies open; kept in this browser, so that it is taken up where it was left. */
export function useLessonOpen(): {
  readonly isOpen: boolean
  /** True when it was opened here and now. */
  readonly isAsked: boolean
  readonly setOpen: (isOpen: boolean) => void
} {
  const [isOpen, setOpen] = useState(() => ownStorage.getItem(KEPT) === 'open')
  const [isAsked, setAsked] = useState(false)
  useEffect(() => {
    try {
      if (isOpen) ownStorage.setItem(KEPT, 'open')
      else ownStorage.removeItem(KEPT)
    } catch {
      // Nothing is lost but the comfort.
    }
  }, [isOpen])
  const set = useCallback((next: boolean) => {
    setOpen(next)
    setAsked(next)
  }, [])
  return { isOpen, isAsked, setOpen: set }
}

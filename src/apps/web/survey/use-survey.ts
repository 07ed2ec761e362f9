import { useCallback, useEffect, useRef, useState } from 'react'
import type { TableUnit } from '#outside/formats/table-unit.ts'
import { beginHistory, type History, redo, remember, undo } from '../desk/history.ts'
import { ownStorage } from '../documents/own-storage.ts'
import { KEPT_SURVEY, keepSurvey, keptSurvey } from './kept-survey.ts'
import { newSurvey, type Survey } from './survey.ts'

/** Changes the survey by a pure function; edits of one drag, or of one kind in quick succession, are one step. */
export type EditSurvey = (kind: string, change: (survey: Survey) => Survey, drag?: number | null) => void

/** The survey with its past, kept in this browser with every step. */
export interface SurveyState {
  readonly survey: Survey
  readonly edit: EditSurvey
  readonly undo: () => void
  /** What the survey is now called in the store: no step, and true of all its steps. */
  readonly keepAs: (kept: NonNullable<Survey['kept']>) => void
  readonly redo: () => void
  readonly canUndo: boolean
  readonly canRedo: boolean
  /** False while the browser has no room for it. */
  readonly isKept: boolean
  /** True when another tab has changed the survey since this one did. */
  readonly isElsewhere: boolean
  /** Takes what the other tab has, or keeps what is here. */
  readonly settle: (takes: 'there' | 'here') => void
}

export function useSurvey(unit: TableUnit): SurveyState {
  const [history, setHistory] = useState(
    () => keptSurvey(ownStorage) ?? beginHistory(newSurvey(unit, Date.now())),
  )
  const [isKept, setKept] = useState(true)
  const [isElsewhere, setElsewhere] = useState(false)
  const first = useRef(history)
  useEffect(() => {
    // What was only opened is no change, and what another tab did is not written over unasked.
    if (history !== first.current && !isElsewhere) setKept(keepSurvey(history, ownStorage))
  }, [history, isElsewhere])
  useEffect(() => {
    const onOther = (event: StorageEvent): void => {
      if (event.key === KEPT_SURVEY) setElsewhere(true)
    }
    addEventListener('storage', onOther)
    return () => removeEventListener('storage', onOther)
  }, [])
  const edit = useCallback<EditSurvey>((kind, change, drag = null) => {
    setHistory((before) => remember(before, change(before.now), { kind, at: Date.now(), drag }))
  }, [])
  const settle = useCallback((takes: 'there' | 'here') => {
    const there = takes === 'there' ? keptSurvey(ownStorage) : null
    setHistory((here) => {
      first.current = there ?? first.current
      return there ?? { ...here }
    })
    setElsewhere(false)
  }, [])
  return {
    survey: history.now,
    edit,
    keepAs: useCallback((kept) => setHistory((before) => renamed(before, kept)), []),
    undo: useCallback(() => setHistory(undo), []),
    redo: useCallback(() => setHistory(redo), []),
    canUndo: history.past.length > 0,
    canRedo: history.future.length > 0,
    isKept,
    isElsewhere,
    settle,
  }
}

function renamed(history: History<Survey>, kept: Survey['kept']): History<Survey> {
  const { now, past, future } = history
  const rename = (survey: Survey): Survey => (survey.began === now.began ? { ...survey, kept } : survey)
  return { ...history, now: rename(now), past: past.map(rename), future: future.map(rename) }
}

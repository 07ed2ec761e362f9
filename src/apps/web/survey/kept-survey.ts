import { beginHistory, type History } from '../desk/history.ts'
import type { Survey } from './survey.ts'

/** Where the survey is kept in this browser. */
export const KEPT_SURVEY = 'marram.survey'

/** Steps of the past that are kept over a reload: a browser has little room. */
const KEPT_STEPS = 60

/** Keeps a survey with its past for when the page is loaded again; false when the browser has no room for it. */
export function keepSurvey(history: History<Survey>, place: Pick<Storage, 'setItem'>): boolean {
  const texts = [
    {
      now: history.now,
      past: history.past.slice(-KEPT_STEPS),
      future: history.future.slice(0, KEPT_STEPS),
    },
    { now: history.now, past: [], future: [] },
  ]
  return texts.some((kept) => {
    try {
      place.setItem(KEPT_SURVEY, JSON.stringify(kept))
      return true
    } catch {
      return false
    }
  })
}

/** The survey as it was left; `null` when none was kept or an older page kept another shape. */
export function keptSurvey(place: Pick<Storage, 'getItem'>): History<Survey> | null {
  try {
    const kept: unknown = JSON.parse(place.getItem(KEPT_SURVEY) ?? 'null')
    if (!isRecord(kept) || !isSurvey(kept.now)) return null
    const past = Array.isArray(kept.past) ? kept.past.filter(isSurvey) : []
    const future = Array.isArray(kept.future) ? kept.future.filter(isSurvey) : []
    return beginHistory(kept.now, { past, future })
  } catch {
    return null
  }
}

function isSurvey(kept: unknown): kept is Survey {
  if (!isRecord(kept) || !Array.isArray(kept.holes)) return false
  return (
    typeof kept.name === 'string' &&
    (kept.unit === 'yd' || kept.unit === 'm') &&
    Number.isInteger(kept.open) &&
    Number.isInteger(kept.nextId) &&
    Number.isFinite(kept.began) &&
    kept.holes.length > 0 &&
    kept.holes.every(isHole) &&
    (kept.draft === null ||
      (isRecord(kept.draft) && hasTexts(kept.draft, ['what']) && isCorners(kept.draft.corners))) &&
    (kept.kept === null || (isRecord(kept.kept) && hasTexts(kept.kept, ['id', 'revision'])))
  )
}

function isHole(hole: unknown): boolean {
  return (
    isRecord(hole) &&
    hasTexts(hole, ['ref', 'par', 'index']) &&
    Array.isArray(hole.rows) &&
    hole.rows.every(
      (row: unknown) =>
        isRecord(row) &&
        Number.isInteger(row.id) &&
        hasTexts(row, ['what', 'side', 'from', 'to', 'near', 'far', 'note']) &&
        (row.outline === null || isCorners(row.outline)),
    )
  )
}

function isCorners(corners: unknown): boolean {
  return (
    Array.isArray(corners) &&
    corners.every((at: unknown) => Array.isArray(at) && at.length === 2 && at.every(Number.isFinite))
  )
}

function hasTexts(record: Readonly<Record<string, unknown>>, names: readonly string[]): boolean {
  return names.every((name) => typeof record[name] === 'string')
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

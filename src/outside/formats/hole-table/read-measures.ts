import type { Point } from '#numbers/geometry/point.ts'
import { METRES_PER } from './table-columns.ts'

/** What a note says in figures, and its words without them. */
export interface NoteMeasures {
  /** Length of the hole on the card from these markers, metres. */
  readonly cardMetres: number | null
  /** Corners of the ground, metres beside (right positive) and along the first leg of the line. */
  readonly outline: readonly Point[] | null
  readonly words: string
}

const NUMBER = '-?\\d+(?:\\.\\d+)?'
const CARD = /\bcard\s*:?\s*(\d+(?:[.,]\d+)?)\s*(yards?|yds?|metres?|meters?|m)?\b/i
const OUTLINE = new RegExp(`\\boutline((?:\\s+${NUMBER}:${NUMBER})+)`, 'i')

/**
 * Reads `card 364 yd` and `outline 225:-14 245:-14 245:-24` (corners as along:beside, left negative, in the unit of
 * the table, gone on straight from the first leg) out of a note.
 */
export function readMeasures(note: string, metresPerUnit: number): NoteMeasures {
  const card = CARD.exec(note)
  const perUnit = METRES_PER[card?.[2]?.toLowerCase() ?? ''] ?? metresPerUnit
  const corners = OUTLINE.exec(note)?.[1]?.trim().split(/\s+/) ?? null
  const words = note
    .replace(CARD, '')
    .replace(OUTLINE, '')
    .split(/[,;]/)
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .join(', ')
  return {
    cardMetres: card === null ? null : Number((card[1] ?? '').replace(',', '.')) * perUnit,
    outline:
      corners?.map((corner): Point => {
        const [along = 0, beside = 0] = corner.split(':').map(Number)
        return [beside * metresPerUnit, along * metresPerUnit]
      }) ?? null,
    words,
  }
}

import type { Point } from '#numbers/geometry/point.ts'
import { encodeGreenNote, parseGreenNote, type TypedGreen } from '#outside/formats/green-note.ts'
import { type LineStart, lineStartText } from '#outside/formats/line-start.ts'
import { METRES_PER_TABLE_UNIT, type TableUnit, tableFigure } from '#outside/formats/table-unit.ts'
import { BLANK_ROW, isBlankRow, type TypedRow } from '#outside/formats/typed-hole-table.ts'
import { type GreenSize, withGreenSize } from './green-size.ts'
import { changeHole, openHole, type Survey, type SurveyHole, type SurveyRow, withoutId } from './survey.ts'

/** Every edit of a survey: a pure function from the old one to the new one, so that undo is a list. */

/** The cells of a row that are typed. */
export type CellName = 'what' | 'side' | 'from' | 'to' | 'near' | 'far' | 'note'

/** A typed cell. */
export function setCell(survey: Survey, id: number, cell: CellName, text: string): Survey {
  return changeRow(survey, id, (row) => ({ ...row, [cell]: text }))
}

/** The open hole's first green of another size, `metres` of one part of it; a hole without one gets it. */
export function setGreenSize(survey: Survey, part: keyof GreenSize, metres: number): Survey {
  return changeGreen(survey, (row) => withGreenSize(row, part, metres, survey.unit))
}

/** What is typed of the slope of the open hole's first green; a hole without one gets it. */
export function setGreenSlope(survey: Survey, green: TypedGreen): Survey {
  return changeGreen(survey, (row) => ({
    ...row,
    note: encodeGreenNote(green, parseGreenNote(row.note).words),
  }))
}

function changeGreen(survey: Survey, change: (row: SurveyRow) => SurveyRow): Survey {
  const isGreen = ({ what }: SurveyRow): boolean => what === 'green'
  const known = openHole(survey).rows.find(isGreen)
  if (known !== undefined) return changeRow(survey, known.id, change)
  const added = addRow(survey, { what: 'green' })
  return changeRow(added, openHole(added).rows.find(isGreen)?.id ?? 0, change)
}

/** What the card says of the hole. */
export function setHole(survey: Survey, field: 'ref' | 'par' | 'index', text: string): Survey {
  return changeHole(survey, (hole) => ({ ...hole, [field]: text }))
}

/** Where on the earth the open hole begins; one that has said so already lies there now. */
export function setStart(survey: Survey, start: LineStart): Survey {
  const note = lineStartText(start)
  const known = openHole(survey).rows.find(({ what }) => what === 'start')
  return known === undefined
    ? addRow(survey, { what: 'start', note })
    : changeRow(survey, known.id, (row) => ({ ...row, note }))
}

/** A row taken away. */
export function removeRow(survey: Survey, id: number): Survey {
  return changeHole(survey, (hole) => ({ ...hole, rows: hole.rows.filter((row) => row.id !== id) }))
}

/** All lengths in another unit; cells that are no numbers stay as they are. */
export function setUnit(survey: Survey, unit: TableUnit): Survey {
  if (unit === survey.unit) return survey
  const turned = (text: string): string => {
    const number = Number(text.replace(',', '.'))
    return text.trim() === '' || !Number.isFinite(number)
      ? text
      : tableFigure(number * METRES_PER_TABLE_UNIT[survey.unit], unit)
  }
  const holes = survey.holes.map((hole) => ({
    ...hole,
    rows: hole.rows.map((row) => ({
      ...row,
      from: turned(row.from),
      to: row.what === 'bend' ? row.to : turned(row.to),
      near: turned(row.near),
      far: turned(row.far),
      note: row.what === 'green' ? turnedGreen(row.note, turned) : row.note,
    })),
  }))
  return { ...survey, unit, holes }
}

/** The note of a green with its lengths in another unit. */
function turnedGreen(note: string, turned: (text: string) => string): string {
  const { green, words } = parseGreenNote(note)
  const tiers = green.tiers.map(({ on, rise, over }) => ({ on: turned(on), rise, over: turned(over) }))
  const heights = green.heights.map(({ on, beside, height }) => ({
    on: turned(on),
    beside: turned(beside),
    height,
  }))
  return encodeGreenNote({ ...green, tiers, heights }, words)
}

/** One more hole, numbered on, and it is worked on. */
export function addHole(survey: Survey): Survey {
  const highest = Math.max(0, ...survey.holes.map(({ ref }) => Number.parseInt(ref, 10) || 0))
  const hole: SurveyHole = { ref: String(highest + 1), par: '', index: '', rows: [] }
  const added = { ...survey, holes: [...survey.holes, hole], open: survey.holes.length, draft: null }
  return changeHole(added, (same) => same)
}

/** Another hole to work on. */
export function chooseHole(survey: Survey, open: number): Survey {
  return { ...survey, open, draft: null }
}

/** Takes the open hole away; a survey keeps one. */
export function removeHole(survey: Survey): Survey {
  if (survey.holes.length < 2) return survey
  const holes = survey.holes.filter((_, index) => index !== survey.open)
  return { ...survey, holes, open: Math.max(0, survey.open - 1), draft: null }
}

/** One more corner of the ground that is traced; a tee is one tap. */
export function addCorner(survey: Survey, what: string, at: Point): Survey {
  if (what === 'tee') return addRow(survey, teeAt(at, survey.unit))
  const corners = survey.draft?.what === what ? survey.draft.corners : []
  return { ...survey, draft: { what, corners: [...corners, at] } }
}

/** Closes the outline that is traced and makes it a row; with fewer than three corners it stays open. */
export function closeDraft(survey: Survey): Survey {
  const { draft } = survey
  if (draft === null || draft.corners.length < 3) return survey
  return addRow({ ...survey, draft: null }, { what: draft.what, outline: draft.corners })
}

/** Rows that come all at once, each a new one; of the line's start and the tee at it no second one is put. */
export function addRows(survey: Survey, rows: readonly TypedRow[]): Survey {
  const isOnce = [
    ({ what }: TypedRow): boolean => what === 'start',
    ({ what, from, near }: TypedRow): boolean => what === 'tee' && Number(from) === 0 && near === '',
  ]
  const known = openHole(survey).rows
  const isThere = (row: TypedRow): boolean => isOnce.some((once) => once(row) && known.some(once))
  return rows.filter((row) => !isThere(row)).reduce(addRow, survey)
}

/** Lets go of the outline that is traced. */
export function dropDraft(survey: Survey): Survey {
  return { ...survey, draft: null }
}

/** The corners of a traced row changed; fewer than three take the row away. */
export function setCorners(survey: Survey, id: number, corners: readonly Point[]): Survey {
  return corners.length < 3
    ? removeRow(survey, id)
    : changeRow(survey, id, (row) => ({ ...row, outline: corners }))
}

function changeRow(survey: Survey, id: number, change: (row: SurveyRow) => SurveyRow): Survey {
  return changeHole(survey, (hole) => ({
    ...hole,
    rows: hole.rows.map((row) => (row.id === id ? change(row) : row)),
  }))
}

/** A new row in place of the open one at the end. */
function addRow(survey: Survey, filled: Partial<SurveyRow>): Survey {
  const rows = openHole(survey).rows.filter((row) => !isBlankRow(withoutId(row)))
  const row: SurveyRow = { ...BLANK_ROW, ...filled, id: survey.nextId }
  const numbered = { ...survey, nextId: survey.nextId + 1 }
  return changeHole(numbered, (hole) => ({ ...hole, rows: [...rows, row] }))
}

function teeAt([beside, along]: Point, unit: TableUnit): Partial<SurveyRow> {
  const off = tableFigure(Math.abs(beside), unit)
  const isAside = Number(off) > 0
  return {
    what: 'tee',
    from: tableFigure(along, unit),
    ...(isAside ? { side: beside < 0 ? 'left' : 'right', near: off } : {}),
  }
}

import type { Point } from '#numbers/geometry/point.ts'
import type { TableUnit } from '#outside/formats/table-unit.ts'
import { BLANK_ROW, isBlankRow, type TypedHole, type TypedRow } from '#outside/formats/typed-hole-table.ts'

/** A row on the page; its id stays while it is typed and moved. */
export interface SurveyRow extends TypedRow {
  readonly id: number
}

export interface SurveyHole extends TypedHole {
  readonly rows: readonly SurveyRow[]
}

/** Ground whose outline is being traced. */
export interface Draft {
  readonly what: string
  /** Metres beside (right positive) and along the first leg. */
  readonly corners: readonly Point[]
}

/** Everything a person has typed and traced: the whole of it is one step of undo. */
export interface Survey {
  /** Name of the course. */
  readonly name: string
  readonly unit: TableUnit
  readonly holes: readonly SurveyHole[]
  /** Which hole is worked on, from 0. */
  readonly open: number
  readonly draft: Draft | null
  /** The course of the store that it was last kept as; `null` = none yet. */
  readonly kept: { readonly id: string; readonly revision: string } | null
  readonly nextId: number
  /** When it was begun or opened, milliseconds: tells its steps from those of another survey. */
  readonly began: number
}

/** A survey with nothing in it. */
export function newSurvey(unit: TableUnit, began: number): Survey {
  return surveyOf('', unit, [{ ref: '1', par: '', index: '', rows: [] }], null, began)
}

/** Typed holes as a survey, each with an open row at its end. */
export function surveyOf(
  name: string,
  unit: TableUnit,
  holes: readonly TypedHole[],
  kept: Survey['kept'],
  began: number,
): Survey {
  let nextId = 1
  const numbered = holes.map((hole) => ({
    ...hole,
    rows: [...hole.rows, BLANK_ROW].map((row) => {
      nextId += 1
      return { ...row, id: nextId - 1 }
    }),
  }))
  return { name, unit, holes: numbered, open: 0, draft: null, kept, nextId, began }
}

/** The hole that is worked on. */
export function openHole(survey: Survey): SurveyHole {
  return survey.holes[survey.open] ?? { ref: '', par: '', index: '', rows: [] }
}

/** The survey with the open hole changed and, after its last filled row, one to type in. */
export function changeHole(survey: Survey, change: (hole: SurveyHole) => SurveyHole): Survey {
  const changed = change(openHole(survey))
  const last = changed.rows.at(-1)
  const isOpen = last !== undefined && isBlankRow(withoutId(last))
  const rows = isOpen ? changed.rows : [...changed.rows, { ...BLANK_ROW, id: survey.nextId }]
  return {
    ...survey,
    holes: survey.holes.map((hole, index) => (index === survey.open ? { ...changed, rows } : hole)),
    nextId: survey.nextId + (isOpen ? 0 : 1),
  }
}

/** A row as the table has it. */
export function withoutId({ id: _, ...row }: SurveyRow): TypedRow {
  return row
}

/** A hole as the table has it. */
export function typedHole(hole: SurveyHole): TypedHole {
  return { ...hole, rows: hole.rows.map(withoutId) }
}

import { METRES_PER_TABLE_UNIT, type TableUnit, tableFigure } from '#outside/formats/table-unit.ts'
import type { TypedRow } from '#outside/formats/typed-hole-table.ts'

/** Where a green begins and how large it is, metres; `null` where its row does not say. */
export interface GreenSize {
  /** From the tee along the line. */
  readonly front: number | null
  readonly depth: number | null
  readonly width: number | null
}

/** What the cells of a green's row come to. */
export function greenSize(row: TypedRow, unit: TableUnit): GreenSize {
  const [front, back, near, far] = [row.from, row.to, row.near, row.far].map((text) => metresOf(text, unit))
  return {
    front: front ?? null,
    depth: front == null || back == null ? null : back - front,
    width: far == null ? null : far - (near ?? 0),
  }
}

/** The row with one of the three changed: the green is moved by its front, and grows to its back and to its far side. */
export function withGreenSize<Row extends TypedRow>(
  row: Row,
  part: keyof GreenSize,
  metres: number,
  unit: TableUnit,
): Row {
  const figure = (length: number): string => tableFigure(length, unit)
  const { front, depth } = greenSize(row, unit)
  if (part === 'front')
    return { ...row, from: figure(metres), ...(depth === null ? {} : { to: figure(metres + depth) }) }
  if (part === 'depth') return { ...row, to: figure((front ?? 0) + metres) }
  return { ...row, far: figure((metresOf(row.near, unit) ?? 0) + metres) }
}

function metresOf(text: string, unit: TableUnit): number | null {
  const number = Number(text.replace(',', '.'))
  return text.trim() === '' || !Number.isFinite(number) ? null : number * METRES_PER_TABLE_UNIT[unit]
}

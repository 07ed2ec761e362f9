import { METRES_PER_YARD } from '#numbers/units/units.ts'

/** The unit of the distances of a typed hole table, as it stands in its header. */
export type TableUnit = 'yd' | 'm'

export const METRES_PER_TABLE_UNIT: Readonly<Record<TableUnit, number>> = { yd: METRES_PER_YARD, m: 1 }

/** A length in the unit of a table, to a hundredth of it, without zeros that say nothing. */
export function tableFigure(metres: number, unit: TableUnit): string {
  return String(Math.round((100 * metres) / METRES_PER_TABLE_UNIT[unit]) / 100 + 0)
}

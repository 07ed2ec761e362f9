import type { Fault } from '#faults/fault.ts'
import type { TableRow } from './table-row.ts'

/** A hole whose length nobody knows. */
export function noGreen(ref: string): Fault {
  return {
    severity: 'error',
    code: 'MAR-IMPORT-020',
    message: `Hole ${ref} has no green row with its front and back, so its length is not known; it was left out.`,
    place: `hole ${ref}`,
    advice: `Add a row such as: ${ref},green,,350,378,,26,par 4`,
  }
}

/** Two greens are most often two holes typed under one number. */
export function severalGreens(ref: string, greens: readonly TableRow[]): Fault {
  return {
    severity: 'warning',
    code: 'MAR-IMPORT-027',
    message: `Hole ${ref} has ${greens.length} green rows; its line was taken to end on the first.`,
    place: `line ${greens[1]?.line ?? ''}`,
    advice: 'Give each hole a number of its own, or leave it if the other green lies beside this hole.',
  }
}

/** A hole whose place nobody knows among holes that lie where they are. */
export function unplaced(ref: string): Fault {
  return {
    severity: 'warning',
    code: 'MAR-IMPORT-027',
    message: `Hole ${ref} has no start row, so its place on the earth is invented and its bearing is north.`,
    place: `hole ${ref}`,
    advice: `Add a row such as: ${ref},start,,,,,,55.9412 -1.8031 toward 43`,
  }
}

/** A hole so far from the first that a sign or a digit of its start is wrong. */
export function farStart(ref: string, metres: number): Fault {
  return {
    severity: 'warning',
    code: 'MAR-IMPORT-040',
    message: `Hole ${ref} starts ${Math.round(metres / 1000)} km from the first hole with a start row.`,
    place: `hole ${ref}`,
    advice: 'Look at the signs and digits of both: north and east are positive.',
  }
}

/** What was taken for granted in a row with blank cells. */
export function assumedFault(row: TableRow, assumed: readonly string[]): Fault {
  return {
    severity: 'note',
    code: 'MAR-IMPORT-027',
    message: `For ${row.what} of hole ${row.hole} the blank cells were filled in: ${assumed.join('; ')}.`,
    place: `line ${row.line}`,
    advice: 'Type them if it is otherwise.',
  }
}

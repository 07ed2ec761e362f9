import type { Fault } from '#faults/fault.ts'
import type { FarDates } from './far-dates.ts'
import type { MixedUnits } from './mixed-units.ts'
import type { NoShot } from './read-shot-row.ts'
import type { ShotColumns } from './shot-columns.ts'

/** A row that is no shot, as a fault with its line. */
export function rowFault({ code, reason, isFault }: NoShot, place: string): Fault {
  return {
    severity: isFault ? 'error' : 'note',
    code,
    message: `The row was ${isFault ? 'not read' : 'set aside'}: ${reason}.`,
    place,
    advice: '',
  }
}

/** A quotation mark without its fellow. */
export const TORN_ROW: NoShot = {
  code: 'MAR-SHOTS-010',
  reason: 'a quotation mark in it is not closed',
  isFault: true,
}

/** What is doubtful about the columns: headings that mean nothing, and units said against the file. */
export function columnFaults({ unknown, contradicted }: ShotColumns, place: string): Fault[] {
  return [
    ...unknown.map(
      (heading): Fault => ({
        severity: 'note',
        code: 'MAR-SHOTS-013',
        message: `The column “${heading}” is not known; it was passed over.`,
        place,
        advice: 'Say what it is with --columns if it holds the date, the lie, a distance or the side.',
      }),
    ),
    ...contradicted.map(
      (what): Fault => ({
        severity: 'warning',
        code: 'MAR-SHOTS-015',
        message: `${what}; the mapping was followed.`,
        place,
        advice: 'Look which is right.',
      }),
    ),
  ]
}

/** A word that was passed over in some rows, which were kept without it. */
export function passedOverFault(
  column: string,
  word: string,
  lines: readonly number[],
  where: string,
): Fault {
  const [rest, kept] =
    lines.length > 1
      ? [`, nor in ${lines.length - 1} more rows`, 'the shots were kept without it']
      : ['', 'the shot was kept without it']
  return {
    severity: 'warning',
    code: 'MAR-SHOTS-011',
    message: `“${word}” is no ${column === 'strike' ? 'word for a strike' : column} here${rest}; ${kept}.`,
    place: `${where}, line ${lines[0] ?? 0}`,
    advice: ADVICE[column] ?? '',
  }
}

const ADVICE: Readonly<Record<string, string>> = {
  date: 'Write dates as 2026-05-02.',
  lie: 'Use tee, fairway, first-cut, rough, heavy, bunker, fringe, trees or scrub.',
  strike: 'Use good or mishit.',
}

/** Cells that said another unit than their column. */
export function ownUnitFault(count: number, firstLine: number, where: string): Fault {
  return {
    severity: 'warning',
    code: 'MAR-SHOTS-015',
    message: `${count === 1 ? 'A row says' : `${count} rows say`} another unit than the column does; what stands in the cell was followed.`,
    place: `${where}, line ${firstLine}`,
    advice: 'Look whether the cells without a unit are in the unit of the column.',
  }
}

/** Shots that were written twice and counted once. */
export function repeatedFault(places: readonly string[]): Fault {
  const count = places.length
  return {
    severity: 'warning',
    code: 'MAR-SHOTS-014',
    message: `${count} ${count === 1 ? 'row is' : 'rows are'} written twice and counted once, the first copy of each.`,
    place: places[0] ?? '',
    advice:
      'Nothing needs doing if the file was put together from copies. Shots that only happen to look alike are kept.',
  }
}

/** Shots whose dates lie years from all others. */
export function farDatesFault({ places, years, isAfter }: FarDates, date: string, place: string): Fault {
  const [what, kept] =
    places.length > 1
      ? [`“${date}” and ${places.length - 1} more dates lie`, 'the shots were kept without their dates']
      : [`“${date}” lies`, 'the shot was kept without its date']
  const than = isAfter
    ? 'after every other shot: beside it all others would be old'
    : 'before every other shot'
  return {
    severity: 'warning',
    code: 'MAR-SHOTS-020',
    message: `${what} ${Math.round(years)} years ${than}; ${kept}.`,
    place,
    advice:
      'Look at the year. If it is right, learn from the older shots first (--out), then from the newer ones.',
  }
}

/** Carries that look as if yards and metres were mixed. */
export function mixedUnitsFault(mixed: MixedUnits, where: string): Fault {
  const factor = mixed.factor.toFixed(2)
  const [message, place] =
    mixed.kind === 'club'
      ? [`The carries of the ${mixed.club} lie in two heaps, one ${factor} times the other`, where]
      : [
          `On ${listed(mixed.days)} every club went ${factor} times as far as on other days`,
          `${where}, ${mixed.days[0] ?? ''}`,
        ]
  return {
    severity: 'warning',
    code: 'MAR-SHOTS-016',
    message: `${message}: a yard is 0.914 m, so yards and metres may be mixed. The shots were read as the columns say.`,
    place,
    advice: 'If they were, read the two parts as files of their own, each with its unit.',
  }
}

function listed(days: readonly string[]): string {
  const rest = days.length - 3
  return rest > 0 ? `${days.slice(0, 3).join(', ')} and ${rest} more days` : days.join(' and ')
}

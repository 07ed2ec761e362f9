import { Failure } from '#faults/failure.ts'
import {
  type ColumnMeaning,
  type ColumnUnit,
  type DateOrder,
  headingAndUnit,
  ownMeaning,
  unitOf,
} from './column-meaning.ts'
import { columnOf, type FoundTable } from './find-table.ts'
import { parseNumber } from './parse-cells.ts'
import type { ColumnMapping } from './parse-mapping.ts'
import { suggestMapping } from './suggest-mapping.ts'

/** Where each thing stands in a row, from 0; −1 for what the table does not have. */
export interface ShotColumns {
  readonly count: number
  readonly date: number
  readonly dateOrder: DateOrder | null
  readonly club: number
  readonly lie: number
  readonly strike: number
  readonly planned: number
  readonly carry: DistanceColumn | null
  readonly total: DistanceColumn | null
  readonly offline: OfflineColumn | null
  /** Headings that mean nothing here. */
  readonly unknown: readonly string[]
  /** Units that a person gave against the file's own, in words. */
  readonly contradicted: readonly string[]
}

export interface DistanceColumn {
  readonly index: number
  readonly unit: ColumnUnit
  readonly isStraight: boolean
}

export interface OfflineColumn {
  readonly index: number
  readonly unit: ColumnUnit
  readonly isLeftPositive: boolean
}

/**
 * The columns of a table: by what a person says of them, else by our own headings. Throws `MAR-SHOTS-001` when neither
 * fits or a column beside our own looks like the side, with the columns and their likely meaning to copy, `MAR-SHOTS-004` when a unit is not known and `MAR-SHOTS-005`
 * when the table lacks a column that was named. `firstRow` is shown, so that a person can tell units.
 */
export function shotColumns(
  table: FoundTable,
  mapping: ColumnMapping | null,
  firstRow: readonly string[],
  where: string,
): ShotColumns {
  const meanings = mapping === null ? ownMeanings(table) : mappedMeanings(table, mapping, firstRow, where)
  const has = (...whats: readonly string[]): boolean =>
    [...meanings.values()].some(({ what }) => whats.includes(what))
  const hasLostSide = mapping === null && !has('offline') && suggestMapping(table)?.includes('=offline_')
  if (!has('club') || !has('carry', 'total') || hasLostSide) throw unknownColumns(table, firstRow, where)
  const find = <What extends ColumnMeaning['what']>(
    what: What,
  ): readonly [number, Extract<ColumnMeaning, { what: What }>] | null => {
    for (const [index, meaning] of meanings)
      if (meaning.what === what) return [index, meaning as Extract<ColumnMeaning, { what: What }>]
    return null
  }
  const contradicted: string[] = []
  const unit = (index: number, told: ColumnUnit | null): ColumnUnit => {
    const written = headingAndUnit(table.headings[index] ?? '').unit ?? unitOf(table.units[index] ?? '')
    if (told !== null && written !== null && told !== written)
      contradicted.push(`“${table.headings[index]}” is ${written} by the file and ${told} by the mapping`)
    const known = told ?? written ?? parseNumber((firstRow[index] ?? '').trim())?.unit ?? null
    if (known === null) throw unknownUnit(table, index, firstRow, where)
    return known
  }
  const distance = (what: 'carry' | 'total'): DistanceColumn | null => {
    const found = find(what)
    if (found === null) return null
    const known = unit(found[0], found[1].unit)
    if (known === 'deg') throw unknownUnit(table, found[0], firstRow, where)
    return { index: found[0], unit: known, isStraight: found[1].isStraight }
  }
  const offline = find('offline')
  const date = find('date')
  const carry = distance('carry')
  const total = distance('total')
  return {
    count: table.headings.length,
    date: date?.[0] ?? -1,
    dateOrder: date?.[1].order ?? null,
    club: find('club')?.[0] ?? -1,
    lie: find('lie')?.[0] ?? -1,
    strike: find('strike')?.[0] ?? -1,
    planned: find('planned')?.[0] ?? -1,
    carry,
    total,
    offline:
      offline === null
        ? null
        : {
            index: offline[0],
            unit: unit(offline[0], offline[1].unit),
            isLeftPositive: offline[1].isLeftPositive,
          },
    contradicted,
    // Whoever maps a file has chosen; whoever uses our headings may have mistyped one.
    unknown:
      mapping === null ? table.headings.filter((heading, at) => heading !== '' && !meanings.has(at)) : [],
  }
}

function ownMeanings({ headings }: FoundTable): ReadonlyMap<number, ColumnMeaning> {
  const meanings = new Map<number, ColumnMeaning>()
  const taken = new Set<string>()
  for (const [index, heading] of headings.entries()) {
    const meaning = ownMeaning(heading)
    if (meaning === null || taken.has(meaning.what)) continue
    taken.add(meaning.what)
    meanings.set(index, meaning)
  }
  return meanings
}

function mappedMeanings(
  table: FoundTable,
  mapping: ColumnMapping,
  firstRow: readonly string[],
  where: string,
): ReadonlyMap<number, ColumnMeaning> {
  const meanings = new Map<number, ColumnMeaning>()
  for (const [heading, meaning] of mapping) {
    const index = columnOf(heading, table.headings)
    if (index === -1)
      throw new Failure(
        'MAR-SHOTS-005',
        `The table has no column “${heading}”. Its columns: ${columnList(table, firstRow)}.`,
        where,
      )
    meanings.set(index, meaning)
  }
  return meanings
}

function unknownColumns(table: FoundTable, firstRow: readonly string[], where: string): Failure {
  const likely = suggestMapping(table)
  const typed = likely ?? 'Club=club,Carry=carry_m,Side=offline_m:left-negative'
  // A heading in quotes needs the other quotes around it.
  const copy = typed.includes('"') ? `'${typed}'` : `"${typed}"`
  const say =
    likely === null
      ? `Say which is the club and which the carry or total, in this form: --columns ${copy}.`
      : `Say what they are; likely: --columns ${copy}.`
  const units = copy.includes('?')
    ? ' Write m or yd (deg for an angle off the line) in place of each ?: the file does not say in which unit it was measured.'
    : ''
  const side = copy.includes(':left-') ? ' Write left-positive if numbers to the left have no minus.' : ''
  return new Failure(
    'MAR-SHOTS-001',
    `The columns of this table are not known: ${columnList(table, firstRow)}. ${say}${units}${side}`,
    where,
  )
}

function unknownUnit(table: FoundTable, index: number, firstRow: readonly string[], where: string): Failure {
  const heading = table.headings[index] ?? ''
  return new Failure(
    'MAR-SHOTS-004',
    `The unit of “${heading}” is not known (the first row says “${firstRow[index] ?? ''}”). Write m or yd into its heading, such as carry_m or carry_yd, or say it with --columns "${heading}=carry_yd" and the other columns.`,
    where,
  )
}

/** `Club (7i), Carry (152.4)`: each heading with what the first row has there. */
function columnList({ headings }: FoundTable, firstRow: readonly string[]): string {
  return headings
    .map((heading, index) => {
      const cell = (firstRow[index] ?? '').trim()
      return cell === '' ? heading : `${heading} (${cell.length > 20 ? `${cell.slice(0, 19)}…` : cell})`
    })
    .filter((text) => text !== '')
    .join(', ')
}

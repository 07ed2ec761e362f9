import type { FaultCode } from '#faults/codes.ts'
import { parseClubName, type SpelledClub } from '#golf/player/parse-club-name.ts'
import type { Lie } from '#golf/player/player.ts'
import { MOST_CARRY_METRES, MOST_OFFLINE_METRES, MOST_TOTAL_METRES } from '#golf/player/settings.ts'
import type { ShotRecord } from '#golf/player/shot-record.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import { type ColumnUnit, METRES_PER } from './column-meaning.ts'
import {
  type CellDate,
  isNothing,
  isPartial,
  parseDate,
  parseLieWord,
  parseNumber,
  parseStrike,
} from './parse-cells.ts'
import { MOST_COMING_BACK_METRES, MOST_RUN_METRES } from './settings.ts'
import type { DistanceColumn, OfflineColumn, ShotColumns } from './shot-columns.ts'

/** A row as a shot. `date` of the shot is `null` while `openDate` waits for the order of day and month. */
export interface ReadShot {
  readonly shot: ShotRecord
  readonly openDate: Extract<CellDate, { first: number }> | null
  /** Words that were passed over, with the column: the shot is kept without them. */
  readonly passedOver: readonly (readonly [column: 'date' | 'lie' | 'strike', word: string])[]
  /** Whether a cell had another unit than its column. */
  readonly hasOwnUnit: boolean
}

/** Why a row is no shot. `isFault` is false for what is no full shot at all: a putt, a half swing, a line of means. */
export interface NoShot {
  readonly code: FaultCode
  readonly reason: string
  readonly isFault: boolean
}

class Unread extends Error {
  readonly code: FaultCode

  constructor(code: FaultCode, reason: string) {
    super(reason)
    this.code = code
  }
}

const SUMMARY = /^(?:average|avg|mean|median|total|sum|min|max|minimum|maximum|std|st ?dev|sd|deviation)\b/i

/** Reads the cells of a row as a shot, or says why they are none. */
export function shotRowReader(columns: ShotColumns): (cells: readonly string[]) => ReadShot | NoShot {
  const clubs = new Map<string, SpelledClub>()
  const clubOf = (text: string): SpelledClub => {
    const club = clubs.get(text) ?? parseClubName(text)
    clubs.set(text, club)
    return club
  }
  return (cells) => {
    try {
      return readShotRow(cells, columns, clubOf)
    } catch (cause) {
      if (cause instanceof Unread) return { code: cause.code, reason: cause.message, isFault: true }
      throw cause
    }
  }
}

function readShotRow(
  cells: readonly string[],
  columns: ShotColumns,
  clubOf: (text: string) => SpelledClub,
): ReadShot | NoShot {
  const cell = (index: number): string => {
    const text = index === -1 ? '' : (cells[index] ?? '').trim()
    return isNothing(text) ? '' : text
  }
  if (cells.length > columns.count && cells.slice(columns.count).some((extra) => extra.trim() !== ''))
    throw new Unread(
      'MAR-SHOTS-010',
      'it has more cells than the header; put decimal commas in quotes, or separate the columns by semicolons',
    )
  const text = cell(columns.club)
  const club = clubOf(text)
  const setAside = (reason: string): NoShot => ({ code: 'MAR-SHOTS-012', reason, isFault: false })
  if (club.kind === 'putter') return setAside('a putt')
  if (club.kind === 'unknown') {
    if (cells.some((one) => SUMMARY.test(one.trim()))) return setAside('a line of means or sums')
    throw unknownClub(text, club.likely)
  }
  const planned = cell(columns.planned)
  if (isPartial(planned)) return setAside(`planned as “${planned}”, not as a full shot`)
  return readDistances(cell, columns, club.name)
}

function readDistances(cell: (index: number) => string, columns: ShotColumns, club: string): ReadShot {
  const carry = readLength('carry', cell, columns.carry, MOST_CARRY_METRES)
  const total = readLength('total', cell, columns.total, MOST_TOTAL_METRES)
  if (carry === null && total === null)
    throw new Unread('MAR-SHOTS-009', 'it has neither a carry nor a total')
  if ((carry?.metres ?? 0) === 0 && (total?.metres ?? 0) === 0)
    throw new Unread(
      'MAR-SHOTS-008',
      'its distance is 0, which is how some tables write what was not measured',
    )
  const run = carry !== null && total !== null ? total.metres - carry.metres : 0
  if (run < -MOST_COMING_BACK_METRES || run > MOST_RUN_METRES)
    throw new Unread(
      'MAR-SHOTS-008',
      `its total (${cell(columns.total?.index ?? -1)}) is far ${run < 0 ? 'short of' : 'beyond'} its carry (${cell(columns.carry?.index ?? -1)})`,
    )
  const off = readOffline(cell, columns.offline, carry ?? total)
  const passedOver: ['date' | 'lie' | 'strike', string][] = []
  const date = readWord(cell(columns.date), 'date', parseDate, passedOver)
  const lie = readWord<Lie>(cell(columns.lie), 'lie', parseLieWord, passedOver)
  const strike = readWord(cell(columns.strike), 'strike', parseStrike, passedOver)
  return {
    shot: {
      date: date !== null && 'iso' in date ? date.iso : null,
      club,
      lie,
      carryMetres: carry === null ? null : carry.metres * (carry.isStraight ? off.along : 1),
      totalMetres: total === null ? null : total.metres * (total.isStraight ? off.along : 1),
      offlineMetres: off.metres,
      strike,
    },
    openDate: date !== null && 'first' in date ? date : null,
    passedOver,
    hasOwnUnit: [carry, total, off].some((one) => one?.hasOwnUnit === true),
  }
}

interface Length {
  readonly metres: number
  readonly isStraight: boolean
  readonly hasOwnUnit: boolean
}

function readLength(
  name: 'carry' | 'total',
  cell: (index: number) => string,
  column: DistanceColumn | null,
  mostMetres: number,
): Length | null {
  const text = column === null ? '' : cell(column.index)
  if (column === null || text === '') return null
  const number = parseNumber(text)
  if (number === null || number.side !== null || number.unit === 'deg')
    throw new Unread('MAR-SHOTS-007', `its ${name} is “${text}”, which is no distance`)
  const metres = number.value * metresPer(number.unit ?? column.unit)
  if (metres < 0) throw new Unread('MAR-SHOTS-008', `its ${name} is “${text}”, less than nothing`)
  if (metres > mostMetres)
    throw new Unread('MAR-SHOTS-008', `its ${name} is “${text}”, further than any ball goes`)
  return { metres, isStraight: column.isStraight, hasOwnUnit: hasOwn(number.unit, column.unit) }
}

/** Metres right of the line, and what a straight distance is multiplied by to lie along it. */
function readOffline(
  cell: (index: number) => string,
  column: OfflineColumn | null,
  length: Length | null,
): { readonly metres: number | null; readonly along: number; readonly hasOwnUnit: boolean } {
  const text = column === null ? '' : cell(column.index)
  if (column === null || text === '') return { metres: null, along: 1, hasOwnUnit: false }
  const number = parseNumber(text)
  if (number === null)
    throw new Unread('MAR-SHOTS-007', `its offline is “${text}”, which is no number or side`)
  const isLeft = number.side === null ? column.isLeftPositive : number.side === 'left'
  const value = number.value === 0 ? 0 : isLeft ? -number.value : number.value
  const unit = number.unit ?? column.unit
  const hasOwnUnit = hasOwn(number.unit, column.unit)
  const distance = length?.metres ?? 0
  if (unit === 'deg') {
    // Past a right angle the ball went backwards, and at one it went nowhere along the line.
    if (Math.abs(value) >= 80)
      throw new Unread('MAR-SHOTS-008', `its offline is “${text}”, no angle of a shot`)
    const angle = degreesToRadians(value)
    const isStraight = length?.isStraight === true
    const metres = distance * (isStraight ? Math.sin(angle) : Math.tan(angle))
    if (Math.abs(metres) > MOST_OFFLINE_METRES) throw strayed(text)
    return { metres, along: Math.cos(angle), hasOwnUnit }
  }
  const metres = value * metresPer(unit)
  if (Math.abs(metres) > MOST_OFFLINE_METRES) throw strayed(text)
  if (length?.isStraight !== true) return { metres, along: 1, hasOwnUnit }
  if (Math.abs(metres) > distance)
    throw new Unread('MAR-SHOTS-008', `its offline is “${text}”, more than its whole length`)
  return { metres, along: distance === 0 ? 1 : Math.sqrt(1 - (metres / distance) ** 2), hasOwnUnit }
}

function strayed(text: string): Unread {
  return new Unread('MAR-SHOTS-008', `its offline is “${text}”, further than any ball strays`)
}

function readWord<Value>(
  text: string,
  column: 'date' | 'lie' | 'strike',
  parse: (text: string) => Value | null,
  passedOver: ['date' | 'lie' | 'strike', string][],
): Value | null {
  if (text === '') return null
  const value = parse(text)
  if (value === null) passedOver.push([column, text])
  return value
}

function metresPer(unit: ColumnUnit): number {
  if (unit === 'deg') throw new RangeError('an angle is no length')
  return METRES_PER[unit]
}

function hasOwn(own: ColumnUnit | null, column: ColumnUnit): boolean {
  return own !== null && own !== column
}

function unknownClub(text: string, likely: readonly string[]): Unread {
  if (text === '') return new Unread('MAR-SHOTS-006', 'it names no club')
  if (likely.length > 0)
    return new Unread('MAR-SHOTS-006', `“${text}” may be ${likely.join(', ')}: write which`)
  return new Unread(
    'MAR-SHOTS-006',
    `“${text}” is no club that Marram knows, such as 7-iron, 3-wood or 56-wedge`,
  )
}

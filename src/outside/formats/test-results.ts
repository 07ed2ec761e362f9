import Papa from 'papaparse'
import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { Leave, StationResult, TestDayResults } from '#golf/player/test-day-results.ts'
import { STATIONS, type Station } from '#golf/player/test-day-stations.ts'
import { METRES_PER_FOOT } from '#numbers/units/units.ts'

/** A test day as it was typed, and the rows that could not be read. */
export interface TestReading {
  readonly results: TestDayResults
  readonly faults: readonly Fault[]
}

/** Columns of a table of results, by their place, and the metres in one unit of its leaves. */
interface Columns {
  readonly station: number
  readonly holed: number
  readonly balls: number
  readonly leaves: number
  readonly metresPerUnit: number
}

/** No ball of the test is left further than this, metres. */
const FURTHEST_LEAVE = 60

/**
 * A typed test day: `station,holed,leaves_m` (or `leaves_ft`), a row a station in any order, and `balls` where fewer or
 * more were played than the test asks for. Leaves stand in one cell with spaces between them; `x` before one says that it
 * stayed off the green. Throws MAR-TEST-001 when the header is not this; a row that cannot be read is a fault, and the
 * others count.
 */
export function readTestResults(text: string, where: string): TestReading {
  const parsed = Papa.parse<string[]>(text.replace(/^\uFEFF/, ''), {
    delimitersToGuess: [',', ';', '\t'],
    skipEmptyLines: 'greedy',
  })
  const [header, ...rows] = parsed.data
  const columns = columnsOf(header ?? [], where)
  const stations: StationResult[] = []
  const faults: Fault[] = []
  for (const [index, cells] of rows.entries()) {
    const read = readRow(cells, columns)
    if ('station' in read) {
      const isAgain = stations.some(({ station }) => station.name === read.station.name)
      if (isAgain) faults.push(fault('MAR-TEST-003', `${read.station.name} stands here a second time`, index))
      else stations.push(read)
    } else faults.push(fault(read.code, read.message, index))
  }
  if (stations.length === 0 && faults.length === 0)
    throw new Failure('MAR-TEST-001', 'The table has a header but no rows.', where)
  return { results: { stations }, faults }
}

function columnsOf(header: readonly string[], where: string): Columns {
  const names = header.map((cell) => cell.trim().toLowerCase())
  const inFeet = names.indexOf('leaves_ft')
  const leaves = inFeet >= 0 ? inFeet : names.indexOf('leaves_m')
  const [station, holed, balls] = ['station', 'holed', 'balls'].map((name) => names.indexOf(name)) as [
    number,
    number,
    number,
  ]
  if (station < 0 || holed < 0 || leaves < 0)
    throw new Failure(
      'MAR-TEST-001',
      'The first line must be: station,holed,leaves_m (or leaves_ft), and balls where another number was played.',
      `${where}, line 1`,
    )
  return { station, holed, balls, leaves, metresPerUnit: inFeet >= 0 ? METRES_PER_FOOT : 1 }
}

type Unread = { readonly code: Fault['code']; readonly message: string }

function readRow(cells: readonly string[], columns: Columns): StationResult | Unread {
  const cell = (column: number): string => (cells[column] ?? '').trim()
  const name = cell(columns.station).toLowerCase()
  const station = STATIONS.find((one) => one.name === name)
  if (!station)
    return {
      code: 'MAR-TEST-002',
      message: `"${name}" is no station. They are: ${STATIONS.map((one) => one.name).join(', ')}`,
    }
  const holed = countOf(cell(columns.holed) || '0')
  const balls = columns.balls < 0 || cell(columns.balls) === '' ? station.balls : countOf(cell(columns.balls))
  if (holed === null || balls === null)
    return { code: 'MAR-TEST-003', message: `${name}: balls and balls holed are whole numbers` }
  const leaves = cell(columns.leaves)
    .split(/\s+/)
    .filter(Boolean)
    .map((word) => leaveOf(word, columns.metresPerUnit))
  const bad = leaves.indexOf(null)
  if (bad >= 0)
    return {
      code: 'MAR-TEST-004',
      message: `${name}: leave ${bad + 1} is no distance up to ${FURTHEST_LEAVE} m`,
    }
  return addsUp(station, holed, balls, leaves as Leave[])
}

/** Balls are holed or left; only short putts are not measured where they stop. */
function addsUp(station: Station, holed: number, balls: number, leaves: Leave[]): StationResult | Unread {
  const told = holed + leaves.length
  if (told > balls || (station.kind === 'short' && told < balls))
    return {
      code: 'MAR-TEST-003',
      message: `${station.name}: ${holed} holed and ${leaves.length} left are ${told}, and ${balls} balls were played`,
    }
  return { station, holed, balls, leaves }
}

function countOf(text: string): number | null {
  return /^\d{1,4}$/.test(text) ? Number(text) : null
}

/** `1.2`, `1,2`, `x6`: metres or feet. */
function leaveOf(word: string, metresPerUnit: number): Leave | null {
  const found = /^(x?)(\d+(?:[.,]\d+)?)$/i.exec(word)
  if (!found) return null
  const metres = Number((found[2] as string).replace(',', '.')) * metresPerUnit
  return metres <= FURTHEST_LEAVE ? { metres, isOffGreen: found[1] !== '' } : null
}

function fault(code: Fault['code'], message: string, row: number): Fault {
  return {
    severity: 'error',
    code,
    message: `${message}.`,
    place: `row ${row + 1}`,
    advice: 'The other rows were read; mend this one and read the table again.',
  }
}

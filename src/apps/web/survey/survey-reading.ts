import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import { assembleCourse } from '#golf/course/assemble-course.ts'
import { type CardLength, cardLengths } from '#golf/course/card-lengths.ts'
import { checkCourse } from '#golf/course/check-course.ts'
import type { Course } from '#golf/course/course.ts'
import { encodeCourse } from '#golf/course/encode-course.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { LonLat } from '#numbers/geometry/tangent-plane.ts'
import { parseHoleTable } from '#outside/formats/hole-table.ts'
import { type LineStart, positionOf, readLineStart } from '#outside/formats/line-start.ts'
import { METRES_PER_TABLE_UNIT, type TableUnit, tableFigure } from '#outside/formats/table-unit.ts'
import { BLANK_ROW, encodeTypedTable, isBlankRow, type TypedHole } from '#outside/formats/typed-hole-table.ts'
import { holeAsSurveyed } from './hole-as-surveyed.ts'
import { openHole, type Survey, type SurveyHole, typedHole, withoutId } from './survey.ts'

/** What the rows of a hole come to. */
export interface HoleReading {
  /** In the plane of the survey: y along the first leg, x to the right of it; `null` when nothing can be drawn. */
  readonly hole: Hole | null
  /** Where on the earth it lies; `null` while no row says so. */
  readonly start: LineStart | null
  /** Metres to the end that was taken while no row tells where the green is; `null` when one does. */
  readonly provisionalMetres: number | null
  readonly cards: readonly CardLength[]
  /** Faults by the id of their row. */
  readonly rowFaults: ReadonlyMap<number, readonly Fault[]>
  /** Faults of no one row; none while the green is not there. */
  readonly holeFaults: readonly Fault[]
  /** The row of each piece of ground, by the id of its area. */
  readonly rowOfArea: ReadonlyMap<string, number>
}

/** Reads one hole: its rows as a table, the table as features, these as a course, as the command line does. */
export function readHole(hole: SurveyHole, unit: TableUnit): HoleReading {
  const filled = hole.rows.filter((row) => !isBlankRow(withoutId(row)))
  const rowOfArea = new Map(filled.map(({ id }, index) => [`line ${index + 2}`, id]))
  const typed = readTable(encodeTypedTable({ unit, holes: [typedHole(hole)] }), '', IN_ITS_OWN_PLANE)
  const line = typed.course.holes[0]
  const provisionalMetres = line === undefined ? provisionalLength(hole, unit) : null
  // Without a green nothing else of the hole could be told: it gets one, and what is said of its rows is true with any.
  const told =
    provisionalMetres === null
      ? typed
      : readTable(
          encodeTypedTable({ unit, holes: [provisional(hole, unit, provisionalMetres)] }),
          '',
          IN_ITS_OWN_PLANE,
        )
  const start = startOf(hole)
  const rowFaults = new Map<number, Fault[]>()
  const holeFaults: Fault[] = []
  for (const fault of told.faults) {
    // What lies on a green is named after its row: `line 5 height 2`.
    const row = rowOfArea.get(/^line \d+/.exec(fault.place)?.[0] ?? '')
    if (row === undefined) holeFaults.push(fault)
    else rowFaults.set(row, [...(rowFaults.get(row) ?? []), fault])
  }
  return {
    hole: turnedTo(start, holeAsSurveyed(told.course)),
    start,
    provisionalMetres,
    cards: line === undefined ? [] : cardLengths(typed.course, line),
    rowFaults,
    holeFaults: provisionalMetres === null ? holeFaults : [],
    rowOfArea,
  }
}

/** Where the open hole begins, else where another of the course does; `null` = no row says so. */
export function nearStart(survey: Survey): LonLat | null {
  const starts = [openHole(survey), ...survey.holes].map(startOf)
  const known = starts.find((start) => start !== null)
  return known == null ? null : positionOf(known)
}

/** Refs of the holes that no row places on the earth, where another has one; they are laid beside it at an invented place. */
export function unplacedHoles({ holes }: Survey): string[] {
  const without = holes.filter((hole) => startOf(hole) === null)
  return without.length === holes.length ? [] : without.map(({ ref }) => ref)
}

/** A hole whose north is where its start says; the chart lies still. */
function turnedTo(start: LineStart | null, hole: Hole | null): Hole | null {
  return start === null || hole === null
    ? hole
    : { ...hole, bearingDegrees: start.headingDegrees, isBearingInvented: false }
}

function startOf({ rows }: SurveyHole): LineStart | null {
  const row = rows.find(({ what }) => what === 'start')
  return row === undefined ? null : readLineStart(row.note)
}

/** A whole survey as the document that the store keeps, with its table in it so that it can be typed on. Throws a Failure when the survey has no hole or a fault that must be put right. */
export function courseDocument(survey: Survey): string {
  const text = tableText(survey)
  const { course, faults } = readTable(text, survey.name.trim())
  const error = faults.find(({ severity }) => severity === 'error')
  if (error !== undefined) throw new Failure(error.code, error.message, error.place)
  const document = encodeCourse(course)
  return document.replace('"features":[', `"${TABLE_MEMBER}":${JSON.stringify(text)},"features":[`)
}

/** Member of a course file with the hole table it was made of. */
export const TABLE_MEMBER = 'marram:hole_table'

/** The whole survey as a hole table. */
export function tableText({ unit, holes }: Survey): string {
  return encodeTypedTable({ unit, holes: holes.map(typedHole) })
}

/** A chart lies still, whatever its place on the earth. */
const IN_ITS_OWN_PLANE = false

function readTable(
  text: string,
  name: string,
  isPlaced: boolean = true,
): { readonly course: Course; readonly faults: readonly Fault[] } {
  try {
    const reading = parseHoleTable(text, 'table.csv', isPlaced)
    const { course, faults } = assembleCourse(reading.features, {
      ...reading,
      ...(name === '' ? {} : { name }),
    })
    return { course, faults: distinct([...reading.faults, ...faults, ...checkCourse(course)]) }
  } catch (error) {
    if (!(error instanceof Failure)) throw error
    const { code, message, where } = error
    const fault: Fault = { severity: 'error', code, message, place: where, advice: '' }
    return { course: assembleCourse([]).course, faults: [fault] }
  }
}

/** Import and check may say the same of one row; once is enough. */
function distinct(faults: readonly Fault[]): Fault[] {
  const said = new Map(faults.map((fault) => [`${fault.place} ${fault.message}`, fault]))
  return [...said.values()]
}

/** Where a hole is taken to end before its green is typed: at a card's length, else beyond the furthest row, else where a usual par 4 ends. */
function provisionalLength(hole: SurveyHole, unit: TableUnit): number {
  const metres = (text: string): number => Number(text.replace(',', '.')) * METRES_PER_TABLE_UNIT[unit]
  const card = hole.rows.map((row) => (row.what === 'tee' ? metres(row.to) : 0)).find(isLength)
  const furthest = Math.max(
    ...hole.rows
      .flatMap((row) => [
        metres(row.from),
        row.what === 'tee' || row.what === 'bend' ? 0 : metres(row.to),
        ...(row.outline ?? []).map(([, along]) => along),
      ])
      .filter(isLength),
    0,
  )
  return card ?? (furthest === 0 ? USUAL_LENGTH_METRES : Math.max(furthest + BEYOND_METRES, SHORTEST_METRES))
}

/** Our assumptions, metres: the length of a hole of which nothing is typed, the ground beyond the furthest row, and the shortest hole that is drawn. */
const USUAL_LENGTH_METRES = 350
const BEYOND_METRES = 30
const SHORTEST_METRES = 100

function isLength(metres: number): boolean {
  return Number.isFinite(metres) && metres > 0 && metres < 900
}

/** The hole with a green where it is taken to end, after all its own rows. */
function provisional(hole: SurveyHole, unit: TableUnit, metres: number): TypedHole {
  const figure = (length: number): string => tableFigure(length, unit)
  const [from, to, far] = [
    figure(metres - HALF_GREEN_METRES),
    figure(metres + HALF_GREEN_METRES),
    figure(2 * HALF_GREEN_METRES),
  ]
  const ref = hole.ref.trim() === '' ? '1' : hole.ref
  return {
    ...typedHole(hole),
    ref,
    rows: [...typedHole(hole).rows, { ...BLANK_ROW, what: 'green', from, to, far }],
  }
}

const HALF_GREEN_METRES = 12

import type { Course } from '../course.ts'
import type { ImportReport, ReportedHole } from '../import-report.ts'
import { faultHole } from './fault-holes.ts'
import type { FoundPar } from './read-par.ts'
import { isHazard, reportHoles } from './report-holes.ts'
import type { Tally } from './tally.ts'

/** What the report says beside what the course and the tally show. */
export interface ReportContext {
  readonly kind: string
  readonly vertices: number
  readonly isCourseFile: boolean
  readonly pars: ReadonlyMap<string, FoundPar>
  readonly courses: ImportReport['courses']
}

/** The report on an assembled course; adds to the tally what the holes lack. */
export function writeReport(course: Course, context: ReportContext, tally: Tally): ImportReport {
  const holes = reportHoles(course, context.pars)
  for (const hole of holes) faultHole(hole, context.isCourseFile, tally)
  if (holes.length === 0) {
    const lines = [...tally.ignored, ...tally.asked].filter((item) => item.what === 'golf=hole').length
    tally.fault(
      'error',
      'MAR-IMPORT-005',
      '',
      lines === 0
        ? 'There are no hole lines in the source, so the course has no holes; none were invented.'
        : `Of the hole lines in the source (${lines}) none could be taken, so the course has no holes; the report says why.`,
      'Draw a line for each hole (golf=hole, with ref and par) or type the holes as a table.',
    )
  }
  const sharedGreens = findSharedGreens(holes)
  for (const { id, holes: refs } of sharedGreens) {
    const message = `Holes ${refs.join(' and ')} share the green ${id}.`
    tally.fault('note', 'MAR-IMPORT-022', id, message, 'Nothing to do if it is a double green.')
  }
  const owned = new Set(holes.flatMap((hole) => hole.hazards))
  const unownedHazards = course.areas
    .filter((area) => isHazard(area) && !owned.has(area.id) && holes.length > 0)
    .map((area) => ({ id: area.id, ground: area.ground }))
  for (const { id, ground } of context.isCourseFile ? [] : unownedHazards) {
    const message = `${id} (${ground}) lies in the corridor of no hole.`
    tally.fault('note', 'MAR-IMPORT-023', id, message, 'Nothing to do, unless a hole is missing there.')
  }
  return {
    kind: context.kind,
    courseName: course.name,
    elements: {
      total: tally.used.length + tally.ignored.length + tally.asked.length,
      used: tally.used.length,
      ignored: tally.ignored.length,
      needsPerson: tally.asked.length,
      vertices: context.vertices,
    },
    used: tally.used,
    ignored: tally.ignored,
    needsPerson: tally.asked,
    holes,
    sharedGreens,
    unownedHazards,
    courses: context.courses,
    missing: findMissing(holes),
  }
}

function findSharedGreens(holes: readonly ReportedHole[]): { id: string; holes: string[] }[] {
  const byGreen = new Map<string, string[]>()
  for (const hole of holes) {
    if (hole.green !== null) byGreen.set(hole.green, [...(byGreen.get(hole.green) ?? []), hole.ref])
  }
  return [...byGreen].filter(([, refs]) => refs.length > 1).map(([id, refs]) => ({ id, holes: refs }))
}

function findMissing(holes: readonly ReportedHole[]): string[] {
  if (holes.length === 0)
    return ['There are no hole lines: draw one for each hole, or type the holes as a table.']
  const missing: string[] = []
  const say = (what: string, lacking: readonly ReportedHole[]): void => {
    if (lacking.length === 0) return
    const which =
      lacking.length === holes.length ? 'every hole' : `hole ${lacking.map((hole) => hole.ref).join(', ')}`
    missing.push(`${what} missing on ${which}.`)
  }
  say(
    'The outline of the green is',
    holes.filter((hole) => hole.green === null),
  )
  say(
    'Tee markers are',
    holes.filter((hole) => hole.tees.length === 0),
  )
  say(
    'The fairway is',
    holes.filter((hole) => hole.fairways.length === 0 && (hole.par ?? hole.parSuggested ?? 3) > 3),
  )
  say(
    'Par is',
    holes.filter((hole) => hole.par === null),
  )
  return missing
}

import type { Fault } from '#faults/fault.ts'
import { findHoles } from './assembly/find-holes.ts'
import {
  type PlacedAreas,
  placeGround,
  placePins,
  placeSpotHeights,
  placeTees,
  placeTheRest,
  placeTrees,
  type Site,
} from './assembly/place-features.ts'
import { readHeader } from './assembly/read-header.ts'
import { holeLineOf } from './assembly/read-hole-lines.ts'
import type { FoundPar } from './assembly/read-par.ts'
import { sortFeatures } from './assembly/sort-features.ts'
import { createTally } from './assembly/tally.ts'
import { writeReport } from './assembly/write-report.ts'
import type { Area, Course, HoleLine } from './course.ts'
import type { ImportReport } from './import-report.ts'
import type { SurveyFeature } from './survey-feature.ts'

/** What is known of a source beside its features; a whole `SourceReading` fits. */
export interface AssembleOptions {
  /** Name of the course; also picks it when the source holds several. Absent = what the source says. */
  readonly name?: string | undefined
  /** Which course to take when the source holds several, 1 = the one with most holes (the default). */
  readonly part?: number | undefined
  readonly kind?: string | undefined
  readonly collection?: Readonly<Record<string, unknown>> | undefined
  readonly vertices?: number | undefined
}

/** A course and what was found on the way to it. */
export interface AssembledCourse {
  readonly course: Course
  readonly report: ImportReport
  readonly faults: readonly Fault[]
}

/**
 * Makes a course of the features of any source. Trusts hole lines and explicit refs, pairs nothing by nearness
 * alone, invents nothing: every feature is used, ignored with a reason, or listed for a person. Never throws; a
 * source without holes gives a course without holes and says so.
 */
export function assembleCourse(
  features: readonly SurveyFeature[],
  options: AssembleOptions = {},
): AssembledCourse {
  const tally = createTally()
  const header = readHeader(options.collection ?? {}, tally)
  const sorted = sortFeatures(features, tally)
  const found = findHoles(sorted, header, options, tally)
  const pars = new Map<string, FoundPar>()
  const holes: HoleLine[] = found.candidates.map((candidate) => {
    const { hole, found: par } = holeLineOf(candidate, tally)
    pars.set(hole.ref, par)
    tally.use(candidate.feature, `hole ${hole.ref}`)
    return hole
  })
  holes.sort((a, b) => Number(a.ref) - Number(b.ref) || 0)
  const site: Site = { plane: found.plane, holes, isTrusted: header.isCourseFile, tally }
  const { tees, grounds } = placeTees(sorted.tees, site)
  const course: Course = {
    name: options.name ?? header.name ?? found.name ?? 'Unnamed course',
    origin: found.origin,
    holes,
    areas: inSourceOrder([...placeGround(sorted.ground, site), ...grounds], features),
    tees,
    pins: placePins(sorted.pins, site),
    trees: placeTrees(sorted.trees, site),
    spotHeights: placeSpotHeights(sorted.spots, site),
    teeSets: header.teeSets,
    localRules: header.localRules,
    source: header.source,
    credit: header.credit,
  }
  placeTheRest(sorted, site)
  const context = {
    kind: options.kind ?? 'features',
    vertices: options.vertices ?? 0,
    isCourseFile: header.isCourseFile,
    pars,
    courses: found.courses,
  }
  const report = writeReport(course, context, tally)
  return { course, report, faults: [...tally.faults] }
}

function inSourceOrder(placed: readonly PlacedAreas[], features: readonly SurveyFeature[]): Area[] {
  const order = new Map(features.map((feature, index) => [feature, index]))
  return [...placed]
    .sort((a, b) => (order.get(a.feature) ?? 0) - (order.get(b.feature) ?? 0))
    .flatMap(({ areas }) => areas)
}

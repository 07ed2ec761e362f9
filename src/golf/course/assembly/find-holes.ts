import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { polygonContains } from '#numbers/geometry/polygon.ts'
import { type TangentPlane, tangentPlane } from '#numbers/geometry/tangent-plane.ts'
import type { LonLat, SurveyFeature } from '../survey-feature.ts'
import { positionsOf, ringsOf } from './feature-positions.ts'
import type { CourseHeader } from './read-header.ts'
import { type Candidate, readHoleLines } from './read-hole-lines.ts'
import type { SortedFeatures } from './sort-features.ts'
import { LEAST_HOLES_OF_A_COURSE, splitCourses } from './split-courses.ts'
import { placeOf, type Tally } from './tally.ts'

/** Which course is wanted when a source holds several. */
export interface CourseWish {
  readonly name?: string | undefined
  /** 1 = the one with most holes. */
  readonly part?: number | undefined
}

/** The holes of one course, and the plane on which it is laid. */
export interface FoundHoles {
  readonly candidates: readonly Candidate[]
  readonly name: string | null
  readonly origin: LonLat
  readonly plane: TangentPlane
  readonly courses: readonly { readonly name: string | null; readonly refs: readonly string[] }[]
}

/** Finds the hole lines of one course in a source; all others go to the tally with the reason. */
export function findHoles(
  sorted: SortedFeatures,
  header: CourseHeader,
  wish: CourseWish,
  tally: Tally,
): FoundHoles {
  const everything = sorted.holes.length > 0 ? sorted.holes : sorted.ground.map((item) => item.feature)
  const draft = tangentPlane(middleOf(everything))
  const ranges = sorted.ranges.flatMap((range) => polygonsOn(range, draft))
  const inRange = (line: readonly Point[]): boolean =>
    ranges.some((range) => [line[0], line.at(-1)].every((end) => end && polygonContains(range, end)))
  const tests = { toPlane: draft.toPlane, isTrusted: header.isCourseFile, isInRange: inRange }
  const courses = splitCourses(readHoleLines(sorted.holes, tests, tally)).map((lines) => ({
    lines,
    name: boundaryName(lines, sorted.boundaries, draft),
  }))
  const named = wish.name === undefined ? -1 : courses.findIndex((course) => course.name === wish.name)
  const index = wish.part !== undefined ? wish.part - 1 : Math.max(0, named)
  const chosen = courses[index]
  const others = courses.filter((course) => course !== chosen)
  setAside(others, chosen?.lines ?? [], header.isCourseFile, tally)
  const lines = chosen?.lines ?? []
  const origin = header.origin ?? middleOf(lines.length > 0 ? lines.map((line) => line.feature) : everything)
  const plane = tangentPlane(origin)
  const real = chosen
    ? [chosen, ...others.filter((course) => course.lines.length >= LEAST_HOLES_OF_A_COURSE)]
    : []
  return {
    candidates: lines.map((line) => ({ ...line, line: positionsOf(line.feature).map(plane.toPlane) })),
    name: chosen?.name ?? (sorted.boundaries.length === 1 ? (sorted.boundaries[0]?.tags.name ?? null) : null),
    origin,
    plane,
    courses: real.map((course) => ({ name: course.name, refs: course.lines.map((line) => line.ref) })),
  }
}

function setAside(
  others: readonly { readonly lines: readonly Candidate[]; readonly name: string | null }[],
  chosen: readonly Candidate[],
  isCourseFile: boolean,
  tally: Tally,
): void {
  for (const [index, course] of others.entries()) {
    const isTwice = isCourseFile || course.lines.length < LEAST_HOLES_OF_A_COURSE
    const title = course.name ? `“${course.name}”` : `course ${index + 2}`
    for (const { feature, ref } of course.lines) {
      if (!isTwice) {
        tally.ask(feature, `it is hole ${ref} of ${title}, another course of this source`)
        continue
      }
      const first = chosen.find((line) => line.ref === ref)?.feature
      tally.ask(feature, `hole ${ref} is drawn twice`)
      tally.fault(
        'error',
        'MAR-IMPORT-008',
        placeOf(feature),
        `Two hole lines have ref ${ref}: ${first ? placeOf(first) : 'another'} was taken, ${placeOf(feature)} was not.`,
        'Give each hole of the course a ref of its own, or take the spare line out.',
      )
    }
    if (isTwice) continue
    tally.fault(
      'warning',
      'MAR-IMPORT-009',
      title,
      `The source holds several courses; ${course.lines.length} holes of ${title} were not taken.`,
      'To have that course, cut the source down to it, or draw its boundary with its name and import by that name.',
    )
  }
}

function boundaryName(
  lines: readonly Candidate[],
  boundaries: readonly SurveyFeature[],
  plane: TangentPlane,
): string | null {
  let best: string | null = null
  let most = 0
  for (const boundary of boundaries) {
    const name = boundary.tags.name
    if (name === undefined) continue
    const polygons = polygonsOn(boundary, plane)
    const inside = lines.filter(({ line }) => {
      const start = line[0]
      return start && polygons.some((polygon) => polygonContains(polygon, start))
    })
    if (inside.length > most) {
      most = inside.length
      best = name
    }
  }
  return best
}

function polygonsOn(feature: SurveyFeature, plane: TangentPlane): Polygon[] {
  return ringsOf(feature).map((rings) => rings.map((ring) => ring.map(plane.toPlane)))
}

/**
 * The middle of the box around features, degrees to six places; `[0, 0]` where there are none. Longitudes are taken
 * from the first one, so that a course on both sides of 180° has its middle on the ground.
 */
function middleOf(features: readonly SurveyFeature[]): LonLat {
  const positions = features.flatMap(positionsOf)
  if (positions.length === 0) return [0, 0]
  const first = positions[0] ?? [0, 0]
  let [west, south] = first
  let [east, north] = first
  for (const [longitude, latitude] of positions) {
    const near = longitude - 360 * Math.round((longitude - first[0]) / 360)
    west = Math.min(west, near)
    east = Math.max(east, near)
    south = Math.min(south, latitude)
    north = Math.max(north, latitude)
  }
  const middle = (west + east) / 2
  const round = (degrees: number): number => Math.round(degrees * 1e6) / 1e6
  return [round(middle - 360 * Math.round(middle / 360)), round((south + north) / 2)]
}

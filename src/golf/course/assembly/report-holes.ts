import { polylineLength } from '#numbers/geometry/polyline.ts'
import type { Area, Course, HoleLine } from '../course.ts'
import { greenOfHole } from '../greens/green-of-hole.ts'
import type { Ground } from '../ground.ts'
import { distanceToLine, isWithin } from '../holes/corridor.ts'
import type { ReportedHole } from '../import-report.ts'
import { servingTees } from '../serving-tees.ts'
import { CORRIDOR_HALF_WIDTH_METRES } from '../settings.ts'
import { type FoundPar, suggestPar } from './read-par.ts'

const HAZARDS: ReadonlySet<Ground> = new Set([
  'out',
  'trees',
  'scrub',
  'penalty-red',
  'penalty-yellow',
  'bunker',
])

/** Ground that a player steers away from. */
export function isHazard(area: Area): boolean {
  return HAZARDS.has(area.ground)
}

/** What was found for every hole. */
export function reportHoles(course: Course, pars: ReadonlyMap<string, FoundPar>): ReportedHole[] {
  return course.holes.map((hole) => reportHole(course, hole, pars.get(hole.ref)?.from ?? 'asked'))
}

function reportHole(course: Course, hole: HoleLine, parFrom: ReportedHole['parFrom']): ReportedHole {
  const lengthMetres = polylineLength(hole.line)
  const named = (area: Area): boolean => area.holes?.includes(hole.ref) ?? false
  const hazards = course.areas.filter(
    (area) =>
      isHazard(area) &&
      (named(area) || (!area.holes && isWithin(area.polygon, hole.line, CORRIDOR_HALF_WIDTH_METRES))),
  )
  const fairways = course.areas.filter(
    (area) =>
      area.ground === 'fairway' &&
      (named(area) || (!area.holes && distanceToLine(area.polygon, hole.line) === 0)),
  )
  return {
    ref: hole.ref,
    id: hole.id,
    par: hole.par,
    parFrom,
    parSuggested: parFrom === 'asked' || parFrom === 'guess' ? suggestPar(lengthMetres) : null,
    lengthMetres,
    cardLengthMetres: hole.cardLengths[''] ?? null,
    green: greenOfHole(course, hole)?.id ?? null,
    tees: servingTees(course, hole).map((tee) => tee.id),
    fairways: fairways.map((area) => area.id),
    hazards: hazards.map((area) => area.id),
  }
}

import { polylineLength } from '#numbers/geometry/polyline.ts'
import type { Area, Course, HoleLine } from '../course.ts'
import { greenOfHole } from '../greens/green-of-hole.ts'
import type { Ground } from '../ground.ts'
import { distanceToLine, isWithin } from '../holes/corridor.ts'
import type { ReportedHole } from '../import-report.ts'
import { servingTees } from '../serving-tees.ts'
import { CORRIDOR_HALF_WIDTH_METRES } from '../settings.ts'
import { type FoundPar, suggestPar } from './read-par.ts'
import { CARD_LENGTH_TOLERANCE_SHARE } from './settings.ts'
import type { Tally } from './tally.ts'

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

/** What was found for every hole, with a fault for what it lacks. */
export function reportHoles(
  course: Course,
  pars: ReadonlyMap<string, FoundPar>,
  tally: Tally,
): ReportedHole[] {
  return course.holes.map((hole) => {
    const reported = reportHole(course, hole, pars.get(hole.ref)?.from ?? 'asked')
    faultHole(reported, tally)
    return reported
  })
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
      (named(area) ||
        (!area.holes &&
          isWithin(area.polygon, hole.line, 0) &&
          distanceToLine(area.polygon, hole.line) === 0)),
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

function faultHole(hole: ReportedHole, tally: Tally): void {
  const place = `hole ${hole.ref}`
  if (hole.parFrom === 'asked') {
    tally.fault(
      'warning',
      'MAR-IMPORT-010',
      place,
      `Hole ${hole.ref} has no par in its tags or its name.`,
      `Write par on the hole line; for ${hole.lengthMetres.toFixed(0)} m it is usually ${hole.parSuggested}.`,
    )
  }
  if (hole.parFrom === 'guess') {
    tally.fault(
      'warning',
      'MAR-IMPORT-010',
      place,
      `The par of hole ${hole.ref} is not given; ${hole.par} was guessed from its ${hole.lengthMetres.toFixed(0)} m.`,
      'Write it in the note of any row of the hole: par 4.',
    )
  }
  if (hole.green === null) {
    const message = `There is no green where the line of hole ${hole.ref} ends.`
    tally.fault('warning', 'MAR-IMPORT-021', place, message, 'Draw the outline of the green.')
  }
  if (hole.tees.length === 0) {
    const message = `No tee markers stand by the start of hole ${hole.ref}; the start of its line is taken.`
    tally.fault(
      'warning',
      'MAR-IMPORT-028',
      place,
      message,
      'Draw the tees, or leave it if the line starts at the markers.',
    )
  }
  if (hole.fairways.length === 0 && (hole.par ?? hole.parSuggested ?? 3) > 3) {
    const message = `The line of hole ${hole.ref} crosses no fairway.`
    tally.fault(
      'warning',
      'MAR-IMPORT-029',
      place,
      message,
      'Draw the fairway; without it all ground is rough.',
    )
  }
  const card = hole.cardLengthMetres
  if (card !== null && Math.abs(card - hole.lengthMetres) > CARD_LENGTH_TOLERANCE_SHARE * hole.lengthMetres) {
    tally.fault(
      'warning',
      'MAR-IMPORT-026',
      place,
      `The card says ${card.toFixed(0)} m for hole ${hole.ref}, the line measures ${hole.lengthMetres.toFixed(0)} m.`,
      'Check that the line starts at the markers of the card, and whether the card is in yards: then write “yd”.',
    )
  }
}

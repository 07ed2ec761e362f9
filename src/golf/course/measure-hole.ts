import { distance, type Point } from '#numbers/geometry/point.ts'
import { radiansToDegrees } from '#numbers/units/units.ts'
import { greenSurvey } from './green-survey.ts'
import type { Ground } from './ground.ts'
import { HAZARDS } from './hazards.ts'
import type { Hole } from './hole.ts'
import type { HoleMeasures, LegMeasure } from './hole-measures.ts'
import { headingTo } from './measures/ahead.ts'
import { fairwayPinch, fairwayWidths } from './measures/fairway-width.ts'
import { greenMeasure } from './measures/green-measure.ts'
import { hazardMeasure } from './measures/hazard-measure.ts'
import { treeMeasures } from './measures/tree-measures.ts'

const CUTS_FAIRWAY: ReadonlySet<Ground> = new Set(['penalty-red', 'penalty-yellow', 'bunker'])

/**
 * The hole as the numbers a player writes down: length and bends, reach, carry, side and offset of every hazard,
 * fairway widths and their pinch, front, middle and back of the green. Metres along the hole line from the markers;
 * the straight distances stand beside them.
 */
export function measureHole(hole: Hole): HoleMeasures {
  const green = hole.green && greenMeasure(hole.green, hole.line)
  const until = green?.frontMetres ?? hole.lengthMetres
  const own = hole.areas.filter((area) => area.holes === null || area.holes.includes(hole.ref))
  const ground = {
    fairways: own.filter((area) => area.ground === 'fairway'),
    cuts: own.filter((area) => CUTS_FAIRWAY.has(area.ground)),
  }
  return {
    ref: hole.ref,
    teeName: hole.teeName,
    par: hole.par,
    strokeIndex: hole.strokeIndex,
    lengthMetres: hole.lengthMetres,
    bearingDegrees: hole.bearingDegrees,
    riseMetres: hole.riseMetres,
    legs: legMeasures(hole.line),
    hazards: own
      .filter((area) => HAZARDS.has(area.ground))
      .flatMap((area) => hazardMeasure(area, hole.line) ?? [])
      .sort((a, b) => a.reachMetres - b.reachMetres || a.farMetres - b.farMetres),
    trees: treeMeasures(hole.trees, hole.line),
    fairway: fairwayWidths(ground, hole.line, until),
    pinch: fairwayPinch(ground, hole.line, until),
    green,
    greenSurvey: greenSurvey(hole),
  }
}

function legMeasures(line: readonly Point[]): LegMeasure[] {
  let endsAtMetres = 0
  return line.flatMap((to, index): LegMeasure[] => {
    const from = line[index - 1]
    if (!from) return []
    const next = line[index + 1]
    const lengthMetres = distance(from, to)
    endsAtMetres += lengthMetres
    return [{ lengthMetres, endsAtMetres, bendDegrees: next ? bend(from, to, next) : null }]
  })
}

/** Turn of the line at a point, degrees, right positive, −180 to 180. */
function bend(from: Point, at: Point, to: Point): number {
  const degrees = radiansToDegrees(headingTo(at, to) - headingTo(from, at))
  return degrees > 180 ? degrees - 360 : degrees <= -180 ? degrees + 360 : degrees
}

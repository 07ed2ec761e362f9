import { groundAt } from '#golf/course/ground-at.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { ReliefOption } from '#golf/rules/relief-options.ts'
import { RULES_2023 } from '#golf/rules/rules-2023.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { areaOfCourse, partIn } from './areas-of-the-course.ts'
import { discNotNearer } from './not-nearer.ts'
import type { ReliefChoice } from './relief-choice.ts'
import { spotsInArea } from './spots-in-area.ts'

/** Half the distance between two tee markers, metres. Our assumption; the survey has only the middle between them. */
const HALF_MARKERS_METRES = 2.5

/**
 * Stroke and distance (Rules of Golf 2023, 14.6): from the teeing area anywhere in it, teed up; from elsewhere within
 * one club-length of where the stroke was made, not nearer the hole, in the same area of the course; on the green at
 * the spot.
 */
export function distanceChoice(
  hole: Hole,
  option: ReliefOption,
  from: Point,
  isFromTee: boolean,
  clubLengthMetres: number,
): ReliefChoice {
  const { clubLengths, teeingAreaClubLengths } = RULES_2023.previousSpot
  const choice = { option, reference: from, isValued: true }
  if (isFromTee) {
    const area = [teeingArea(teeingAreaClubLengths * clubLengthMetres)]
    return { ...choice, spots: [[0, 0]], areaAt: () => area, lie: 'tee' }
  }
  const ground = groundAt(hole, from)
  if (ground === 'green') return { ...choice, spots: [from], areaAt: () => [] }
  const round = discNotNearer(hole, from, clubLengths * clubLengthMetres, from)
  const area = partIn(hole, round, [areaOfCourse(ground)])
  return { ...choice, spots: [from, ...spotsInArea(hole, area)], areaAt: () => area }
}

/** The rectangle behind the markers from which a hole is started. */
function teeingArea(depthMetres: number): Polygon {
  return [
    [
      [-HALF_MARKERS_METRES, -depthMetres],
      [HALF_MARKERS_METRES, -depthMetres],
      [HALF_MARKERS_METRES, 0],
      [-HALF_MARKERS_METRES, 0],
    ],
  ]
}

import type { Fault } from '#faults/fault.ts'
import type { Course } from '../course.ts'
import { servingTees } from '../serving-tees.ts'
import { SLOPE_RATINGS } from '../settings.ts'

/** Holes without tee markers, and sets of tees without par or with a slope rating that cannot be. */
export function checkTees(course: Course): Fault[] {
  return [
    ...course.holes
      .filter((hole) => servingTees(course, hole).length === 0)
      .map(
        (hole): Fault => ({
          severity: 'warning',
          code: 'MAR-COURSE-020',
          message: `No tee markers stand by the start of hole ${hole.ref}; the start of its line is taken.`,
          place: `hole ${hole.ref}`,
          advice: 'Draw the tees, or leave it if the line starts at the markers.',
        }),
      ),
    ...course.teeSets
      .filter((set) => set.par === null)
      .map(
        (set): Fault => ({
          severity: 'note',
          code: 'MAR-COURSE-028',
          message: `The ${set.name} tees have no par.`,
          place: `tees ${set.name}`,
          advice: 'Write the par of the course from these tees; handicaps need it.',
        }),
      ),
    ...course.teeSets
      .filter(
        ({ slopeRating }) =>
          slopeRating !== null && !(slopeRating >= SLOPE_RATINGS.least && slopeRating <= SLOPE_RATINGS.most),
      )
      .map(
        (set): Fault => ({
          severity: 'warning',
          code: 'MAR-COURSE-029',
          message: `The ${set.name} tees have a slope rating of ${set.slopeRating}.`,
          place: `tees ${set.name}`,
          advice: `Slope ratings run from ${SLOPE_RATINGS.least} to ${SLOPE_RATINGS.most}; copy it from the card.`,
        }),
      ),
  ]
}

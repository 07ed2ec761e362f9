import type { Fault } from '#faults/fault.ts'
import { polylineLength } from '#numbers/geometry/polyline.ts'
import type { Course, HoleLine } from '../course.ts'
import { HOLE_LENGTH_METRES } from '../settings.ts'
import { isBackwards } from './is-backwards.ts'

/** Lines that are none, run backwards, or are shorter or longer than any hole; a course without any. */
export function checkHoleLines(course: Course): Fault[] {
  if (course.holes.length === 0)
    return [
      {
        severity: 'error',
        code: 'MAR-COURSE-032',
        message: 'The course has no holes, so nothing can be measured or planned.',
        place: '',
        advice: 'Draw a line from tee to pin for each hole (golf=hole with its ref), or type the hole table.',
      },
    ]
  return course.holes.flatMap((hole) => {
    const length = polylineLength(hole.line)
    if (length < 1) return [noLine(hole)]
    return [
      ...(isBackwards(course, hole) ? [backwards(hole)] : []),
      ...(length < HOLE_LENGTH_METRES.least ? [unlikely(hole, length, 'MAR-COURSE-014', 'shorter')] : []),
      ...(length > HOLE_LENGTH_METRES.most ? [unlikely(hole, length, 'MAR-COURSE-015', 'longer')] : []),
    ]
  })
}

function noLine(hole: HoleLine): Fault {
  return {
    severity: 'error',
    code: 'MAR-COURSE-004',
    message: `Hole ${hole.ref} has no line to play along.`,
    place: `hole ${hole.ref}`,
    advice: 'Draw its line from the tee through the bends to the pin.',
  }
}

function backwards(hole: HoleLine): Fault {
  return {
    severity: 'error',
    code: 'MAR-COURSE-013',
    message: `The line of hole ${hole.ref} runs from its green to its tee.`,
    place: `hole ${hole.ref}`,
    advice: 'Turn the line round: tee first, pin last.',
  }
}

function unlikely(
  hole: HoleLine,
  length: number,
  code: 'MAR-COURSE-014' | 'MAR-COURSE-015',
  than: 'shorter' | 'longer',
): Fault {
  return {
    severity: 'warning',
    code,
    message: `The line of hole ${hole.ref} measures ${Math.round(length)} m, ${than} than any hole.`,
    place: `hole ${hole.ref}`,
    advice: 'Check that the line is one hole from tee to pin, and no practice range or whole round.',
  }
}

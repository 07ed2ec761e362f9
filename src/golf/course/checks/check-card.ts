import type { Fault } from '#faults/fault.ts'
import { METRES_PER_YARD } from '#numbers/units/units.ts'
import { cardLengths, closesWith } from '../card-lengths.ts'
import type { Course, HoleLine } from '../course.ts'
import { PARS } from '../settings.ts'

/** What the card says of each hole: par, stroke index, and lengths that do not close with the line. */
export function checkCard(course: Course): Fault[] {
  return [
    ...course.holes.flatMap(parFaults),
    ...course.holes.flatMap((hole) => strokeIndexFaults(course, hole)),
    ...course.holes.flatMap((hole) => lengthFaults(course, hole)),
  ]
}

function parFaults(hole: HoleLine): Fault[] {
  const place = `hole ${hole.ref}`
  if (hole.par === null)
    return [
      {
        severity: 'warning',
        code: 'MAR-COURSE-003',
        message: `Hole ${hole.ref} has no par; a plan takes one from its length and says so.`,
        place,
        advice: 'Write par on the hole line, from the card.',
      },
    ]
  if (Number.isInteger(hole.par) && hole.par >= PARS.least && hole.par <= PARS.most) return []
  return [
    {
      severity: 'warning',
      code: 'MAR-COURSE-021',
      message: `Hole ${hole.ref} has par ${hole.par}.`,
      place,
      advice: `Par is ${PARS.least} to ${PARS.most}; copy it from the card.`,
    },
  ]
}

function strokeIndexFaults(course: Course, hole: HoleLine): Fault[] {
  const index = hole.strokeIndex
  if (index === null) return []
  const place = `hole ${hole.ref}`
  if (!(Number.isInteger(index) && index >= 1 && index <= 18))
    return [
      {
        severity: 'warning',
        code: 'MAR-COURSE-023',
        message: `Hole ${hole.ref} has stroke index ${index}.`,
        place,
        advice: 'Stroke indexes are whole numbers from 1 to 18; copy it from the card.',
      },
    ]
  const before = course.holes
    .slice(0, course.holes.indexOf(hole))
    .find((other) => other.strokeIndex === index && isOneCard(other, hole))
  return before
    ? [
        {
          severity: 'warning',
          code: 'MAR-COURSE-024',
          message: `Holes ${before.ref} and ${hole.ref} both have stroke index ${index}.`,
          place,
          advice: 'Copy the stroke indexes from the card: each of 1 to 18 stands once.',
        },
      ]
    : []
}

/** Holes 1 to 18 and 19 to 36 have a card each. */
function isOneCard(a: HoleLine, b: HoleLine): boolean {
  return Number(a.ref) > 18 === Number(b.ref) > 18
}

function lengthFaults(course: Course, hole: HoleLine): Fault[] {
  return cardLengths(course, hole).flatMap(({ tee, cardMetres, measured, isClosed }) => {
    const [first] = measured
    return isClosed || first === undefined ? [] : [notClosing(hole, tee, cardMetres, first, measured)]
  })
}

function notClosing(
  hole: HoleLine,
  tee: string,
  card: number,
  first: number,
  measured: readonly number[],
): Fault {
  const isYards = measured.some((metres) => closesWith(card * METRES_PER_YARD, metres))
  return {
    severity: 'warning',
    code: 'MAR-COURSE-022',
    message: `The card says ${Math.round(card)} m for hole ${hole.ref}${tee === '' ? '' : ` from the ${tee} tee`}; the line measures ${Math.round(first)} m.`,
    place: `hole ${hole.ref}`,
    advice: isYards
      ? 'The number looks like yards: write the unit, such as 410 yd.'
      : 'Check that the line starts at the markers of the card and follows the bends.',
  }
}

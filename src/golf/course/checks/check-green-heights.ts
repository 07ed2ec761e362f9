import type { Fault } from '#faults/fault.ts'
import { meanGradient } from '#numbers/geometry/mean-gradient.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import type { Area, Course, SpotHeight } from '../course.ts'
import { greenHeights, isSpotsEnough, spotsOnGreen } from '../green-heights.ts'
import { surfaceOfHeights } from '../green-surface.ts'
import { placesInside } from '../greens/places-inside.ts'
import {
  GROUND_RANGES,
  MOST_SPOTS,
  SAME_FALL_PERCENT,
  SPOT_APRON_METRES,
  STEEPEST_GREEN,
} from '../settings.ts'

/** Spot heights that tell nothing, and greens steeper than greens are. */
export function checkGreenHeights(course: Course): Fault[] {
  const greens = course.areas.filter((area) => area.ground === 'green')
  const used = new Set(greens.flatMap((green) => spotsOnGreen(course, green)))
  return [
    ...course.spotHeights.flatMap((spot) => [
      ...(used.has(spot) ? [] : [stray(spot)]),
      ...(isElevation(spot.elevationMetres) ? [] : [noElevation(spot)]),
    ]),
    ...greens.flatMap((green) => [...spotFaults(course, green), ...slopeFaults(course, green)]),
  ]
}

function isElevation(metres: number): boolean {
  return metres >= GROUND_RANGES.elevationMetres.from && metres <= GROUND_RANGES.elevationMetres.to
}

function spotFaults(course: Course, green: Area): Fault[] {
  const spots = spotsOnGreen(course, green)
  if (spots.length > MOST_SPOTS) return [tooMany(green, spots.length)]
  return spots.length === 0 || isSpotsEnough(spots) ? [] : [tooFew(green, spots.length)]
}

function slopeFaults(course: Course, green: Area): Fault[] {
  const heights = greenHeights(course, green)
  const surface = heights && surfaceOfHeights(heights)
  const typed = green.fallPercent
  if (!surface) {
    // Beyond the range of a fall it has been told already that the number is none.
    const isTooSteep =
      typed !== null && typed > STEEPEST_GREEN.meanPercent && typed <= GROUND_RANGES.fallPercent.to
    return isTooSteep ? [tooSteep(green, typed)] : []
  }
  const mean = meanGradient(surface, green.polygon)
  const percent = 100 * Math.hypot(...mean)
  if (percent > STEEPEST_GREEN.meanPercent) return [tooSteep(green, percent)]
  const steepest = Math.max(
    ...placesInside(green.polygon, 1).map((place) => 100 * Math.hypot(...surface.gradientAt(...place))),
  )
  if (steepest > STEEPEST_GREEN.anywherePercent) return [tooSteepSomewhere(green, steepest)]
  const toward = degreesToRadians(green.fallTowardDegrees ?? 0)
  const apart =
    100 *
    Math.hypot(
      mean[0] + ((typed ?? 0) / 100) * Math.sin(toward),
      mean[1] + ((typed ?? 0) / 100) * Math.cos(toward),
    )
  return typed !== null && apart > SAME_FALL_PERCENT ? [twoFalls(green, typed, percent)] : []
}

function stray(spot: SpotHeight): Fault {
  return {
    severity: 'warning',
    code: 'MAR-COURSE-033',
    message: `${spot.id} is a spot height more than ${SPOT_APRON_METRES} m from every green.`,
    place: spot.id,
    advice: 'Check its position; a height elsewhere changes nothing.',
  }
}

function noElevation(spot: SpotHeight): Fault {
  const { from, to } = GROUND_RANGES.elevationMetres
  return {
    severity: 'warning',
    code: 'MAR-COURSE-031',
    message: `marram:elevation_m of ${spot.id} (spot height) is ${spot.elevationMetres}.`,
    place: spot.id,
    advice: `It can be ${from} to ${to}.`,
  }
}

function tooFew(green: Area, count: number): Fault {
  return {
    severity: 'warning',
    code: 'MAR-COURSE-034',
    message:
      count < 3
        ? `${green.id} has ${count === 1 ? 'one spot height' : 'two spot heights'}; a slope needs three.`
        : `The ${count} spot heights of ${green.id} lie along one line, so they tell no slope across it.`,
    place: green.id,
    advice: 'Take heights at its front, back, left and right; until then they are not used.',
  }
}

function tooMany(green: Area, count: number): Fault {
  return {
    severity: 'note',
    code: 'MAR-COURSE-037',
    message: `${green.id} has ${count} spot heights; every ${Math.ceil(count / MOST_SPOTS)}th is used.`,
    place: green.id,
    advice: 'Nothing to do; a grid (marram:height_grid) keeps them all.',
  }
}

function tooSteep(green: Area, percent: number): Fault {
  return {
    severity: 'warning',
    code: 'MAR-COURSE-035',
    message: `${green.id} falls ${percent.toFixed(1)} per cent from end to end; on more than ${STEEPEST_GREEN.meanPercent} no ball stays where it is putted.`,
    place: green.id,
    advice: 'Check the fall, its unit and the heights: 1 in 50 is 2 per cent.',
  }
}

function tooSteepSomewhere(green: Area, percent: number): Fault {
  return {
    severity: 'warning',
    code: 'MAR-COURSE-035',
    message: `${green.id} slopes ${percent.toFixed(0)} per cent at one place; the face of a tier has at most ${STEEPEST_GREEN.anywherePercent}.`,
    place: green.id,
    advice: 'Look for a height that is mistyped or lies in the wrong place.',
  }
}

function twoFalls(green: Area, typed: number, percent: number): Fault {
  return {
    severity: 'note',
    code: 'MAR-COURSE-036',
    message: `${green.id} is said to fall ${typed} per cent, its heights fall ${percent.toFixed(1)} or another way; the heights are used.`,
    place: green.id,
    advice: 'Check the bearing of the fall, or take it out.',
  }
}

import type { Fault } from '#faults/fault.ts'
import type { Area, Course } from '../course.ts'
import { GROUND_RANGES } from '../settings.ts'

const SHARES = [
  ['unplayableShare', 'marram:unplayable'],
  ['lostShare', 'marram:lost'],
] as const

const RANGES = [
  ['fallPercent', 'marram:fall_percent'],
  ['fallTowardDegrees', 'marram:fall_toward_deg'],
  ['heightMetres', 'marram:height_m'],
  ['crownBaseMetres', 'marram:crown_base_m'],
  ['densityPerMetre', 'marram:density'],
  ['elevationMetres', 'marram:elevation_m'],
] as const

/** Shares that are none, and heights, falls and densities that no ground has. */
export function checkNumbers(course: Course): Fault[] {
  return course.areas.flatMap((area) => [
    ...SHARES.flatMap(([name, property]) => {
      const value = area[name]
      return value === null || (value >= 0 && value <= 1) ? [] : [notAShare(area, property, value)]
    }),
    ...RANGES.flatMap(([name, property]) => {
      const value = area[name]
      const { from, to } = GROUND_RANGES[name]
      return value === null || (value >= from && value <= to)
        ? []
        : [outside(area, property, value, from, to)]
    }),
  ])
}

function notAShare(area: Area, property: string, value: number): Fault {
  return {
    severity: 'error',
    code: 'MAR-COURSE-030',
    message: `${property} of ${area.id} (${area.ground}) is ${value}.`,
    place: area.id,
    advice:
      value > 1 && value <= 100
        ? `A share runs from 0 to 1: write ${value / 100} for ${value} per cent.`
        : 'A share runs from 0 to 1.',
  }
}

function outside(area: Area, property: string, value: number, from: number, to: number): Fault {
  return {
    severity: 'warning',
    code: 'MAR-COURSE-031',
    message: `${property} of ${area.id} (${area.ground}) is ${value}.`,
    place: area.id,
    advice: `It can be ${from} to ${to}.`,
  }
}

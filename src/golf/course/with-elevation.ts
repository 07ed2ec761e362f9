import type { Fault } from '#faults/fault.ts'
import { polygonCentroid } from '#numbers/geometry/polygon.ts'
import { type TangentPlane, tangentPlane } from '#numbers/geometry/tangent-plane.ts'
import type { Area, Course } from './course.ts'
import { type GridSlope, slopeFromGrid, whyTooCoarse } from './elevation/slope-from-grid.ts'
import type { ElevationGrid } from './elevation-grid.ts'
import { greenHeights } from './green-heights.ts'
import { STEEPEST_GREEN } from './settings.ts'

/** A course with heights from a grid, and what the grid could not give. */
export interface CourseWithElevation {
  readonly course: Course
  /** How many tees and greens got their height from the grid, and how many greens their contours or their mean fall. */
  readonly filled: {
    readonly tees: number
    readonly greens: number
    readonly contours: number
    readonly falls: number
  }
  /** Why the grid gave no green a slope, for a person; `null` when it could. */
  readonly tooCoarse: string | null
  readonly faults: readonly Fault[]
}

/** A tee or a green: both carry an id and perhaps a height. */
interface Place {
  readonly id: string
  readonly elevationMetres: number | null
}

/**
 * Gives every tee, and every green at its centroid, the height of the grid in metres, to the centimetre, and a green
 * whose slope nobody surveyed its contours or mean fall, as far as the cells are fine enough. What the course has already
 * is never changed. Notes a grid too coarse for green slopes, places without data, and holes whose heights may now be
 * counted from two zeros.
 */
export function withElevation(course: Course, grid: ElevationGrid): CourseWithElevation {
  const plane = tangentPlane(course.origin)
  const without: string[] = []
  let typed = 0
  const fill = <T extends Place>(place: T, at: readonly [number, number]): T => {
    if (place.elevationMetres !== null) {
      typed++
      return place
    }
    const height = grid.heightAt(...plane.toLonLat(at))
    if (height === null) without.push(place.id)
    return height === null ? place : { ...place, elevationMetres: Math.round(height * 100) / 100 }
  }
  const tees = course.tees.map((tee) => fill(tee, tee.position))
  const raised = course.areas.map((area) =>
    area.ground === 'green' ? fill(area, polygonCentroid(area.polygon)) : area,
  )
  const shaped = raised.map((area) =>
    area.ground === 'green' ? withSlope(course, area, grid, plane) : { area },
  )
  const kinds = shaped.flatMap(({ slope }) => slope?.kind ?? [])
  const filled = {
    tees: changed(tees, course.tees),
    greens: changed(raised, course.areas),
    contours: kinds.filter((kind) => kind === 'contours').length,
    falls: kinds.filter((kind) => kind === 'fall').length,
  }
  const count = filled.tees + filled.greens
  const isUsed = count + filled.contours + filled.falls > 0
  const faults = [
    ...(isUsed || kinds.length > 0 ? coarse(grid) : []),
    ...shaped.flatMap(({ area, slope }) => (slope?.kind === 'too-steep' ? [tooSteep(area.id)] : [])),
    ...(count > 0 && typed > 0 ? [mixed(grid)] : []),
    ...(count === 0 && without.length > 0 ? [elsewhere(grid)] : without.map((id) => missing(id, grid))),
  ]
  const tooCoarse = whyTooCoarse(grid)
  const areas = shaped.map(({ area }) => area)
  if (!isUsed && areas.every((area, index) => area === course.areas[index]))
    return { course, filled, tooCoarse, faults }
  const heights = `heights: ${grid.source}`
  const source = course.source === null ? heights : `${course.source}; ${heights}`
  return { course: { ...course, tees, areas, source }, filled, tooCoarse, faults }
}

/** A green with what the grid shows of its slope, and what that was; a slope that was surveyed stays as it is. */
function withSlope(
  course: Course,
  green: Area,
  grid: ElevationGrid,
  plane: TangentPlane,
): { readonly area: Area; readonly slope?: GridSlope } {
  const isSurveyed = green.fallPercent !== null || greenHeights(course, green) !== null
  const isAsFine = green.gridCellMetres !== null && green.gridCellMetres <= grid.cellMetres
  if (isSurveyed || isAsFine) return { area: green }
  const slope = slopeFromGrid(green, grid, plane)
  if (slope.kind === 'no-data') return { area: green }
  const gridCellMetres = Math.round(grid.cellMetres * 10) / 10
  if (slope.kind === 'contours') return { area: { ...green, heightGrid: slope.heightGrid }, slope }
  if (slope.kind === 'too-coarse' || slope.kind === 'too-steep') {
    const isThere = grid.heightAt(...plane.toLonLat(polygonCentroid(green.polygon))) !== null
    return isThere ? { area: { ...green, gridCellMetres }, slope } : { area: green }
  }
  const { fallPercent, fallTowardDegrees } = slope
  return { area: { ...green, fallPercent, fallTowardDegrees, gridCellMetres }, slope }
}

function changed(after: readonly Place[], before: readonly Place[]): number {
  return after.filter((place, index) => place !== before[index]).length
}

function coarse(grid: ElevationGrid): Fault[] {
  const why = whyTooCoarse(grid)
  if (why === null) return []
  return [
    {
      severity: 'note',
      code: 'MAR-ELEV-008',
      message: `The grid gives the climb of a hole only; ${why}.`,
      place: grid.source,
      advice: 'Type the fall of a green where it is known, or take spot heights on it.',
    },
  ]
}

function tooSteep(id: string): Fault {
  return {
    severity: 'note',
    code: 'MAR-ELEV-012',
    message: `The grid has ${id} fall more than ${STEEPEST_GREEN.meanPercent} per cent, as no green does; that was not taken.`,
    place: id,
    advice: 'The grid may show trees or roofs instead of the ground: type the fall, or take spot heights.',
  }
}

function mixed(grid: ElevationGrid): Fault {
  return {
    severity: 'note',
    code: 'MAR-ELEV-010',
    message: 'Some heights of the course were there before and were kept; the others are from the grid.',
    place: grid.source,
    advice: 'Make sure that both are counted from sea level, or the climb of a hole is wrong.',
  }
}

function missing(id: string, grid: ElevationGrid): Fault {
  const empty = grid.emptyCells === 0 ? '' : ` or in one of its ${grid.emptyCells} cells without data`
  return {
    severity: 'note',
    code: 'MAR-ELEV-009',
    message: `The grid has no height here: the place lies outside it${empty}.`,
    place: id,
    advice: 'Type the height, or take a grid that covers the whole course.',
  }
}

function elsewhere(grid: ElevationGrid): Fault {
  return {
    severity: 'warning',
    code: 'MAR-ELEV-011',
    message: 'The grid has no height for a single tee or green of the course.',
    place: grid.source,
    advice: 'Look whether the grid is of this part of the world.',
  }
}

import type { Fault } from '#faults/fault.ts'
import { polygonCentroid } from '#numbers/geometry/polygon.ts'
import { tangentPlane } from '#numbers/geometry/tangent-plane.ts'
import type { Course } from './course.ts'
import type { ElevationGrid } from './elevation-grid.ts'
import { COARSEST_SLOPE_CELL_METRES } from './settings.ts'

/** A course with heights from a grid, and what the grid could not give. */
export interface CourseWithElevation {
  readonly course: Course
  /** How many tees and greens got their height from the grid. */
  readonly filled: { readonly tees: number; readonly greens: number }
  readonly faults: readonly Fault[]
}

/** A tee or a green: both carry an id and perhaps a height. */
interface Place {
  readonly id: string
  readonly elevationMetres: number | null
}

/**
 * Gives every tee, and every green at its centroid, the height of the grid in metres, to the centimetre. A height that
 * the course has already is never changed. Notes a grid too coarse for green slopes, places without data, and holes
 * whose heights may now be counted from two zeros.
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
  const areas = course.areas.map((area) =>
    area.ground === 'green' ? fill(area, polygonCentroid(area.polygon)) : area,
  )
  const filled = { tees: changed(tees, course.tees), greens: changed(areas, course.areas) }
  const count = filled.tees + filled.greens
  const faults = [
    ...(count > 0 ? coarse(grid) : []),
    ...(count > 0 && typed > 0 ? [mixed(grid)] : []),
    ...(count === 0 && without.length > 0 ? [elsewhere(grid)] : without.map((id) => missing(id, grid))),
  ]
  if (count === 0) return { course, filled, faults }
  const heights = `heights: ${grid.source}`
  const source = course.source === null ? heights : `${course.source}; ${heights}`
  return { course: { ...course, tees, areas, source }, filled, faults }
}

function changed(after: readonly Place[], before: readonly Place[]): number {
  return after.filter((place, index) => place !== before[index]).length
}

function coarse(grid: ElevationGrid): Fault[] {
  if (grid.cellMetres <= COARSEST_SLOPE_CELL_METRES) return []
  return [
    {
      severity: 'note',
      code: 'MAR-ELEV-008',
      message: `A cell of the grid is ${Math.round(grid.cellMetres)} m long: it gives the climb of a hole, never the slope of a green.`,
      place: grid.source,
      advice: 'Type the fall of a green where it is known.',
    },
  ]
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

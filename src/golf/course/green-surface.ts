import { convexHull } from '#numbers/geometry/convex-hull.ts'
import { fadeOutside } from '#numbers/geometry/fade-outside.ts'
import { fitPlane, type PlaneFit } from '#numbers/geometry/fit-plane.ts'
import { fitThinPlate } from '#numbers/geometry/fit-thin-plate.ts'
import type { HeightSurface } from '#numbers/geometry/height-surface.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { gridSurface } from '#numbers/raster/grid-surface.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import type { HeightGrid, SpotHeight } from './course.ts'
import type { GreenHeights } from './green-heights.ts'
import type { Hole } from './hole.ts'
import { CONTOURS_FADE_METRES, SPOT_SMOOTHING_SQUARE_METRES } from './settings.ts'

/** The shape of a green and its apron in the hole frame. */
export interface GreenSurface {
  /** What the shape was taken from. */
  readonly source: 'level' | 'mean-fall' | 'spot-heights' | 'grid'
  /** Rise of the ground per metre towards +x and towards +y at a place; without jumps. */
  gradientAt(x: number, y: number): Point
  /** Height above the pin, metres. */
  heightAt(x: number, y: number): number
}

/** What of a hole tells the shape of its green. */
export type SurveyedGreen = Pick<Hole, 'pin' | 'greenFallPercent' | 'greenFallTowardDegrees'> &
  Partial<Pick<Hole, 'greenHeights'>>

/**
 * The surface of a hole's green: through its spot heights or its grid, else a plane with the surveyed mean fall, level
 * where none was surveyed. Away from the measured heights the surface goes over into the plane that fits them best.
 */
export function greenSurface(hole: SurveyedGreen): GreenSurface {
  const [pinX, pinY] = hole.pin
  const heights = hole.greenHeights ?? null
  const measured = heights && surfaceOfHeights(heights)
  if (heights && measured) {
    const atPin = measured.heightAt(pinX, pinY)
    return {
      source: heights.kind,
      gradientAt: measured.gradientAt,
      heightAt: (x, y) => measured.heightAt(x, y) - atPin,
    }
  }
  const rise = hole.greenFallPercent / 100
  const toward = degreesToRadians(hole.greenFallTowardDegrees)
  const gradient: Point = [-rise * Math.sin(toward), -rise * Math.cos(toward)]
  return {
    source: rise === 0 ? 'level' : 'mean-fall',
    gradientAt: () => gradient,
    heightAt: (x, y) => (x - pinX) * gradient[0] + (y - pinY) * gradient[1],
  }
}

/**
 * The surface through measured heights, above their own zero, metres: the plane that fits them best and, over it, what
 * they differ from it, which fades out beyond them. `null` when they fix no plane.
 */
export function surfaceOfHeights(heights: GreenHeights): HeightSurface | null {
  return heights.kind === 'grid' ? surfaceOfGrid(heights.grid) : surfaceOfSpots(heights.spots)
}

function surfaceOfSpots(spots: readonly SpotHeight[]): HeightSurface | null {
  const places = spots.map(({ position }) => position)
  const measured = spots.map(({ elevationMetres }) => elevationMetres)
  const plane = fitPlane(places, measured)
  if (!plane) return null
  const thin = fitThinPlate(places, differences(plane, places, measured), SPOT_SMOOTHING_SQUARE_METRES)
  return thin && overPlane(plane, fadeOutside(thin, convexHull(places), CONTOURS_FADE_METRES))
}

function surfaceOfGrid(grid: HeightGrid): HeightSurface | null {
  const { origin, stepX, stepY, columns } = grid
  const places = grid.heights.map((_, index): Point => {
    const [column, row] = [index % columns, Math.floor(index / columns)]
    return [origin[0] + column * stepX[0] + row * stepY[0], origin[1] + column * stepX[1] + row * stepY[1]]
  })
  const plane = fitPlane(places, grid.heights)
  if (!plane) return null
  const cellMetres = Math.hypot(...stepX)
  const nodes = { ...grid, cellMetres, heights: differences(plane, places, grid.heights) }
  const over = gridSurface(nodes, CONTOURS_FADE_METRES)
  const [ux, uy] = [stepX[0] / cellMetres, stepX[1] / cellMetres]
  const [vx, vy] = [stepY[0] / cellMetres, stepY[1] / cellMetres]
  const along = (x: number, y: number): Point => {
    const [dx, dy] = [x - origin[0], y - origin[1]]
    return [dx * ux + dy * uy, dx * vx + dy * vy]
  }
  return overPlane(plane, {
    heightAt: (x, y) => over.heightAt(...along(x, y)),
    gradientAt: (x, y) => {
      const [alongU, alongV] = over.gradientAt(...along(x, y))
      return [alongU * ux + alongV * vx, alongU * uy + alongV * vy]
    },
  })
}

function planeHeight({ centre, height, gradient }: PlaneFit, x: number, y: number): number {
  return height + (x - centre[0]) * gradient[0] + (y - centre[1]) * gradient[1]
}

function differences(plane: PlaneFit, places: readonly Point[], measured: readonly number[]): number[] {
  return places.map(([x, y], index) => (measured[index] ?? 0) - planeHeight(plane, x, y))
}

function overPlane(plane: PlaneFit, over: HeightSurface): HeightSurface {
  return {
    heightAt: (x, y) => planeHeight(plane, x, y) + over.heightAt(x, y),
    gradientAt: (x, y) => {
      const [riseX, riseY] = over.gradientAt(x, y)
      return [plane.gradient[0] + riseX, plane.gradient[1] + riseY]
    },
  }
}

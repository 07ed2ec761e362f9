import { fitPlane } from '#numbers/geometry/fit-plane.ts'
import type { Point } from '#numbers/geometry/point.ts'
import type { Area, Course, HeightGrid, SpotHeight } from './course.ts'
import { distanceToPolygon } from './greens/green-of-hole.ts'
import { LEAST_SPOT_SPREAD_METRES, MOST_SPOTS, SPOT_APRON_METRES } from './settings.ts'

/** Heights measured over a green and its apron, metres above any one zero: only their differences count. */
export type GreenHeights =
  | { readonly kind: 'spot-heights'; readonly spots: readonly SpotHeight[] }
  | { readonly kind: 'grid'; readonly grid: HeightGrid }

/**
 * The heights that tell a green's shape, on the course plane: its spot heights where they fix a plane, since a person
 * took them for that, else its grid; `null` when it has neither. Of more spot heights than {@link MOST_SPOTS} every
 * second, third … is taken.
 */
export function greenHeights(course: Course, green: Area): GreenHeights | null {
  const spots = spotsOnGreen(course, green)
  if (isSpotsEnough(spots)) {
    const step = Math.ceil(spots.length / MOST_SPOTS)
    return { kind: 'spot-heights', spots: spots.filter((_, index) => index % step === 0) }
  }
  return green.heightGrid && { kind: 'grid', grid: green.heightGrid }
}

/** The spot heights on a green or within {@link SPOT_APRON_METRES} of it. */
export function spotsOnGreen(course: Pick<Course, 'spotHeights'>, green: Area): SpotHeight[] {
  return course.spotHeights.filter(
    ({ position }) => distanceToPolygon(green.polygon, position) <= SPOT_APRON_METRES,
  )
}

/** Whether spot heights fix a plane: three or more that do not lie along one line. */
export function isSpotsEnough(spots: readonly SpotHeight[]): boolean {
  const plane = fitPlane(
    spots.map(({ position }) => position),
    spots.map(({ elevationMetres }) => elevationMetres),
  )
  return plane !== null && plane.spreadMetres >= LEAST_SPOT_SPREAD_METRES
}

/** The same heights with every place moved; `move` must keep lengths, but may mirror. */
export function moveGreenHeights(heights: GreenHeights, move: (point: Point) => Point): GreenHeights {
  if (heights.kind === 'grid') return { kind: 'grid', grid: moveHeightGrid(heights.grid, move) }
  return {
    kind: 'spot-heights',
    spots: heights.spots.map((spot) => ({ ...spot, position: move(spot.position) })),
  }
}

/** A grid of heights with its origin and its directions moved; `move` must keep lengths, but may mirror. */
export function moveHeightGrid(grid: HeightGrid, move: (point: Point) => Point): HeightGrid {
  const origin = move(grid.origin)
  const turned = ([x, y]: Point): Point => {
    const [toX, toY] = move([grid.origin[0] + x, grid.origin[1] + y])
    return [toX - origin[0], toY - origin[1]]
  }
  return { ...grid, origin, stepX: turned(grid.stepX), stepY: turned(grid.stepY) }
}

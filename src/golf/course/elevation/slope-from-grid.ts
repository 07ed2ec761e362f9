import { fitPlane } from '#numbers/geometry/fit-plane.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { polygonBounds } from '#numbers/geometry/polygon.ts'
import type { TangentPlane } from '#numbers/geometry/tangent-plane.ts'
import { radiansToDegrees } from '#numbers/units/units.ts'
import type { Area, HeightGrid } from '../course.ts'
import type { ElevationGrid } from '../elevation-grid.ts'
import { placesInside } from '../greens/places-inside.ts'
import {
  COARSEST_SLOPE_CELL_METRES,
  FALL_SAMPLES_METRES,
  GREEN_GRID_CELL_METRES,
  GREEN_GRID_MARGIN_METRES,
  LEAST_SPOT_SPREAD_METRES,
  MOST_GRID_NODES,
  STEEPEST_GREEN,
} from '../settings.ts'

/** What a grid of heights gives for the shape of a green: contours, a mean fall, or only why neither. */
export type GridSlope =
  | { readonly kind: 'contours'; readonly heightGrid: HeightGrid }
  | { readonly kind: 'fall'; readonly fallPercent: number; readonly fallTowardDegrees: number }
  | { readonly kind: 'too-coarse' }
  | { readonly kind: 'too-steep' }
  | { readonly kind: 'no-data' }

/** Why a grid says nothing of the slope of any green, for a person; `null` when it can. */
export function whyTooCoarse(grid: ElevationGrid): string | null {
  if (grid.cellMetres > COARSEST_SLOPE_CELL_METRES)
    return `cell ${Math.round(grid.cellMetres)} m: too coarse for the slope of a green`
  return grid.isWholeMetres ? 'heights in whole metres: too coarse for the slope of a green' : null
}

/**
 * The shape that a grid gives a green: its heights on a grid of the green's own where the cells are fine enough for
 * contours, else the fall of the plane nearest to its heights over the green, to a tenth of a per cent.
 */
export function slopeFromGrid(green: Area, grid: ElevationGrid, plane: TangentPlane): GridSlope {
  if (whyTooCoarse(grid) !== null) return { kind: 'too-coarse' }
  const heightGrid = grid.cellMetres <= GREEN_GRID_CELL_METRES.to ? heightsRound(green, grid, plane) : null
  const places = placesInside(green.polygon, FALL_SAMPLES_METRES)
  const heights = places.map((place) => grid.heightAt(...plane.toLonLat(place)))
  const fit = heights.every((height) => height !== null) ? fitPlane(places, heights) : null
  if (!fit || fit.spreadMetres < LEAST_SPOT_SPREAD_METRES) return { kind: 'no-data' }
  const percent = 100 * Math.hypot(...fit.gradient)
  // Crowns of trees and roofs in the grid look like slopes.
  if (percent > STEEPEST_GREEN.meanPercent) return { kind: 'too-steep' }
  if (heightGrid) return { kind: 'contours', heightGrid }
  const toward = Math.round(radiansToDegrees(Math.atan2(-fit.gradient[0], -fit.gradient[1])))
  return { kind: 'fall', fallPercent: Math.round(percent * 10) / 10, fallTowardDegrees: (toward + 360) % 360 }
}

/** The heights of a green and its apron in cells as long as the grid's, to the millimetre; `null` where one is missing. */
function heightsRound(green: Area, grid: ElevationGrid, plane: TangentPlane): HeightGrid | null {
  const cell = Math.max(GREEN_GRID_CELL_METRES.from, Math.round(grid.cellMetres * 100) / 100)
  const bounds = polygonBounds(green.polygon)
  const origin: Point = [bounds.minX - GREEN_GRID_MARGIN_METRES, bounds.maxY + GREEN_GRID_MARGIN_METRES]
  const columns = 1 + Math.ceil((bounds.maxX + GREEN_GRID_MARGIN_METRES - origin[0]) / cell)
  const rows = 1 + Math.ceil((origin[1] - bounds.minY + GREEN_GRID_MARGIN_METRES) / cell)
  if (!(columns * rows <= MOST_GRID_NODES)) return null
  const heights: number[] = []
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const height = grid.heightAt(...plane.toLonLat([origin[0] + column * cell, origin[1] - row * cell]))
      if (height === null) return null
      heights.push(Math.round(height * 1000) / 1000)
    }
  return { origin, stepX: [cell, 0], stepY: [0, -cell], columns, rows, heights }
}

import { GROUND_CLASSES } from '#golf/course/ground.ts'
import { holeRaster, type RasterFrame } from '#golf/course/hole-raster.ts'
import type { NearbyStart } from './nearby-start.ts'

/** Expected strokes from the middle of every cell of a grid; not-a-number where nobody plays from. */
export interface ScoreField extends RasterFrame {
  readonly values: Float64Array
}

/** What a solved hole costs from everywhere, as the ground lies there. */
export function scoreField({
  hole,
  frame,
  values,
}: Pick<NearbyStart, 'hole' | 'frame' | 'values'>): ScoreField {
  const { cells } = holeRaster(hole, frame).ground
  return {
    ...frame,
    values: Float64Array.from(cells, (code, cell) => {
      const ground = GROUND_CLASSES[code]
      const isPlayed = ground !== 'out' && ground !== 'penalty-red' && ground !== 'penalty-yellow'
      return isPlayed ? (values[cell] as number) : Number.NaN
    }),
  }
}

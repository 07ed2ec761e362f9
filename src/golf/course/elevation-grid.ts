/** A grid of heights laid over the ground: what a file of elevations says, whatever its format. */
export interface ElevationGrid {
  /** Metres above the grid's own zero at `longitude`, `latitude` in degrees (WGS 84); `null` outside it or where it has no data. */
  readonly heightAt: (longitude: number, latitude: number) => number | null
  /** The longer side of a cell in the middle of the grid, metres. */
  readonly cellMetres: number
  /** Whether its heights were rounded to whole metres, which hides any slope of a green. */
  readonly isWholeMetres: boolean
  /** Cells that hold no height. */
  readonly emptyCells: number
  /** What it was read from, for a person: the name of the file. */
  readonly source: string
}

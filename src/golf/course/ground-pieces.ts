import { intersectPolygons, subtractPolygons } from '#numbers/geometry/combine-polygons.ts'
import type { Polygon } from '#numbers/geometry/point.ts'
import type { Area } from './course.ts'
import { GROUND_CLASSES, type Ground } from './ground.ts'
import type { Hole } from './hole.ts'
import { DEFAULT_GROUND, paintedAreas } from './painted-areas.ts'

/** What one class of ground takes of a shape. */
export interface GroundPiece {
  readonly ground: Ground
  readonly polygons: readonly Polygon[]
}

/** Cuts a shape of the hole frame along the surveyed outlines: what each class of ground takes of it, topmost class first. */
export function groundPieces(hole: Hole, shape: readonly Polygon[]): GroundPiece[] {
  const areas = paintedAreas(hole)
  const pieces: GroundPiece[] = []
  let rest = shape
  for (const ground of [...GROUND_CLASSES].reverse()) {
    const drawn = polygonsOf(areas, (area) => area.ground === ground)
    if (drawn.length === 0 || rest.length === 0) continue
    const taken = intersectPolygons(rest, drawn)
    if (taken.length === 0) continue
    pieces.push({ ground, polygons: taken })
    rest = subtractPolygons(rest, drawn)
  }
  if (rest.length === 0) return pieces
  const bare = pieces.find(({ ground }) => ground === DEFAULT_GROUND)
  const polygons = [...(bare?.polygons ?? []), ...rest]
  return [...pieces.filter((piece) => piece !== bare), { ground: DEFAULT_GROUND, polygons }]
}

/** Everything of a hole that is one class of ground, what is painted over it cut out. Not for the default ground, which has no outline. */
export function groundRegion(hole: Hole, ground: Ground): Polygon[] {
  const areas = paintedAreas(hole)
  const above = GROUND_CLASSES.slice(GROUND_CLASSES.indexOf(ground) + 1)
  return subtractPolygons(
    polygonsOf(areas, (area) => area.ground === ground),
    polygonsOf(areas, (area) => above.includes(area.ground)),
  )
}

function polygonsOf(areas: readonly Area[], isWanted: (area: Area) => boolean): Polygon[] {
  return areas.filter(isWanted).map((area) => area.polygon)
}

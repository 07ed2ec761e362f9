import { polygonContains } from '#numbers/geometry/polygon.ts'
import type { Area } from './course.ts'
import { type Ground, groundCode } from './ground.ts'
import type { Hole } from './hole.ts'
import { isWithin } from './holes/corridor.ts'

/** Ground that no area covers. */
export const DEFAULT_GROUND: Ground = 'rough'

/** The areas that make the ground of a hole, first painted first: a later one covers an earlier one. */
export function paintedAreas(hole: Hole): Area[] {
  return hole.areas
    .filter((area) => !isMownForAnother(area, hole))
    .sort((a, b) => groundCode(a.ground) - groundCode(b.ground))
}

const MOWN: ReadonlySet<Ground> = new Set(['fairway', 'first-cut', 'fringe', 'green', 'tee'])

/**
 * Whether an area is mown for another hole: named for others, a green without this hole's pin, or further from the
 * hole line than its own grass lies. A plan must not aim at another hole's fairway or green, where other people are,
 * so such ground counts as the default.
 */
function isMownForAnother(area: Area, hole: Hole): boolean {
  if (!MOWN.has(area.ground)) return false
  if (area.holes !== null) return !area.holes.includes(hole.ref)
  if (area.ground === 'green') return !polygonContains(area.polygon, hole.pin)
  return !isWithin(area.polygon, hole.line, OWN_GRASS_METRES)
}

/** A hole's own mown grass comes this near to its line, metres. Our assumption: fairways lie 60 m and more apart. */
const OWN_GRASS_METRES = 25

import { greenSurface } from '#golf/course/green-surface.ts'
import { GROUND_CLASSES, type Ground, groundCode } from '#golf/course/ground.ts'
import type { Hole } from '#golf/course/hole.ts'
import { placeAt, placesOf } from './places.ts'

/** The ground under a line from the ball over the pin, metres. */
export interface ShortProfile {
  /** Along the line from the ball; the pin is at {@link pinMetres}. */
  readonly points: readonly {
    readonly along: number
    /** Above the pin. */
    readonly height: number
    readonly ground: Ground
  }[]
  readonly pinMetres: number
}

const STEP_METRES = 0.25
const BEYOND_METRES = 4

/**
 * Cuts the ground along the line from the ball through the pin and some metres past whichever is the further of the pin
 * and `reachMetres`. The green's surface gives the heights on green and fringe; what lies beyond them is drawn on at the
 * height of their edge, since no survey says more.
 */
export function shortProfile(hole: Hole, from: readonly [number, number], reachMetres: number): ShortProfile {
  const places = placesOf(hole)
  const surface = greenSurface(hole)
  const [pinX, pinY] = hole.pin
  const pinMetres = Math.hypot(pinX - from[0], pinY - from[1])
  const heading = Math.atan2(pinX - from[0], pinY - from[1])
  const steps = Math.ceil((Math.max(pinMetres, reachMetres) + BEYOND_METRES) / STEP_METRES)
  const at = (along: number): { x: number; y: number; code: number } => {
    const x = from[0] + along * Math.sin(heading)
    const y = from[1] + along * Math.cos(heading)
    return { x, y, code: places.ground[placeAt(places, x, y)] as number }
  }
  const riseAt = (along: number): number => {
    const { x, y, code } = at(along)
    if (code !== GREEN && code !== FRINGE) return 0
    const [right, up] = surface.gradientAt(x, y)
    return right * Math.sin(heading) + up * Math.cos(heading)
  }
  const points = Array.from({ length: steps + 1 }, (_, step) => {
    const along = step * STEP_METRES
    return { along, height: 0, ground: GROUND_CLASSES[at(along).code] as Ground }
  })
  let height = 0
  for (const point of points) {
    point.height = height
    height += STEP_METRES * riseAt(point.along + STEP_METRES / 2)
  }
  const atPin = points[Math.round(pinMetres / STEP_METRES)]?.height ?? 0
  return { pinMetres, points: points.map((point) => ({ ...point, height: point.height - atPin })) }
}

const GREEN = groundCode('green')
const FRINGE = groundCode('fringe')

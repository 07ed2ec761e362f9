import type { Ground } from '#golf/course/ground.ts'
import { groundReader } from '#golf/course/ground-at.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Lie } from '#golf/player/player.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { polylineLength, projectOnPolyline } from '#numbers/geometry/polyline.ts'
import type { FinishLetter } from './round.ts'
import {
  CIRCLE_POINTS,
  DROP_METRES,
  LEFT_STEP_METRES,
  LEFT_TOLERANCE_METRES,
  LEFT_TOLERANCE_SHARE,
} from './settings.ts'

/** A place found for a letter of the log. */
export interface FoundPlace {
  readonly point: Point
  readonly lie: Lie
  /** False when the survey has no such ground there: then it is the place nearest the line at that distance. */
  readonly isSurveyed: boolean
  /** Metres to the pin of the place; the written ones, or the nearest to them at which there is such ground. */
  readonly leftMetres: number
}

/** Where the ball is played from after each letter, and the lie it stands for where the survey has no such ground. */
const GROUNDS: Readonly<
  Record<Exclude<FinishLetter, 'o'>, { readonly grounds: readonly Ground[]; readonly lie: Lie }>
> = {
  f: { grounds: ['fairway', 'path', 'tee'], lie: 'fairway' },
  c: { grounds: ['first-cut', 'fringe'], lie: 'first-cut' },
  r: { grounds: ['rough'], lie: 'rough' },
  h: { grounds: ['heavy'], lie: 'heavy' },
  b: { grounds: ['bunker'], lie: 'bunker' },
  g: { grounds: ['green'], lie: 'green' },
  x: { grounds: ['trees', 'scrub'], lie: 'trees' },
  p: { grounds: ['fairway', 'first-cut', 'rough', 'heavy', 'fringe', 'tee', 'path'], lie: 'rough' },
}

/** Whether a ball that was given a letter may lie on this ground. */
export function isGroundOf(letter: Exclude<FinishLetter, 'o'>, ground: Ground): boolean {
  return GROUNDS[letter].grounds.includes(ground)
}

/**
 * Where a ball lies that finished on the ground of a letter with so much left to the pin: on the circle of that distance,
 * on that ground, nearest the line of play from the last place. Distances on paper are not exact: where the circle meets
 * no such ground, the nearest circles are tried.
 */
export function letterPlace(
  hole: Hole,
  letter: Exclude<FinishLetter, 'o'>,
  leftMetres: number,
  last: Point,
): FoundPlace {
  const { grounds, lie } = GROUNDS[letter]
  const groundOf = groundReader(hole)
  const line = lineFrom(hole, last)
  const isNear = letter === 'p' ? nearPenalty(groundOf) : () => true
  const most = Math.max(LEFT_TOLERANCE_METRES, LEFT_TOLERANCE_SHARE * leftMetres)
  for (let off = 0; off <= most; off += LEFT_STEP_METRES)
    for (const left of off === 0 ? [leftMetres] : [leftMetres - off, leftMetres + off]) {
      if (left < 0) continue
      const point = nearestOf(
        circle(hole.pin, left).filter((one) => grounds.includes(groundOf(one)) && isNear(one)),
        line,
      )
      if (point === null) continue
      const ground = groundOf(point)
      const own = letter === 'p' || letter === 'x' ? lieOn(ground, lie) : lie
      return { point, lie: own, isSurveyed: true, leftMetres: left }
    }
  const point = nearestOf(circle(hole.pin, leftMetres), line) ?? last
  return { point, lie, isSurveyed: false, leftMetres }
}

function lieOn(ground: Ground, otherwise: Lie): Lie {
  if (ground === 'path' || ground === 'tee') return 'fairway'
  return ground === 'out' || ground === 'penalty-red' || ground === 'penalty-yellow' ? otherwise : ground
}

/** The line of play: from the last place by the bends ahead of it to the pin. */
function lineFrom(hole: Hole, last: Point): readonly Point[] {
  const { along } = projectOnPolyline(hole.line, last)
  const ahead = hole.line.filter((_, vertex) => polylineLength(hole.line.slice(0, vertex + 1)) > along + 1)
  return [last, ...ahead.slice(0, -1), hole.pin]
}

function circle([x, y]: Point, radius: number): Point[] {
  return Array.from({ length: CIRCLE_POINTS }, (_, step): Point => {
    const turn = (2 * Math.PI * step) / CIRCLE_POINTS
    return [x + radius * Math.sin(turn), y + radius * Math.cos(turn)]
  })
}

function nearestOf(points: readonly Point[], line: readonly Point[]): Point | null {
  let nearest: Point | null = null
  let least = Number.POSITIVE_INFINITY
  for (const point of points) {
    // A line of no length is a point: a ball beside the pin.
    const off =
      polylineLength(line) === 0 ? distance(line[0] as Point, point) : projectOnPolyline(line, point).distance
    if (off >= least - 1e-9) continue
    least = off
    nearest = point
  }
  return nearest
}

/** Whether a penalty area lies within a drop's reach of a point. */
function nearPenalty(groundOf: (point: Point) => Ground): (point: Point) => boolean {
  return ([x, y]) => {
    for (let reach = 2; reach <= DROP_METRES; reach += 2)
      for (let step = 0; step < 16; step++) {
        const turn = (2 * Math.PI * step) / 16
        const ground = groundOf([x + reach * Math.sin(turn), y + reach * Math.cos(turn)])
        if (ground === 'penalty-red' || ground === 'penalty-yellow') return true
      }
    return false
  }
}

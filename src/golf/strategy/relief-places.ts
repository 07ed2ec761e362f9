import { type Ground, groundCode } from '#golf/course/ground.ts'
import { type ReliefOption, type ReliefSituation, reliefOptions } from '#golf/rules/relief-options.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { IN_RED, IN_YELLOW, OUT_OF_BOUNDS } from './outcome.ts'
import { groundOf, type Places, placeAt } from './places.ts'
import { BACK_ON_LINE_METRES, CLUB_LENGTH_METRES } from './settings.ts'

const NOT_PLAYABLE: ReadonlySet<Ground> = new Set(['out', 'penalty-red', 'penalty-yellow'])
const FAIRWAY = groundCode('fairway')
const BUNKER = groundCode('bunker')
const DIRECTIONS = 16
/** Positions rounded this finely decide "not nearer the hole"; a mirrored hole must decide alike. */
const NOT_NEARER_TOLERANCE = 1e-9
/** The edge of a penalty area is looked for so many cells from the cell of crossing: its middle may lie a step and a cell away. */
const EDGE_CELLS = 3

/** A way to drop the ball elsewhere under penalty, with the places where it may be dropped. */
export interface Relief {
  readonly penaltyStrokes: number
  readonly places: Int32Array
}

/**
 * Where a ball may be dropped, stroke and distance aside. `kind` is the outcome's kind, `at` the place of crossing, or
 * of rest for an unplayable ball. Which options there are, and what they cost, is for the Rules to say. Relief is
 * measured from the surveyed edge beside the place of crossing, and a drop lies on the ground that the survey has
 * there: two club-lengths are less than a cell, which would reach fairway where no drop can.
 */
export function reliefPlaces(
  places: Places,
  pin: Point,
  kind: number,
  at: number,
  localRules: readonly string[],
): Relief[] {
  const reference = referencePoint(places, kind, at)
  return reliefOptions({ situation: situationOf(places, kind, at), localRules }).flatMap((option) => {
    const found = new Set<number>(dropPlaces(places, pin, option, at, reference))
    return found.size === 0 ? [] : [{ penaltyStrokes: option.penaltyStrokes, places: Int32Array.from(found) }]
  })
}

const SITUATIONS: Readonly<Record<number, ReliefSituation>> = {
  [IN_RED]: 'penalty-red',
  [IN_YELLOW]: 'penalty-yellow',
  [OUT_OF_BOUNDS]: 'out',
}

function situationOf(places: Places, kind: number, at: number): ReliefSituation {
  return SITUATIONS[kind] ?? (places.ground[at] === BUNKER ? 'unplayable-in-bunker' : 'unplayable')
}

const EDGES: Readonly<Record<number, Ground>> = {
  [IN_RED]: 'penalty-red',
  [IN_YELLOW]: 'penalty-yellow',
  [OUT_OF_BOUNDS]: 'out',
}

/** Where a ball that ended in a penalty area or out of bounds crossed its edge: the nearest to the place of crossing; else where the ball lies. */
function referencePoint(places: Places, kind: number, at: number): Point {
  const middle: Point = [places.x[at] as number, places.y[at] as number]
  const ground = EDGES[kind]
  const edge = ground && places.outlines.edgeOf(ground, middle)
  return edge && edge.distance <= EDGE_CELLS * places.coarse.resolution ? edge.point : middle
}

function dropPlaces(
  places: Places,
  pin: Point,
  option: ReliefOption,
  at: number,
  reference: Point,
): Iterable<number> {
  switch (option.kind) {
    case 'back-on-the-line':
      return keptIn(places, backOnTheLine(places, pin, reference), option.isInBunker)
    case 'back-on-the-line-out-of-bunker':
      return [...backOnTheLine(places, pin, reference)].filter((place) => places.ground[place] !== BUNKER)
    case 'lateral':
      return keptIn(
        places,
        lateral(places, pin, reference, (option.clubLengths ?? 0) * CLUB_LENGTH_METRES),
        option.isInBunker,
      )
    case 'local-rule-E-5':
      return nearFairway(places, at)
    default:
      return []
  }
}

/** All of the drops, or those in sand for a ball that must stay in its bunker. */
function keptIn(places: Places, drops: Iterable<number>, isInBunker: boolean): Iterable<number> {
  return isInBunker ? [...drops].filter((place) => places.ground[place] === BUNKER) : drops
}

function* backOnTheLine(places: Places, pin: Point, [x, y]: Point): Generator<number> {
  const away = Math.hypot(x - pin[0], y - pin[1])
  if (away === 0) return
  for (const back of BACK_ON_LINE_METRES) {
    const place = dropAt(places, [x + ((x - pin[0]) / away) * back, y + ((y - pin[1]) / away) * back])
    if (place >= 0) yield place
  }
}

function* lateral(places: Places, pin: Point, [x, y]: Point, farthest: number): Generator<number> {
  const away = Math.hypot(x - pin[0], y - pin[1]) - NOT_NEARER_TOLERANCE
  // Directions are counted from the line to the pin to both sides, so that a mirrored hole tries mirrored spots.
  const toPin = Math.atan2(pin[0] - x, pin[1] - y)
  for (let step = -DIRECTIONS / 2; step < DIRECTIONS / 2; step++) {
    const heading = toPin + ((step + 0.5) * 2 * Math.PI) / DIRECTIONS
    for (const reach of [farthest / 2, farthest]) {
      const drop: Point = [x + reach * Math.sin(heading), y + reach * Math.cos(heading)]
      if (Math.hypot(drop[0] - pin[0], drop[1] - pin[1]) < away) continue
      const place = dropAt(places, drop)
      if (place >= 0) yield place
    }
  }
}

/** Local Rule E-5: the nearest fairway not nearer the hole than where the ball went out, or the general area there. */
function* nearFairway(places: Places, at: number): Generator<number> {
  const away = (places.toPin[at] as number) - NOT_NEARER_TOLERANCE
  let nearest = -1
  let least = Number.POSITIVE_INFINITY
  for (let place = 0; place < places.coarseCount; place++) {
    if (places.ground[place] !== FAIRWAY || (places.toPin[place] as number) < away) continue
    const reach = Math.hypot(
      (places.x[place] as number) - (places.x[at] as number),
      (places.y[place] as number) - (places.y[at] as number),
    )
    if (reach >= least) continue
    least = reach
    nearest = place
  }
  if (nearest >= 0) yield nearest
  const ground = groundOf(places, at)
  if (!NOT_PLAYABLE.has(ground) && ground !== 'bunker' && ground !== 'green') yield at
}

/** The place for a ball dropped at a point: the nearest cell with the ground that the survey has there; −1 where no ball may be dropped. */
function dropAt(places: Places, point: Point): number {
  const [x, y] = point
  const place = placeAt(places, x, y)
  const around = neighbours(places, x, y)
  const isPlain = around.every((other) => places.ground[other] === places.ground[place])
  const ground = isPlain ? groundOf(places, place) : places.outlines.groundAt(point)
  if (NOT_PLAYABLE.has(ground)) return -1
  if (groundOf(places, place) === ground) return place
  let nearest = -1
  let least = Number.POSITIVE_INFINITY
  for (const other of around) {
    const reach = Math.hypot((places.x[other] as number) - x, (places.y[other] as number) - y)
    // Two cells as near as each other, one each side: a mirrored hole must choose the mirrored one, so the better ground of neither decides.
    if (groundOf(places, other) !== ground || reach >= least - NOT_NEARER_TOLERANCE) continue
    least = reach
    nearest = other
  }
  return nearest
}

/** The eight places around a point, a cell away. */
function neighbours(places: Places, x: number, y: number): number[] {
  const step = places.coarse.resolution
  return AROUND.map(([column, row]) => placeAt(places, x + column * step, y + row * step))
}

const AROUND: readonly Point[] = [
  [0, -1],
  [-1, 0],
  [1, 0],
  [0, 1],
  [-1, -1],
  [1, -1],
  [-1, 1],
  [1, 1],
]

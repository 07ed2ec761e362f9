import { groundCode } from '#golf/course/ground.ts'
import { type ReliefOption, type ReliefSituation, reliefOptions } from '#golf/rules/relief-options.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { AT_REST, IN_RED, IN_YELLOW, OUT_OF_BOUNDS } from './outcome.ts'
import { type Places, placeAt } from './places.ts'
import { BACK_ON_LINE_METRES, CLUB_LENGTH_METRES } from './settings.ts'

const NOT_PLAYABLE: ReadonlySet<number> = new Set(
  ['out', 'penalty-red', 'penalty-yellow'].map((g) => groundCode(g as 'out')),
)
const FAIRWAY = groundCode('fairway')
const DIRECTIONS = 16
/** Positions rounded this finely decide "not nearer the hole"; a mirrored hole must decide alike. */
const NOT_NEARER_TOLERANCE = 1e-9

/** A way to drop the ball elsewhere under penalty, with the places where it may be dropped. */
export interface Relief {
  readonly penaltyStrokes: number
  readonly places: Int32Array
}

/**
 * Where a ball may be dropped, stroke and distance aside. `kind` is the outcome's kind, `at` the place of crossing, or
 * of rest for an unplayable ball. Which options there are, and what they cost, is for the Rules to say.
 */
export function reliefPlaces(
  places: Places,
  pin: Point,
  kind: number,
  at: number,
  localRules: readonly string[],
): Relief[] {
  return reliefOptions({ situation: SITUATIONS[kind] as ReliefSituation, localRules }).flatMap((option) => {
    const found = new Set<number>(dropPlaces(places, pin, option, at))
    return found.size === 0 ? [] : [{ penaltyStrokes: option.penaltyStrokes, places: Int32Array.from(found) }]
  })
}

const SITUATIONS: Readonly<Record<number, ReliefSituation>> = {
  [AT_REST]: 'unplayable',
  [IN_RED]: 'penalty-red',
  [IN_YELLOW]: 'penalty-yellow',
  [OUT_OF_BOUNDS]: 'out',
}

function dropPlaces(places: Places, pin: Point, option: ReliefOption, at: number): Iterable<number> {
  switch (option.kind) {
    case 'back-on-the-line':
      return backOnTheLine(places, pin, at)
    case 'lateral':
      return lateral(places, pin, at, (option.clubLengths ?? 0) * CLUB_LENGTH_METRES)
    case 'local-rule-E-5':
      return nearFairway(places, at)
    default:
      return []
  }
}

function* backOnTheLine(places: Places, pin: Point, at: number): Generator<number> {
  const x = places.x[at] as number
  const y = places.y[at] as number
  const away = Math.hypot(x - pin[0], y - pin[1])
  if (away === 0) return
  for (const back of BACK_ON_LINE_METRES) {
    const place = placeAt(places, x + ((x - pin[0]) / away) * back, y + ((y - pin[1]) / away) * back)
    if (isDropPlace(places, place) && (places.toPin[place] as number) >= away - NOT_NEARER_TOLERANCE)
      yield place
  }
}

function* lateral(places: Places, pin: Point, at: number, farthest: number): Generator<number> {
  const x = places.x[at] as number
  const y = places.y[at] as number
  const away = Math.hypot(x - pin[0], y - pin[1]) - NOT_NEARER_TOLERANCE
  // Directions are counted from the line to the pin to both sides, so that a mirrored hole tries mirrored spots.
  const toPin = Math.atan2(pin[0] - x, pin[1] - y)
  for (let step = -DIRECTIONS / 2; step < DIRECTIONS / 2; step++) {
    const heading = toPin + ((step + 0.5) * 2 * Math.PI) / DIRECTIONS
    for (const reach of [farthest / 2, farthest]) {
      const dropX = x + reach * Math.sin(heading)
      const dropY = y + reach * Math.cos(heading)
      if (Math.hypot(dropX - pin[0], dropY - pin[1]) < away) continue
      const place = placeAt(places, dropX, dropY)
      if (isDropPlace(places, place)) yield place
    }
  }
}

/** Local Rule E-5: the nearest fairway not nearer the hole than where the ball went out. */
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
  if (isDropPlace(places, at)) yield at
}

function isDropPlace(places: Places, place: number): boolean {
  return !NOT_PLAYABLE.has(places.ground[place] as number)
}

import { groundCode } from '#golf/course/ground.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { AT_REST, IN_RED, OUT_OF_BOUNDS } from './outcome.ts'
import { type Places, placeAt } from './places.ts'
import { BACK_ON_LINE_METRES, CLUB_LENGTH_METRES } from './settings.ts'

const NOT_PLAYABLE: ReadonlySet<number> = new Set(
  ['out', 'penalty-red', 'penalty-yellow'].map((g) => groundCode(g as 'out')),
)
const FAIRWAY = groundCode('fairway')
const DIRECTIONS = 16
/** Positions rounded this finely decide "not nearer the hole"; a mirrored hole must decide alike. */
const NOT_NEARER_TOLERANCE = 1e-9

/**
 * Where a ball may be dropped for one penalty stroke (two for the Local Rule of balls out of bounds), stroke and
 * distance aside. `kind` is the outcome's kind, `at` the place of crossing, or of rest for an unplayable ball.
 *
 * Rules of Golf 2023, 17.1d and 19.2: back on the line for all; lateral within two club-lengths, not nearer the
 * hole, for red penalty areas and unplayable balls. Out of bounds has none but Local Rule E-5.
 */
export function reliefPlaces(
  places: Places,
  pin: Point,
  kind: number,
  at: number,
  hasLocalRuleE5: boolean,
): Int32Array {
  if (kind === OUT_OF_BOUNDS)
    return hasLocalRuleE5 ? Int32Array.from(localRulePlaces(places, at)) : new Int32Array(0)
  const found = new Set<number>(backOnTheLine(places, pin, at))
  if (kind === IN_RED || kind === AT_REST) for (const place of lateral(places, pin, at)) found.add(place)
  return Int32Array.from(found)
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

function* lateral(places: Places, pin: Point, at: number): Generator<number> {
  const x = places.x[at] as number
  const y = places.y[at] as number
  const away = Math.hypot(x - pin[0], y - pin[1]) - NOT_NEARER_TOLERANCE
  // Directions are counted from the line to the pin to both sides, so that a mirrored hole tries mirrored spots.
  const toPin = Math.atan2(pin[0] - x, pin[1] - y)
  for (let step = -DIRECTIONS / 2; step < DIRECTIONS / 2; step++) {
    const heading = toPin + ((step + 0.5) * 2 * Math.PI) / DIRECTIONS
    for (const reach of [CLUB_LENGTH_METRES, 2 * CLUB_LENGTH_METRES]) {
      const dropX = x + reach * Math.sin(heading)
      const dropY = y + reach * Math.cos(heading)
      if (Math.hypot(dropX - pin[0], dropY - pin[1]) < away) continue
      const place = placeAt(places, dropX, dropY)
      if (isDropPlace(places, place)) yield place
    }
  }
}

/** Local Rule E-5: the nearest fairway not nearer the hole than where the ball went out. */
function* localRulePlaces(places: Places, at: number): Generator<number> {
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

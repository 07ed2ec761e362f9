import { GROUND_CLASSES, type Ground } from '#golf/course/ground.ts'
import { lieEffect } from '#golf/player/lie-effects.ts'
import type { Lie } from '#golf/player/player.ts'
import type { Spot } from '#golf/round/follow-hole.ts'
import type { FinishLetter, RoundHole, RoundStroke } from '#golf/round/round.ts'
import { FINISH_SD_METRES, FINISH_SD_SHARE, PACED_SD_METRES, PACED_SD_SHARE } from '#golf/round/settings.ts'
import { calmHeading } from '#golf/strategy/finishes.ts'
import { centreToday, type HoleModel } from '#golf/strategy/hole-model.ts'
import { lieOfGround } from '#golf/strategy/lie-of-ground.ts'
import { AT_REST, IN_RED, OUT_OF_BOUNDS, outcomeKind, outcomePlace } from '#golf/strategy/outcome.ts'
import { isNearGreen } from '#golf/strategy/plan-near-green.ts'
import { restPoint } from '#golf/strategy/rest-point.ts'
import { shotTable } from '#golf/strategy/shot-table.ts'
import { type Shot, shotsOf } from '#golf/strategy/shots.ts'
import { strikePattern } from '#golf/strategy/strike-pattern.ts'
import { strokeEnds } from '#golf/strategy/stroke-ends.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { pointAlong } from '#numbers/geometry/polyline.ts'
import { normalQuantile } from '#numbers/statistics/normal.ts'

/** How a simulated round is written down: places tapped on a picture, or letters with paced distances. */
export type Logging = 'places' | 'letters'

/** A simulated player's plain way of playing: far from a tee, else the club for the distance, straight at the flag. */
export function aimFrom(
  model: HoleModel,
  shots: readonly Shot[],
  from: Spot,
): { shot: Shot; heading: number } {
  const { hole, player } = model
  const stock = shots.filter(
    ({ shape, club }) => shape === 'stock' && lieEffect(from.lie, club, player).allowed,
  )
  const left = distance(from.point, hole.pin)
  const isDrive = from.lie === 'tee' && hole.par > 3
  const fits = (shot: Shot): number =>
    isDrive
      ? -shot.stock.totalMetres
      : Math.abs(shot.stock.totalMetres * lieEffect(from.lie, shot.club, player).carry - left)
  const shot = stock.reduce((best, one) => (fits(one) < fits(best) ? one : best))
  const target = isDrive ? pointAlong(hole.line, shot.stock.totalMetres) : hole.pin
  const bearing = Math.atan2(target[0] - from.point[0], target[1] - from.point[1])
  return { shot, heading: calmHeading(model, shot, bearing) }
}

/** Most strokes of the full game on a hole: after them the ball is picked up. */
const MOST_STROKES = 9

/**
 * Plays the full game of a hole: `truth` is the model of the hole with the true player on it, who believes to be `believed`
 * and chooses as such. Every strike is drawn, goes by wind, trees and ground, and is written down as well as a person can.
 */
export function playLoggedHole(
  truth: HoleModel,
  believed: HoleModel,
  logging: Logging,
  random: () => number,
): RoundHole {
  const { hole, places, costs } = truth
  const [trueShots, shots] = [shotsOf(truth.player), shotsOf(believed.player)]
  const strokes: RoundStroke[] = []
  let at: Spot = { point: [0, 0], lie: 'tee', ground: 'tee' }
  while (at.lie !== 'green' && !isNearGreen({ x: at.point[0], y: at.point[1], lie: at.lie }, hole)) {
    if (strokes.length >= MOST_STROKES) return ended(true)
    const { shot, heading } = aimFrom(believed, shots, at)
    const own = trueShots.find((one) => one.club === shot.club && one.shape === 'stock') as Shot
    at = stroke(own, shot, heading, at)
  }
  return ended(false)

  function ended(isPickedUp: boolean): RoundHole {
    return {
      ref: hole.ref,
      strokes,
      putts: isPickedUp ? 0 : 2,
      firstPuttMetres: null,
      isPickedUp,
      place: 'study',
    }
  }

  function stroke(own: Shot, shot: Shot, heading: number, from: Spot): Spot {
    const directionShare = Float64Array.of(inside(random()), inside(random()))
    const carryDeviate = Float64Array.of(normal(random), normal(random))
    const strikes = { count: 2, goodCount: 1, directionShare, carryDeviate }
    const { player, today, flights, rest, canopy: growth } = truth
    const input = { shot: own, lie: from.lie, heading, player, today, flights, strikes, rest, places, growth }
    const pattern = strikePattern(input)
    const table = shotTable({ ...input, pattern })
    const ends = strokeEnds(truth, table, from.point[0], from.point[1])
    const strike = random() < pattern.mishitShare ? 1 : 0
    let left = random() * (table.weight[strike] as number)
    let end = -1
    for (let k = 0; k < ends.count && left >= 0; k++) {
      if (ends.strike[k] !== strike) continue
      end = k
      left -= ends.weight[k] as number
    }
    const outcome = ends.outcome[end] as number
    const kind = outcomeKind(places, outcome)
    const chance = random()
    const { offset_m } = aimAt(believed, shot, heading, from)
    const add = (finish: RoundStroke['finish'], penalty: number, lie: Lie | null): void => {
      strokes.push({
        club: shot.club,
        aimOffsetMetres: offset_m,
        from: from.lie,
        finish,
        lie,
        penalty,
        isAsPlanned: logging === 'letters',
        place: `stroke ${strokes.length + 1}`,
      })
    }
    if (kind === AT_REST && (costs.isSpecial[outcome] === 0 || chance < (costs.played[outcome] as number))) {
      const spot = spotAt(restPoint(places, ends, end), outcomePlace(places, outcome))
      add(written(spot, from), 0, spot.lie)
      return spot
    }
    const crossing = outcomePlace(places, outcome)
    const ground = groundAt(crossing)
    if (kind === AT_REST || kind === OUT_OF_BOUNDS || lieOfGround(ground) === null) {
      const isLost =
        kind === OUT_OF_BOUNDS ||
        chance < (costs.played[outcome] as number) + (costs.returned[outcome] as number)
      add(
        isLost || logging === 'letters'
          ? { letter: 'o', leftMetres: null }
          : { x: from.point[0], y: from.point[1] },
        1,
        from.lie,
      )
      return from
    }
    const crossed: Point = [places.x[crossing] as number, places.y[crossing] as number]
    const drop =
      kind === IN_RED
        ? spotAt(crossed, crossing)
        : { ...spotAt(behind(crossed), crossing), lie: 'rough' as const }
    add(
      logging === 'letters' ? { letter: 'p', leftMetres: paced(drop.point) } : noisy(drop.point, 0),
      1,
      drop.lie,
    )
    return drop
  }

  function groundAt(place: number): Ground {
    return GROUND_CLASSES[places.ground[place] as number] as Ground
  }

  function spotAt(point: Point, place: number): Spot {
    const ground = groundAt(place)
    return { point, lie: lieOfGround(ground) ?? 'rough', ground }
  }

  /** Five metres back on the line from the pin. */
  function behind(point: Point): Point {
    const away = distance(point, hole.pin)
    const share = (away + 5) / away
    return [hole.pin[0] + share * (point[0] - hole.pin[0]), hole.pin[1] + share * (point[1] - hole.pin[1])]
  }

  function written({ point, ground }: Spot, from: Spot): RoundStroke['finish'] {
    if (logging === 'places') return noisy(point, distance(point, from.point))
    return { letter: LETTER_OF[ground] ?? 'r', leftMetres: paced(point) }
  }

  function noisy([x, y]: Point, reach: number): { x: number; y: number } {
    const sd = Math.hypot(FINISH_SD_METRES, FINISH_SD_SHARE * reach)
    return { x: x + sd * normal(random), y: y + sd * normal(random) }
  }

  function paced(point: Point): number {
    const left = distance(point, hole.pin)
    return Math.max(0, Math.round(left + Math.hypot(PACED_SD_METRES, PACED_SD_SHARE * left) * normal(random)))
  }
}

/** Where a line passes beside the hole line's first leg at the club's stock total, as a plan gives it. */
function aimAt(
  model: HoleModel,
  shot: Shot,
  heading: number,
  { point }: Spot,
): { readonly offset_m: number } {
  const { heading: centre } = centreToday(model, shot, heading)
  return { offset_m: point[0] + shot.stock.totalMetres * Math.sin(centre) }
}

const LETTER_OF: Partial<Readonly<Record<Ground, Exclude<FinishLetter, 'o' | 'p'>>>> = {
  fairway: 'f',
  path: 'f',
  tee: 'f',
  'first-cut': 'c',
  fringe: 'c',
  rough: 'r',
  heavy: 'h',
  bunker: 'b',
  green: 'g',
  trees: 'x',
  scrub: 'x',
}

function normal(random: () => number): number {
  return normalQuantile(inside(random()))
}

function inside(share: number): number {
  return Math.min(1 - 1e-12, Math.max(1e-12, share))
}

import { lieEffect } from '#golf/player/lie-effects.ts'
import type { StruckWay } from '#golf/player/shot-record.ts'
import type { HoleModel } from '#golf/strategy/hole-model.ts'
import { AT_REST, outcomeKind } from '#golf/strategy/outcome.ts'
import { restPoint } from '#golf/strategy/rest-point.ts'
import { shotTable } from '#golf/strategy/shot-table.ts'
import type { Shot } from '#golf/strategy/shots.ts'
import { patternOf } from '#golf/strategy/strike-pattern.ts'
import { type StrokeEnds, strokeEnds } from '#golf/strategy/stroke-ends.ts'
import { distance } from '#numbers/geometry/point.ts'
import { lowDiscrepancyPoints } from '#numbers/statistics/low-discrepancy.ts'
import { degreesToRadians, radiansToDegrees } from '#numbers/units/units.ts'
import type { Spot } from './follow-hole.ts'
import { WAYS } from './settings.ts'

/** A stroke of which the end is known. */
export interface StruckQuestion {
  readonly model: HoleModel
  readonly from: Spot
  readonly shot: Shot
  /** Line aimed at, wind taken out, radians: as of a candidate. */
  readonly heading: number
  /** False: the heading is where the ball went, and nobody knows where it was aimed. */
  readonly hasLine: boolean
  /**
   * How likely what was written is of one end, 0 to 1. `blur` widens what is known of places so many times, so that ways are
   * found before they are looked at closely.
   */
  readonly likelihood: (ends: StrokeEnds, end: number, blur: number) => number
}

/** Carries from the lie, metres, and directions off the heading, radians, in which ways are looked for. */
interface Box {
  readonly carry: readonly [number, number]
  readonly offLine: readonly [number, number]
}

/** A way in a box, its likelihoods for the strike alone. */
interface LaidWay {
  readonly carry: number
  readonly offLine: number
  readonly perRun: number
  readonly ifGood: number
  readonly ifMishit: number
}

/**
 * All ways in which a ball may have been struck to end as it was written down, by the ground, the wind and the trees of the
 * hole. Nothing of the player's pattern is in them but the stock run, so a ball that a bunker or water stopped says what it
 * can and no more. Empty when no strike of the club ends so.
 */
export function struckWays(question: StruckQuestion): StruckWay[] {
  const { shot, model, from, hasLine } = question
  const widest = degreesToRadians(hasLine ? WAYS.widestDegrees : WAYS.linelessDegrees)
  const today = lieEffect(from.lie, shot.stock.name, model.player, { rough: model.today.rough })
  // Learning divides out what the lie does on a day of normal rough.
  const normal = lieEffect(from.lie, shot.stock.name, model.player)
  let box: Box = { carry: [0, WAYS.longestShare * shot.stock.carryMetres], offLine: [-widest, widest] }
  for (const blur of WAYS.blurs.slice(0, -1)) {
    const laid = layOut(question, box, pointsFor(box, shot, today.direction), blur)
    const most = mostLikely(laid)
    if (most === 0) return []
    box = boxAbout(
      laid.filter((way) => likelihoodOf(way) > WAYS.leastInBox * most),
      box,
      laid.length,
    )
  }
  const laid = layOut(question, box, pointsFor(box, shot, today.direction), WAYS.blurs.at(-1) ?? 1)
  const most = mostLikely(laid)
  if (most < WAYS.leastLikely) return []
  const metres = (box.carry[1] - box.carry[0]) / laid.length
  // Where no line is known all directions are one way: the density is by the metre alone.
  const each = hasLine ? metres * radiansToDegrees(box.offLine[1] - box.offLine[0]) : metres
  return laid
    .filter((way) => likelihoodOf(way) > WAYS.leastKept * most)
    .map(({ carry, offLine, perRun, ifGood, ifMishit }) => ({
      carryMetres: (carry * normal.carry) / today.carry,
      carryPerRun: (perRun * normal.carry) / today.carry,
      directionDegrees: hasLine ? (radiansToDegrees(offLine) * normal.direction) / today.direction : null,
      ifGood: each * ifGood,
      ifMishit: each * ifMishit,
    }))
}

function likelihoodOf({ ifGood, ifMishit }: LaidWay): number {
  return Math.max(ifGood, ifMishit)
}

function mostLikely(laid: readonly LaidWay[]): number {
  return laid.reduce((most, way) => Math.max(most, likelihoodOf(way)), 0)
}

/** As many points as a smooth pattern asks for in a box; an even number. */
function pointsFor({ carry, offLine }: Box, { stock }: Shot, lieDirection: number): number {
  const carries = (carry[1] - carry[0]) / (WAYS.spacing * stock.carrySdShare * stock.carryMetres)
  const line = degreesToRadians(stock.directionSdDegrees) * lieDirection
  const lines = (offLine[1] - offLine[0]) / (WAYS.spacing * line)
  return 2 * Math.ceil(Math.min(WAYS.mostPoints, Math.max(WAYS.leastPoints, carries * lines)) / 2)
}

/** The box about some ways of a larger one, with the room that points leave between them. */
function boxAbout(ways: readonly LaidWay[], { carry, offLine }: Box, points: number): Box {
  const about = (values: readonly number[], [low, high]: readonly [number, number]): [number, number] => {
    const room = (high - low) / Math.sqrt(points)
    return [Math.max(low, Math.min(...values) - room), Math.min(high, Math.max(...values) + room)]
  }
  return {
    carry: about(
      ways.map((way) => way.carry),
      carry,
    ),
    offLine: about(
      ways.map((way) => way.offLine),
      offLine,
    ),
  }
}

/** Lays strikes all over a box, each as a good one and as a mishit, and asks how likely each is to end as written. */
function layOut(question: StruckQuestion, box: Box, size: number, blur: number): LaidWay[] {
  const { model, from, shot, heading, likelihood } = question
  const points = lowDiscrepancyPoints(size)
  const count = 2 * size
  const place = (range: readonly [number, number], first: 0 | 1): Float64Array =>
    Float64Array.from({ length: count }, (_, k) => {
      const share = points[2 * (k % size) + first] as number
      return range[0] + share * (range[1] - range[0])
    })
  const offLine = place(box.offLine, 0)
  const carry = place(box.carry, 1)
  const none = new Float64Array(count)
  const struck = {
    shot,
    lie: from.lie,
    player: model.player,
    today: model.today,
    strikes: { count, goodCount: size, directionShare: none, carryDeviate: none },
  }
  const table = shotTable({
    ...struck,
    pattern: patternOf(struck, { offLine, carry, mishitShare: 0.5 }),
    heading,
    flights: model.flights,
    rest: model.rest,
    places: model.places,
    growth: model.canopy,
  })
  const ends = strokeEnds(model, table, from.point[0], from.point[1])
  const likely = new Float64Array(count)
  const ran = new Float64Array(count)
  for (let end = 0; end < ends.count; end++) {
    const k = ends.strike[end] as number
    const share = (ends.weight[end] as number) / (table.weight[k] as number)
    const chance = share * likelihood(ends, end, blur)
    likely[k] = (likely[k] as number) + chance
    ran[k] = (ran[k] as number) + chance * runOf(model, ends, end)
  }
  const stockRun = shot.stock.totalMetres - shot.stock.carryMetres
  return Array.from({ length: size }, (_, k): LaidWay => {
    const [ifGood, ifMishit] = [likely[k] as number, likely[k + size] as number]
    const run = ((ran[k] as number) + (ran[k + size] as number)) / Math.max(ifGood + ifMishit, 1e-300)
    return {
      carry: carry[k] as number,
      offLine: offLine[k] as number,
      perRun: stockRun > 0 ? run / stockRun / table.change.carryShare : 0,
      ifGood,
      ifMishit,
    }
  })
}

/** How far a ball ran, metres; none where it was caught or came to grief. */
function runOf({ places }: HoleModel, ends: StrokeEnds, end: number): number {
  if (ends.isCaught[end] === 1 || outcomeKind(places, ends.outcome[end] as number) !== AT_REST) return 0
  return distance(restPoint(places, ends, end), [ends.x[end] as number, ends.y[end] as number])
}

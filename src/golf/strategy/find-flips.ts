import type { Day } from '#golf/course/day.ts'
import { withSpread } from '#golf/player/with-spread.ts'
import { polygonBounds } from '#numbers/geometry/polygon.ts'
import type { Candidate, Situation } from './evaluate-stroke.ts'
import { holeGround } from './hole-model.ts'
import { hazardName, type MainHazard } from './main-hazard.ts'
import { type Change, evaluateNeighbour, type SolvedHole } from './neighbour.ts'
import type { Flip } from './plan.ts'
import { watchedGround } from './watched-ground.ts'

/** One quantity that may change the plan: how it changes things, from 0 (as it is) to `most`. */
interface Quantity {
  readonly what: string
  readonly unit: string
  readonly direction: string
  readonly area?: string
  readonly most: number
  readonly change: (amount: number) => Change
  /** The figure reported for an amount. */
  readonly report: (amount: number) => number
}

/** Furthest that each quantity is tried. Our assumption of a sensible range. */
const MOST_WIND = 10
const MOST_HAZARD_METRES = 40
const LEAST_SPREAD = 0.6
const MOST_SPREAD = 1.6
const SOFT = 0.4
const FIRM = 1.7
/** Halvings of the interval in which the best club changes. */
const HALVINGS = 4

/**
 * For wind, firmness, the main hazard's distance and the player's spread: the nearest value at which another club
 * becomes the best, with that club; `at: null` when none does within the sensible range. Each trial settles the hole
 * anew over the actions that the solved one kept. The figure is the amount of the change (wind, hazard) or the new
 * value itself (firmness, spread).
 */
export function findFlips(
  solved: SolvedHole,
  situation: Situation,
  best: readonly Candidate[],
  hazard: MainHazard | null,
): Flip[] {
  return quantitiesOf(solved, hazard, best[0]?.shot.stock.totalMetres ?? 0).map((quantity) =>
    findFlip(solved, situation, best, quantity),
  )
}

function findFlip(
  solved: SolvedHole,
  situation: Situation,
  best: readonly Candidate[],
  quantity: Quantity,
): Flip {
  const { what, unit, direction, area } = quantity
  const named = { what, unit, direction, ...(area === undefined ? {} : { area }) }
  const club = best[0]?.shot.club
  const bestAt = (amount: number): string => {
    const { candidates } = evaluateNeighbour(solved, quantity.change(amount), situation, best, false)
    return candidates.reduce((least, one) => (one.strokes < least.strokes ? one : least)).shot.club
  }
  let low = 0
  let high = quantity.most / 2
  let other = bestAt(high)
  if (other === club) {
    low = high
    high = quantity.most
    other = bestAt(high)
  }
  if (other === club) return { ...named, at: null, club: null }
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (low + high) / 2
    const there = bestAt(middle)
    if (there === club) low = middle
    else {
      high = middle
      other = there
    }
  }
  return { ...named, at: quantity.report(high), club: other }
}

function quantitiesOf(solved: SolvedHole, hazard: MainHazard | null, stockTotal: number): Quantity[] {
  const { day, player, ground } = solved
  const windFrom = (relativeDegrees: number): ((amount: number) => Change) => {
    return (amount) => ({ day: withMoreWind(day, ground.hole.bearingDegrees + relativeDegrees, amount) })
  }
  const wind = { what: 'wind', unit: 'm/s', most: MOST_WIND, report: (amount: number) => amount }
  const firmness = (most: number): Pick<Quantity, 'what' | 'unit' | 'most' | 'change' | 'report'> => ({
    what: 'firmness',
    unit: '×',
    most: 1,
    change: (amount) => ({ day: { ...day, firmness: day.firmness + (most - day.firmness) * amount } }),
    report: (amount) => day.firmness + (most - day.firmness) * amount,
  })
  const spread = (most: number): Pick<Quantity, 'what' | 'unit' | 'most' | 'change' | 'report'> => ({
    what: 'spread',
    unit: '×',
    most: 1,
    change: (amount) => ({ player: withSpread(player, 1 + (most - 1) * amount) }),
    report: (amount) => 1 + (most - 1) * amount,
  })
  const quantities: Quantity[] = [
    { ...wind, direction: 'into', change: windFrom(0) },
    { ...wind, direction: 'behind', change: windFrom(180) },
    { ...wind, direction: 'from the left', change: windFrom(270) },
    { ...wind, direction: 'from the right', change: windFrom(90) },
    { ...firmness(SOFT), direction: 'softer' },
    { ...firmness(FIRM), direction: 'firmer' },
    { ...spread(LEAST_SPREAD), direction: 'tighter' },
    { ...spread(MOST_SPREAD), direction: 'wider' },
  ]
  return hazard ? [...quantities, ...hazardQuantities(solved, hazard, stockTotal)] : quantities
}

/**
 * Moves of the main hazard: along the first leg, nearer and further; or, when it begins well short of where the ball
 * comes down and runs beside the hole, across it, since further on it would lie there as before.
 */
function hazardQuantities(solved: SolvedHole, hazard: MainHazard, stockTotal: number): Quantity[] {
  const begins = polygonBounds(hazard.area.polygon).minY
  const isAlongside = hazard.side !== 'across' && begins < ALONGSIDE_SHARE * stockTotal
  const outwards = hazard.side === 'left' ? -1 : 1
  const moves = isAlongside
    ? ([
        ['wider of the line', [outwards, 0]],
        ['nearer the line', [-outwards, 0]],
      ] as const)
    : ([
        ['further', [0, 1]],
        ['nearer', [0, -1]],
      ] as const)
  return moves.map(([direction, [x, y]]) => ({
    what: `hazard:${hazardName(hazard)}`,
    unit: 'm',
    direction,
    area: hazard.area.id,
    most: MOST_HAZARD_METRES,
    change: (amount) => ({ ground: withHazardMoved(solved, hazard, [x * amount, y * amount]) }),
    report: (amount) => amount,
  }))
}

/** A hazard beside the hole that begins before this share of the shot's total runs alongside. Our assumption. */
const ALONGSIDE_SHARE = 0.6

/** Adds a wind from a true bearing to the wind of a day. */
function withMoreWind(day: Day, fromDegrees: number, speed: number): Day {
  const parts = [
    { speed: day.wind.speedMetresPerSecond, from: day.wind.fromDegrees },
    { speed, from: fromDegrees },
  ].map((wind) => ({
    east: wind.speed * Math.sin((wind.from * Math.PI) / 180),
    north: wind.speed * Math.cos((wind.from * Math.PI) / 180),
  }))
  const east = parts.reduce((sum, part) => sum + part.east, 0)
  const north = parts.reduce((sum, part) => sum + part.north, 0)
  const wind = {
    speedMetresPerSecond: Math.hypot(east, north),
    fromDegrees: (Math.atan2(east, north) * 180) / Math.PI,
  }
  return { ...day, wind }
}

/** The hole with one hazard moved, metres in the hole frame. */
function withHazardMoved(
  solved: SolvedHole,
  hazard: MainHazard,
  [byX, byY]: readonly [number, number],
): SolvedHole['ground'] {
  const { hole, places, lookUp } = solved.ground
  const areas = hole.areas.map((area) =>
    area.id === hazard.area.id
      ? { ...area, polygon: area.polygon.map((ring) => ring.map(([x, y]) => [x + byX, y + byY] as const)) }
      : area,
  )
  return watchedGround(holeGround({ ...hole, areas }, places.coarse.resolution), lookUp)
}

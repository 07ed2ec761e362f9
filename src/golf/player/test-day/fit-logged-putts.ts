import { greenSlowing } from '#golf/ball/green-slowing.ts'
import { captureWidth } from '#golf/ball/hole-pass.ts'
import { normalPdf } from '#numbers/statistics/normal.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import type { LoggedPutt } from '../logged-near-green.ts'
import { PUTTING_GREEN_SPEED_FEET } from '../near-green-settings.ts'
import type { Putting } from '../player.ts'
import { puttOutcomes } from '../putt-outcomes.ts'
import { cheapestPace } from '../struck-putts.ts'
import { LOGGED_LENGTH_SD } from './test-day-settings.ts'
import { type WeighedPutting, weighPutting } from './weigh-putting.ts'

/** A logged putt and how much it counts, 0 to 1. */
export interface CountedPutt extends LoggedPutt {
  readonly weight: number
}

/**
 * The posterior of both putting spreads after putts of rounds. So many putts from a length count with their chance: of the
 * first, of the second from where the first may have stopped, or of more. A miss that was measured counts with the density
 * of its stop among balls that do not fall. Lengths were paced: each is taken at three lengths about the written one.
 */
export function fitLoggedPutts(putting: Putting, putts: readonly CountedPutt[]): readonly WeighedPutting[] {
  const counted = putts.flatMap(({ metres, end, weight }) =>
    'putts' in end ? [{ lengths: pacedLengths(metres), putts: end.putts, weight }] : [],
  )
  const measured = putts.flatMap(({ metres, end, weight }) =>
    'putts' in end ? [] : [{ metres, stops: stopsAt(putting, metres, end.leftMetres), weight }],
  )
  const paces = LENGTHS.map((metres) => cheapestPace(putting, metres))
  return weighPutting(putting, (whole) => {
    const shares = counted.length === 0 ? null : holedShares(whole, paces)
    let sum = 0
    for (const { lengths, putts: count, weight } of counted)
      sum += weight * Math.log(meanOver(lengths, (length) => Math.max(LEAST, shares?.(length, count) ?? 1)))
    for (const { stops, metres, weight } of measured)
      sum += weight * Math.log(Math.max(LEAST, stopDensity(whole, metres, stops)))
    return sum
  })
}

const LEAST = 1e-9

/** A length with its chance among those that may have been meant. */
type Paced = readonly { readonly metres: number; readonly chance: number }[]

/** Three-point Gauss–Hermite rule. */
const PACED = [
  { sds: -Math.sqrt(3), chance: 1 / 6 },
  { sds: 0, chance: 2 / 3 },
  { sds: Math.sqrt(3), chance: 1 / 6 },
] as const

function pacedLengths(metres: number): Paced {
  const sd = Math.max(LOGGED_LENGTH_SD.metres, LOGGED_LENGTH_SD.share * metres)
  return PACED.map(({ sds, chance }) => ({ metres: Math.max(0.05, metres + sds * sd), chance }))
}

function meanOver(lengths: Paced, of: (metres: number) => number): number {
  return lengths.reduce((sum, { metres, chance }) => sum + chance * of(metres), 0)
}

/** Lengths at which chances are worked out, metres; between them they are straight. */
const LENGTHS = [
  0.05, 0.3, 0.5, 0.7, 0.9, 1.2, 1.5, 1.8, 2.2, 2.6, 3, 3.5, 4, 5, 6, 7.5, 9, 11, 14, 18, 24, 35,
] as const

/** Chance of one, two, or three and more putts by length for these whole errors, meant to roll as the player thought best. */
function holedShares(whole: Putting, paces: readonly number[]): (metres: number, putts: number) => number {
  const outcomes = LENGTHS.map((metres, index) => puttOutcomes(whole, metres, paces[index] as number))
  const one = outcomes.map(({ holed }) => holed)
  const two = outcomes.map(({ restMetres, weight }) =>
    weight.reduce((sum, chance, index) => sum + chance * at(one, restMetres[index] as number), 0),
  )
  return (metres, putts) => {
    if (putts === 1) return at(one, metres)
    return putts === 2 ? at(two, metres) : 1 - at(one, metres) - at(two, metres)
  }
}

function at(values: readonly number[], metres: number): number {
  const above = LENGTHS.findIndex((length) => length >= metres)
  if (above === 0) return values[0] as number
  if (above < 0) return values.at(-1) as number
  const [low, high] = [LENGTHS[above - 1] as number, LENGTHS[above] as number]
  const share = (metres - low) / (high - low)
  return (1 - share) * (values[above - 1] as number) + share * (values[above] as number)
}

/** Places in which a measured miss may have stopped, past and beside the hole, metres, each with its share of the density. */
interface Stops {
  readonly past: number
  readonly places: readonly { readonly beyond: number; readonly aside: number; readonly share: number }[]
}

/** Half a circle: the other side is its mirror. */
const DIRECTIONS = 48
const DECELERATION = greenSlowing(PUTTING_GREEN_SPEED_FEET)

/** Places at about the written distance from the hole, those of balls that it would have taken left out. */
function stopsAt(putting: Putting, metres: number, leftMetres: number): Stops {
  const places = pacedLengths(leftMetres).flatMap(({ metres: left, chance }) =>
    Array.from({ length: DIRECTIONS }, (_, step) => {
      const angle = (Math.PI * (step + 0.5)) / DIRECTIONS
      const [beyond, aside] = [left * Math.cos(angle), left * Math.sin(angle)]
      return { beyond, aside, share: (2 * Math.PI * left * chance) / DIRECTIONS }
    }),
  )
  return {
    past: cheapestPace(putting, metres),
    places: places.filter(({ beyond, aside }) => {
      const passes = (aside * metres) / (metres + Math.max(0, beyond))
      return beyond < 0 || passes > captureWidth(Math.sqrt(2 * DECELERATION * beyond))
    }),
  }
}

/** Density of where a measured miss stopped, 1/m: two independent normal errors, along and across. */
function stopDensity(whole: Putting, metres: number, { past, places }: Stops): number {
  const along = whole.distanceSdShare * (metres + past)
  const across = degreesToRadians(whole.directionSdDegrees) * (metres + past)
  let sum = 0
  for (const { beyond, aside, share } of places)
    sum += share * normalPdf((beyond - past) / along) * normalPdf(aside / across)
  return sum / (along * across)
}

import type { Putting } from './player.ts'
import { puttGivenOutcome } from './putt-given-outcome.ts'
import { puttingValues } from './putting-values.ts'
import { struckPutts } from './struck-putts.ts'

/**
 * How much worse than expected the putts of a hole were struck, strokes, when only their number is known: the mean over all
 * the ways in which this player takes so many from there on a flat green. Over the numbers that a player takes it has the
 * mean 0, so that a putt holed is not called luck while one missed is called a bad stroke. From the third putt on nothing
 * more is told apart. `null` when this player never takes so many.
 */
export function struckGivenCount(putting: Putting, metres: number, count: number): number | null {
  const putts = struckPutts(putting, metres)
  const { shares } = puttingValues({ putting })
  const holedWell = holedTable(putting)
  const kept = new Map<number, { readonly chance: number; readonly second: number }>()
  let likely = 0
  let sum = 0
  for (let stroke = 0; stroke < putts.strokes; stroke++) {
    const first = (putts.worth[stroke] as number) - putts.expected
    for (let reading = 0; reading < putts.readings; reading++) {
      const { chance, second } = afterwards(putts.rest[stroke * putts.readings + reading] as number)
      likely += chance
      sum += chance * (first + second)
    }
  }
  return likely / (putts.strokes * putts.readings) > LEAST_LIKELY ? sum / likely : null

  /** Chance of the putts that are left, and how well the second was struck if so. */
  function afterwards(rest: number): { readonly chance: number; readonly second: number } {
    if (rest < 0) return { chance: count === 1 ? 1 : 0, second: 0 }
    if (count === 1) return MISSED
    const near = Math.round(rest / REST_STEP_METRES)
    const known = kept.get(near)
    if (known !== undefined) return known
    const [one] = shares(rest)
    const holed = at(holedWell, rest)
    // A second putt is struck as expected on average: what is not so good as those holed is what is left.
    const found =
      count === 2
        ? { chance: one, second: holed }
        : { chance: 1 - one, second: one < 1 ? (-one * holed) / (1 - one) : 0 }
    kept.set(near, found)
    return found
  }
}

const MISSED = { chance: 0, second: 0 } as const
const LEAST_LIKELY = 4e-6
/** Rests are told apart by so much, metres. */
const REST_STEP_METRES = 0.05
/** Lengths of a second putt, metres. */
const LENGTHS = [0.2, 0.4, 0.6, 0.8, 1, 1.3, 1.6, 2, 2.5, 3, 4, 5, 7, 10, 15] as const

const tables = new Map<string, readonly number[]>()
const MOST_TABLES = 64

/** How a holed putt was struck on average, strokes against expected, by its length. */
function holedTable(putting: Putting): readonly number[] {
  const key = `${putting.directionSdDegrees} ${putting.distanceSdShare}`
  const known = tables.get(key)
  if (known !== undefined) return known
  if (tables.size >= MOST_TABLES) tables.clear()
  const table = LENGTHS.map((metres) => {
    const { expected, asStruck } = puttGivenOutcome(putting, metres, null)
    return (asStruck ?? expected) - expected
  })
  tables.set(key, table)
  return table
}

function at(table: readonly number[], metres: number): number {
  const above = LENGTHS.findIndex((length) => length >= metres)
  if (above === 0) return ((table[0] as number) * metres) / LENGTHS[0]
  if (above < 0) return table.at(-1) as number
  const [low, high] = [LENGTHS[above - 1] as number, LENGTHS[above] as number]
  const share = (metres - low) / (high - low)
  return (1 - share) * (table[above - 1] as number) + share * (table[above] as number)
}

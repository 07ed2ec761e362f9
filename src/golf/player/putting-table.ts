import { PUTT_PAST_METRES } from './near-green-settings.ts'
import type { Putting } from './player.ts'
import { type PuttOutcomes, puttOutcomes } from './putt-outcomes.ts'

/** Putting on a flat green at the nodes of `PUTT_NODES`: expected putts, chance of one putt and of two. */
export interface PuttingTable {
  readonly expected: Float64Array
  readonly one: Float64Array
  readonly two: Float64Array
}

/** Distances of the table, metres: every 0.1 to 3, every 0.25 to 12, every 1 to 60. */
const PUTT_NODES: Float64Array = Float64Array.from([
  ...Array.from({ length: 30 }, (_, index) => index * 0.1),
  ...Array.from({ length: 36 }, (_, index) => 3 + index * 0.25),
  ...Array.from({ length: 49 }, (_, index) => 12 + index),
])

const MOST_SWEEPS = 60
const TOLERANCE = 1e-10

/**
 * Expected putts by value iteration: at every distance the pace with the fewest expected putts is taken, and what
 * misses is putted from where it stops. The spreads are the whole errors, reading of the green included.
 */
export function puttingTable(putting: Putting): PuttingTable {
  const choices = Array.from(PUTT_NODES, (metres) =>
    PUTT_PAST_METRES.map((past) => puttOutcomes(putting, metres, past)),
  )
  const chosen: PuttOutcomes[] = []
  const expected = new Float64Array(PUTT_NODES.length).fill(2)
  expected[0] = 1
  let change = Number.POSITIVE_INFINITY
  for (let sweep = 0; sweep < MOST_SWEEPS && change > TOLERANCE; sweep += 1) {
    change = 0
    for (let node = 1; node < PUTT_NODES.length; node += 1) {
      let best = Number.POSITIVE_INFINITY
      for (const outcomes of choices[node] ?? []) {
        const strokes = 1 + meanOver(outcomes, expected)
        if (strokes >= best) continue
        best = strokes
        chosen[node] = outcomes
      }
      // A longer putt is never easier: a dip would be quadrature, not golf.
      best = Math.max(best, expected[node - 1] ?? 1)
      change = Math.max(change, Math.abs(best - (expected[node] ?? 0)))
      expected[node] = best
    }
  }
  const one = Float64Array.from(PUTT_NODES, (_, node) => chosen[node]?.holed ?? 1)
  const two = Float64Array.from(PUTT_NODES, (_, node) => {
    const outcomes = chosen[node]
    return outcomes === undefined ? 0 : meanOver(outcomes, one)
  })
  return { expected, one, two }
}

/** Value at `metres` on the straight pieces between the nodes; the last node's beyond the table. */
export function puttingTableAt(values: Float64Array, metres: number): number {
  const place =
    metres < 3
      ? Math.max(0, metres) * 10
      : metres < 12
        ? 30 + (metres - 3) * 4
        : 66 + Math.min(48, metres - 12)
  const low = Math.min(values.length - 2, Math.floor(place))
  const share = place - low
  return (values[low] ?? 0) * (1 - share) + (values[low + 1] ?? 0) * share
}

/** Mean of `values` where the missed balls stop; a holed ball adds nothing. */
function meanOver(outcomes: PuttOutcomes, values: Float64Array): number {
  let sum = 0
  for (let index = 0; index < outcomes.weight.length; index += 1) {
    sum += (outcomes.weight[index] ?? 0) * puttingTableAt(values, outcomes.restMetres[index] ?? 0)
  }
  return sum
}

import type { Conditions } from './conditions.ts'
import { type Flights, flights } from './flights.ts'

/** Flights by the conditions that they are flown in, and for whom: nobody needs another's clubs. */
export type FlightsIn = (conditions: Conditions, player: string) => Flights

/**
 * Flies balls as {@link flights} does and keeps what was flown last in a few conditions: a hazard, a club or a number of the
 * player's that changes leaves the air and the rise of a hole as they were.
 */
export function keptFlights(): FlightsIn {
  // The newest stands last.
  let kept: readonly (readonly [key: string, flown: Flights])[] = []
  return (conditions, player) => {
    const key = JSON.stringify([player, conditions])
    const flown = kept.find(([known]) => known === key)?.[1] ?? flights(conditions)
    const others = kept.filter(([known]) => known !== key)
    kept = [...others.slice(-MOST_KEPT + 1), [key, flown]]
    return flown
  }
}

/** A wind that is pushed to and fro, and one beside it. Our choice: each takes a megabyte or two. */
const MOST_KEPT = 3

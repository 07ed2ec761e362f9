import type { Partners, TeeTurn } from './alternate-shot.ts'
import { MATTERING_HOLE_STROKES, MATTERING_ROUND_STROKES } from './settings.ts'

/** A hole of a foursome's round, by who of the pair tees off. */
export interface FoursomeHole {
  readonly ref: string
  /** Its place in the round, from 0: a hole that is left out is played all the same. */
  readonly place: number
  readonly turns: Partners<TeeTurn>
}

/** Who of a pair tees off at the odd holes of the round, and who at the even ones. */
export interface TeeSplit {
  /** Which of the two takes the odd tees: the first, the third, … of the round. */
  readonly odd: 0 | 1
  /** Expected strokes of the round so, and the other way round. */
  readonly strokes: number
  readonly otherwise: number
  /** Whether it is worth a word at all. */
  readonly matters: boolean
  /** The difference that each hole makes to this split, strokes; negative where it asks for the other partner. */
  readonly saves: readonly number[]
  /** By hole: whether who tees off there is worth a word. */
  readonly hasSay: readonly boolean[]
}

/**
 * The split of the tees that costs a pair fewer strokes: partners tee off alternately, hole by hole (Rules of Golf 2023, Rule
 * 22.3), so the round has two orders and no more. Throws a RangeError without holes.
 */
export function splitTees(holes: readonly FoursomeHole[]): TeeSplit {
  if (holes.length === 0) throw new RangeError('a round has holes')
  const total = (odd: 0 | 1): number =>
    holes.reduce((sum, { turns, place }) => sum + turns[teeingOff(odd, place)].strokes, 0)
  const [first, second] = [total(0), total(1)]
  const odd = first <= second ? 0 : 1
  const saves = holes.map(({ turns, place }) => {
    const who = teeingOff(odd, place)
    return turns[who === 0 ? 1 : 0].strokes - turns[who].strokes
  })
  return {
    odd,
    strokes: Math.min(first, second),
    otherwise: Math.max(first, second),
    matters: Math.abs(first - second) >= MATTERING_ROUND_STROKES,
    saves,
    hasSay: saves.map((strokes) => Math.abs(strokes) >= MATTERING_HOLE_STROKES),
  }
}

/** Who tees off at a hole of the round, counted from 0. */
export function teeingOff(odd: 0 | 1, place: number): 0 | 1 {
  return place % 2 === 0 ? odd : odd === 0 ? 1 : 0
}

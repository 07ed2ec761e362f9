import type { Ground } from '#golf/course/ground.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Lie } from '#golf/player/player.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import type { EmptyRelief, Relief, ReliefPoint, ReliefRow } from '../relief.ts'
import { CLOSE_STROKES, TOO_CLOSE_STROKES } from '../settings.ts'
import type { EmptyChoice, ReliefChoice } from './relief-choice.ts'

/** The spot of an option; `strokes` is `null` where the survey cannot tell what a stroke from there costs. */
export interface ChosenSpot {
  readonly spot: Point
  readonly ground: Ground
  readonly lie: Lie | null
  readonly strokes: number | null
}

type UnrankedRow = Omit<ReliefRow, 'letter' | 'cost'>

/** One option as programs outside read it, before it has its letter. */
export function rowOf(hole: Hole, choice: ReliefChoice, chosen: ChosenSpot): UnrankedRow {
  const { option } = choice
  return {
    kind: option.kind,
    clause: option.clause,
    penalty: option.penaltyStrokes,
    reference: pointOf(choice.reference),
    area_m: choice.areaAt(chosen.spot),
    spot: {
      ...pointOf(chosen.spot),
      ground: chosen.ground,
      lie: chosen.lie,
      to_pin_m: distance(chosen.spot, hole.pin),
    },
    from_spot: chosen.strokes,
    strokes: chosen.strokes === null ? null : option.penaltyStrokes + chosen.strokes,
  }
}

/** Rows cheapest first with their letters and costs, those without a value last, and how sure the first is. */
export function ranked(rows: readonly UnrankedRow[]): Pick<Relief, 'verdict' | 'options'> {
  const strokesOf = (row: UnrankedRow): number => row.strokes ?? Number.POSITIVE_INFINITY
  const sorted = [...rows].sort((a, b) => strokesOf(a) - strokesOf(b) || 0)
  const least = sorted[0]?.strokes ?? null
  const options = sorted.map(
    (row, index): ReliefRow => ({
      letter: String.fromCharCode(FIRST_LETTER + index),
      ...row,
      cost: row.strokes === null || least === null ? null : row.strokes - least,
    }),
  )
  const gap = options[1]?.cost ?? Number.POSITIVE_INFINITY
  const verdict = gap < TOO_CLOSE_STROKES ? 'too-close' : gap < CLOSE_STROKES ? 'close' : 'clear'
  return { verdict, options }
}

/** Code of `A`. */
const FIRST_LETTER = 65

/** An option that gives nothing, as programs outside read it. */
export function emptyOf({ option, reason }: EmptyChoice): EmptyRelief {
  return { kind: option.kind, clause: option.clause, penalty: option.penaltyStrokes, reason }
}

/** A point as programs outside read it. */
export function pointOf([x, y]: Point): ReliefPoint {
  return { x_m: x, y_m: y }
}

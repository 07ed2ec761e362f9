import { PRACTICE_PARTS, type PracticePart } from './improved-player.ts'
import type { PracticeHole } from './practice-hole.ts'
import { PRACTICE_ITEMS, PRACTICE_RATES, TOLD_PRACTICE_STROKES } from './settings.ts'

/** By how much an hour of practice makes each part better, as a share of what it is: the professional's own where stated. */
export type PracticeRates = Readonly<Record<PracticePart, number>>

/** One part of the game, and what practising it is worth on a course. */
export interface PracticeItem {
  readonly part: PracticePart
  /** Share by which an hour makes it better. */
  readonly rate: number
  /** Strokes a round fewer for each hour of practice, while hours are few. */
  readonly strokesAnHour: number
}

/** What practice is worth to a player on a course. */
export interface Practice {
  /** Holes that were weighed, and how often they make a round of eighteen. */
  readonly holes: number
  readonly value: number
  /** Every part, the most rewarding first. */
  readonly parts: readonly PracticeItem[]
  /** At most three of them, those worth saying. */
  readonly items: readonly PracticeItem[]
}

/** Sums up the holes of a course into strokes a round of these holes, part by part. */
export function practiceOf(holes: readonly PracticeHole[], rates: PracticeRates = PRACTICE_RATES): Practice {
  const parts = PRACTICE_PARTS.map((part): PracticeItem => {
    const slope = holes.reduce((sum, { slopes }) => sum + slopes[part], 0)
    return { part, rate: rates[part], strokesAnHour: slope * rates[part] }
  }).sort((a, b) => b.strokesAnHour - a.strokesAnHour)
  return {
    holes: holes.length,
    value: holes.reduce((sum, { value }) => sum + value, 0),
    parts,
    items: parts
      .slice(0, PRACTICE_ITEMS)
      .filter(({ strokesAnHour }) => strokesAnHour >= TOLD_PRACTICE_STROKES),
  }
}

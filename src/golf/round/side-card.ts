import type { BallHole } from './ball-card.ts'
import type { Counting } from './competition.ts'

/** One hole of a side: what it counts, and which of its balls say so. */
export interface SideHole {
  readonly ref: string
  /** `null` = no ball of the side has a score there. */
  readonly counts: number | null
  /** Numbers of the balls that count so, from 0. */
  readonly by: readonly number[]
}

/** A side's card: the better ball of each hole. */
export interface SideCard {
  readonly holes: readonly SideHole[]
  /** Of the holes that were scored; `null` when a hole that had to be holed out was not. A match has none. */
  readonly total: number | null
}

/**
 * The better ball of each hole, holes in the order in which they were logged first: the fewest net strokes, or the most points or the best
 * result against par. Source: Rules of Golf 2023, 23.2 and 21.
 */
export function sideCard(balls: readonly (readonly BallHole[])[], by: Counting): SideCard {
  const refs = [...new Set(balls.flatMap((ball) => ball.map(({ ref }) => ref)))]
  const isMore = by === 'points' || by === 'par'
  const holes = refs.map((ref): SideHole => {
    const counts = balls.map((ball) => ball.find((hole) => hole.ref === ref)?.counts ?? null)
    const scored = counts.filter((one) => one !== null)
    const best = scored.length === 0 ? null : isMore ? Math.max(...scored) : Math.min(...scored)
    return {
      ref,
      counts: best,
      by: best === null ? [] : counts.flatMap((one, ball) => (one === best ? [ball] : [])),
    }
  })
  const isWhole = holes.every(({ counts }) => counts !== null)
  return {
    holes,
    total: by === 'match' || !isWhole ? null : holes.reduce((sum, { counts }) => sum + (counts ?? 0), 0),
  }
}

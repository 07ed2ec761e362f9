import { groundAt } from '#golf/course/ground-at.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Ball } from './desk.ts'

/** Whether a ball is asked about by the Rules before it is played: over an edge with no lie told for it, or so said. */
export function needsRelief(ball: Ball | null, hole: Hole): boolean {
  if (ball === null) return false
  if (ball.said !== null) return true
  return ball.lie === null && OVER_AN_EDGE.has(groundAt(hole, ball.at))
}

const OVER_AN_EDGE: ReadonlySet<string> = new Set(['penalty-red', 'penalty-yellow', 'out'])

import type { Hole } from '#golf/course/hole.ts'
import type { Plan } from '#golf/strategy/plan.ts'

/** One hole of a printed plan: as played, and the plan for it or why there is none. */
export interface BookHole {
  readonly hole: Hole
  readonly plan: Plan | null
  /** Why there is no plan; empty where there is one. */
  readonly missing: string
  /** Handicap strokes received; `null` where the card does not tell. */
  readonly received: number | null
}

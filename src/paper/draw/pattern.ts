import type { OutcomeGround } from '#golf/strategy/plan.ts'

/** Where one club's shot finishes, in the hole frame: places with weights that sum to 1. */
export interface Pattern {
  readonly club: string
  readonly x: Float64Array
  readonly y: Float64Array
  readonly weight: Float64Array
  /** Side of the cell to which each finish is known, metres; absent = exact. Sample finishes are spread over it. */
  readonly cellMetres?: number
  /** The ground of each finish, where known: finishes in trouble are marked with a cross. */
  readonly ground?: readonly OutcomeGround[]
}

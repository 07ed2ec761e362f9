/**
 * A stochastic shortest path: states, actions with a cost and a chance of each next state, and an end that
 * costs nothing more. The value of a state is the least expected cost to the end.
 *
 * The problem knows its actions and its transitions; the solver knows only this interface.
 */
export interface ShortestPathProblem {
  /** Number of values, terminal states included. */
  readonly valueCount: number
  /** States that have a choice, in the order in which they are best visited: nearest the end first. */
  readonly order: Int32Array
  /** First guess of every value, and the final values of the terminal states. */
  startValues(): Float64Array
  /**
   * The least cost over *all* actions of a state for these values. The problem keeps the best few for
   * {@link bestKept}. Costs that return to the same state are solved in closed form, not iterated.
   */
  bestOfAll(state: number, values: Float64Array): number
  /** The least cost over the few actions kept by the last {@link bestOfAll} of this state. */
  bestKept(state: number, values: Float64Array): number
  /** Called before each sweep: whatever the problem derives from the values of all states. */
  beforeSweep?(values: Float64Array): void
}

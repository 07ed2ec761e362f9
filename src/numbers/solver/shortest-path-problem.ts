/**
 * A stochastic shortest path: states, actions with a cost and a chance of each next state, and an end that
 * costs nothing more. The value of a state is the least expected cost to the end.
 *
 * The problem knows its actions and its transitions; the solver knows only this interface. Both sweeps change the
 * values in place and return the largest change of any. Costs that return to the same state are solved in closed
 * form, not iterated.
 */
export interface ShortestPathProblem {
  /** First guess of every value, and the final values of the terminal states. */
  startValues(): Float64Array
  /** Gives every state the least cost over *all* its actions for these values, and keeps the best few of them. */
  improve(values: Float64Array): number
  /** Gives every state the least cost over the few actions kept by the last {@link improve}, nearest the end first. */
  settle(values: Float64Array): number
}

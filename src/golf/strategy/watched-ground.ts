import type { HoleGround } from './hole-model.ts'

/**
 * A ground whose `lookUp` is this one, called also at every sweep over the hole, and whenever it is asked where balls come
 * to rest or what a drop costs: in every table of a shot. What `lookUp` throws ends the plan; nothing that is kept is left half
 * done.
 */
export function watchedGround(ground: HoleGround, lookUp: () => void): HoleGround {
  const { costs } = ground
  return {
    ...ground,
    lookUp,
    costs: {
      ...costs,
      valuesMoved() {
        lookUp()
        costs.valuesMoved()
      },
      workOut(outcome, values) {
        lookUp()
        costs.workOut(outcome, values)
      },
    },
    restFor(rough) {
      const rest = ground.restFor(rough)
      return {
        ...rest,
        tablesFor(runMetres) {
          lookUp()
          return rest.tablesFor(runMetres)
        },
      }
    },
  }
}

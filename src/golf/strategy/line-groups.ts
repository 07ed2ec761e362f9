import { LIES, type Lie } from '#golf/player/player.ts'
import type { HoleModel } from './hole-model.ts'
import { lieOfGround } from './lie-of-ground.ts'
import { HEADINGS, headingOf, linesOfPlay } from './lines-of-play.ts'
import { groundOf } from './places.ts'
import { LINES_ABOUT_PIN_DEGREES, OVERCLUB_METRES } from './settings.ts'
import { isAllowed, isLow, type Shot } from './shots.ts'

/** States that share a lie and a line to try, in the order of the raster. */
export interface LineGroup {
  readonly lie: Lie
  readonly line: number
  readonly states: readonly number[]
}

/** States by lie and line; neighbouring lines follow each other. */
export function lineGroups(model: HoleModel, aboutPinDegrees: number = LINES_ABOUT_PIN_DEGREES): LineGroup[] {
  const { places, states } = model
  const groups = new Map<number, LineGroup & { states: number[] }>()
  for (const state of Int32Array.from(states.order).sort()) {
    model.lookUp()
    const lie = lieOfGround(groundOf(places, state)) as Lie
    for (const line of linesOfPlay(
      states.pinDirection[state] as number,
      states.bendDirection[state] as number,
      states.isHampered[state] === 1,
      aboutPinDegrees,
    )) {
      const key = LIES.indexOf(lie) * HEADINGS + line
      const group = groups.get(key) ?? { lie, line, states: [] }
      groups.set(key, group)
      group.states.push(state)
    }
  }
  return [...groups.values()].sort((a, b) => headingOf(a.line) - headingOf(b.line))
}

/** By cell: the longest stock total that is tried there. It depends on no other club, so a club more never costs. */
export function reachOf(model: HoleModel, shots: readonly Shot[]): Float64Array {
  const { places, states } = model
  const reach = new Float64Array(places.coarseCount)
  const shortest = new Map<Lie, number>()
  for (const lie of LIES)
    shortest.set(
      lie,
      Math.min(
        ...shots
          .filter((shot) => !isLow(shot) && isAllowed(shot, lie, model.player))
          .map((shot) => shot.stock.totalMetres),
      ),
    )
  for (const state of states.order) {
    const lie = lieOfGround(groundOf(places, state)) as Lie
    // A tail wind makes even the shortest shot longer than its stock.
    reach[state] = Math.max(
      (places.toPin[state] as number) + OVERCLUB_METRES,
      1.5 * (shortest.get(lie) as number),
    )
  }
  return reach
}

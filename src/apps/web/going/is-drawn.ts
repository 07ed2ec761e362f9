import type { GoOrLayUp } from '#golf/strategy/thumb.ts'

/** Whether both choices are possible from at least two places, so that there are two curves to compare. */
export function isDrawn({ curve }: Pick<GoOrLayUp, 'curve'>): boolean {
  return curve.filter(({ go, lay_up: layUp }) => go !== null && layUp !== null).length >= 2
}

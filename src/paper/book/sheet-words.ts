import { pageName } from '#golf/player/first-name.ts'
import { RULES_2023 } from '#golf/rules/rules-2023.ts'
import type { Waterfall } from '../draw/draw-waterfall.ts'

/** What stands on a sheet after a round or a season, or of what to practise, whatever the paper. */
export interface SheetWords {
  readonly title: string
  /** Said first, before any figure. */
  readonly opening: readonly string[]
  /** Absent where no one round is taken apart. */
  readonly waterfall?: Waterfall
  readonly sections: readonly { readonly heading: string; readonly sentences: readonly string[] }[]
}

/** What a sheet after a round says whatever else is on it. */
export const AFTER_THE_ROUND: string = `Worked out after the round. While a counting round lasts nothing may be worked out from it (Rule ${RULES_2023.devices.clause}, ${RULES_2023.edition}); the Committee's word stands.`

/** The heading of a player's sheet; of a minor the first name only. */
export function sheetTitle(course: string, player: { readonly name: string; readonly age?: number }): string {
  return `${course}, ${pageName(player.name, player.age)}`
}

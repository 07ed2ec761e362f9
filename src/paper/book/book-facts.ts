import type { Day } from '#golf/course/day.ts'
import type { Player } from '#golf/player/player.ts'
import type { Letters } from '../draw/letters.ts'
import type { Ruler } from '../draw/ruler.ts'
import type { BookHole } from './planned-hole.ts'
import type { Paper } from './settings.ts'
import type { Purpose } from './stroke-words.ts'

/** Everything that stands in a printed plan, before it is laid out. */
export interface BookFacts extends RoundFacts {
  /** The name that stands on pages: of a minor the first name only. */
  readonly playerName: string
  readonly player: Player
}

/** What stands there for every player alike. */
export interface RoundFacts {
  readonly course: string
  readonly day: Day
  readonly holes: readonly BookHole[]
  /** In force on the course, such as `E-5`. */
  readonly localRules: readonly string[]
  readonly purpose: Purpose
  readonly ruler: Ruler
  readonly paper: Paper
  /** Marks where the sheet is folded. */
  readonly hasFolds: boolean
  /** The credit of the map, wherever it is shown. */
  readonly credit: string | null
  readonly letters: Letters
}

import type { Lie } from './player.ts'

/** One shot that somebody hit and wrote down. Unknown is `null`. */
export interface ShotRecord {
  /** ISO day. */
  readonly date: string | null
  /** Name of the club as the player file has it. */
  readonly club: string
  readonly lie: Lie | null
  /** Metres along the intended line, to where the ball came down, and to where it stopped. */
  readonly carryMetres: number | null
  readonly totalMetres: number | null
  /** Metres to the right of the intended line, where the carry (else the total) was measured. */
  readonly offlineMetres: number | null
  /** How the player says it was struck. */
  readonly strike: 'good' | 'mishit' | null
}

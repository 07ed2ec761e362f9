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
  /** How it may have been struck, where all that is known is where it ended on a hole: stands for the carry and the side. */
  readonly ways?: readonly StruckWay[]
}

/** One way in which a ball may have been struck to end where it did. */
export interface StruckWay {
  /** Metres from its lie, as in calm air on a normal day. */
  readonly carryMetres: number
  /** Metres of that carry for each metre that the club's stock run is longer than the player's: the ball ended where it did. */
  readonly carryPerRun: number
  /** Degrees to the right of the line aimed at; `null` = nobody knows the line. */
  readonly directionDegrees: number | null
  /** How likely such a good strike, and such a mishit, is to end so, times the metres and degrees that this way stands for. */
  readonly ifGood: number
  readonly ifMishit: number
}

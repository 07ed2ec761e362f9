import type { Lie } from './player.ts'

/** Putts of a round from one place on a green: the first with what it left, or as many as were counted. */
export interface LoggedPutt {
  readonly date: string | null
  /** As it was written down, or as long on a level green as the slope makes it worth, metres. */
  readonly metres: number
  /** How many fell from there with the last, or that it was missed and how far it stopped from the hole. */
  readonly end: { readonly putts: number } | { readonly leftMetres: number }
}

/** A place off the green from which a short stroke is played. */
export interface ShortPlace {
  readonly lie: Lie
  /** To the hole, metres. */
  readonly metres: number
  /** Strokes that this green adds there to what the lie and the distance cost anywhere. */
  readonly added: number
}

/** A stroke of a round from off the green, near it. */
export interface LoggedShortStroke extends ShortPlace {
  readonly date: string | null
  /** Strokes used, penalties counted. */
  readonly used: number
  /** Where it ended: on the green, as long a putt as is left on a level one, or off it; `null` = holed. */
  readonly after: { readonly puttMetres: number } | ShortPlace | null
}

/** What rounds say of a player near the green. */
export interface LoggedNearGreen {
  readonly putts: readonly LoggedPutt[]
  readonly strokes: readonly LoggedShortStroke[]
}

import { MOST_POOR_SHARE, SHORT_SPREAD } from './short-game-settings.ts'

/** How far short shots of one kind differ, this player, from one lie. */
export interface ShortSpread {
  /** Spread of the carry: a share of it, and metres of carry and roll together (see `SHORT_METRES_FROM`). */
  readonly carrySdShare: number
  readonly carrySdMetres: number
  readonly directionSdDegrees: number
  /** Spread of the roll as a share of it. */
  readonly rollSdShare: number
  /** Share struck poorly: fat or thin. */
  readonly poorShare: number
  /** Share caught by something in the way. */
  readonly caughtShare: number
}

/** What a player does with a chip from fairway before anything is measured, by strokes lost to a tour player. */
export function priorShortSpread(strokesLost: number): Omit<ShortSpread, 'caughtShare'> {
  const at = (line: { readonly at: number; readonly per: number }): number =>
    Math.max(line.at / 2, line.at + line.per * strokesLost)
  return {
    carrySdShare: at(SHORT_SPREAD.carrySdShare),
    carrySdMetres: at(SHORT_SPREAD.carrySdMetres),
    directionSdDegrees: at(SHORT_SPREAD.directionSdDegrees),
    rollSdShare: at(SHORT_SPREAD.rollSdShare),
    poorShare: Math.min(MOST_POOR_SHARE, at(SHORT_SPREAD.poorShare)),
  }
}

import type { Player } from '#golf/player/player.ts'
import type { AskedObjective } from '#golf/strategy/asked-objective.ts'

/** What the hole is played for, with all that was chosen for every kind, so that one may go back and forth. */
export interface Format {
  readonly kind: 'strokes' | 'points' | 'at-most' | 'match'
  /** Strokes at most, on all holes that count. */
  readonly atMost: number
  /** Handicap strokes on the hole; `null` = by the card. */
  readonly received: number | null
  /** A player of the store; `null` = the opponent's score is known. */
  readonly opponentId: string | null
  readonly opponentScore: number
  /** Holes up in the match before this one, negative when down; `null` = the hole stands for itself. */
  readonly up: number | null
  /** The last hole that counts; `null` = this one. */
  readonly through: string | null
  /** Strokes used on the hole before this one. */
  readonly played: number
}

export const FEWEST_STROKES: Format = {
  kind: 'strokes',
  atMost: 4,
  received: null,
  opponentId: null,
  opponentScore: 4,
  up: null,
  through: null,
  played: 0,
}

/** The last hole that counts in what is played for; `null` = the hole alone. */
export function lastHoleOf({ kind, through, opponentId }: Format): string | null {
  if (kind === 'at-most') return through
  // How later holes go is worked out from a player.
  return kind === 'match' && opponentId !== null ? through : null
}

/** What the planner is asked for; `null` = the fewest strokes, or an opponent who is not here yet. */
export function askedOf(format: Format, opponent: Player | null): AskedObjective | null {
  const { kind, played, opponentId, up } = format
  const received = format.received ?? undefined
  const through = lastHoleOf(format) ?? undefined
  switch (kind) {
    case 'strokes':
      return null
    case 'points':
      return { kind, received, played }
    case 'at-most':
      return { kind, strokes: format.atMost, through, played }
    case 'match': {
      const against = opponentId === null ? format.opponentScore : opponent
      if (against === null) return null
      const match = up === null && through === undefined ? undefined : { through, up: up ?? 0 }
      return { kind, received, opponent: against, match, played }
    }
  }
}

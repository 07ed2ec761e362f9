import type { Player } from '#golf/player/player.ts'
import { type ChoosingSum, choosingSums } from './choosing.ts'
import { type PartResult, partResults } from './part-results.ts'
import { type Split, sumOf, totalOf } from './recap.ts'
import type { RoundRecap } from './recap-round.ts'
import { type SandPlace, sandPlaces } from './sand-places.ts'
import { NAMED_CHOICES, NAMED_STROKES, NAMED_STROKES_A_ROUND, TOLD_DECISION_STROKES } from './settings.ts'

/** What stands out of a season: a way of choosing or a part of the game, and what it costs. */
export type Finding =
  | { readonly kind: 'choosing'; readonly strokesARound: number; readonly choosing: ChoosingSum }
  | { readonly kind: 'part'; readonly strokesARound: number; readonly part: PartResult }

/** Rounds of one player taken together, each split against the plan of its own day. Sums are strokes a round, luck apart. */
export interface Season extends Split {
  readonly rounds: number
  readonly holes: number
  /** Strokes a round more than expected. */
  readonly over: number
  /** Choices that can be judged, and those among them that were the plan's or too close to it to call. */
  readonly judged: number
  readonly kept: number
  readonly choosing: readonly ChoosingSum[]
  readonly parts: readonly PartResult[]
  /** The part of sand by where it lies. */
  readonly sand: readonly SandPlace[]
  /** What costs enough to be worth saying and cannot well be chance, dearest first; empty when there is nothing. */
  readonly findings: readonly Finding[]
  /** Parts that were struck better than the profile says, and not by chance: time to learn it anew. */
  readonly gains: readonly PartResult[]
}

/**
 * Sums up a season. A way of choosing costs what it costs: that is no estimate. How a part was struck is known only as well as
 * so many strokes tell, so it is named when even the low end of its interval is a loss.
 */
export function seasonOf(rounds: readonly RoundRecap[], player: Pick<Player, 'putting'>): Season {
  const count = Math.max(1, rounds.length)
  const strokes = rounds.flatMap(({ holes }) => holes.flatMap((hole) => hole.strokes))
  const split = sumOf(rounds)
  const judged = strokes.filter(({ choice, part }) => choice !== null && part !== 'putting')
  const choosing = choosingSums(strokes)
  const parts = partResults(rounds, player)
  const findings: Finding[] = [
    ...choosing
      .filter((one) => one.count >= NAMED_CHOICES)
      .map((one) => ({ kind: 'choosing' as const, strokesARound: one.strokes / count, choosing: one })),
    ...parts
      .filter(({ count: played, low }) => played >= NAMED_STROKES && low > 0)
      .map((part) => ({ kind: 'part' as const, strokesARound: part.strokes / count, part })),
  ]
  return {
    rounds: rounds.length,
    holes: rounds.reduce((sum, { holes }) => sum + holes.length, 0),
    decision: split.decision / count,
    execution: split.execution / count,
    luck: split.luck / count,
    over: totalOf(split) / count,
    judged: judged.length,
    kept: judged.filter(({ decision }) => decision < TOLD_DECISION_STROKES).length,
    choosing,
    parts,
    sand: sandPlaces(strokes),
    gains: parts
      .filter(
        ({ count: played, high, strokes: sum }) =>
          played >= NAMED_STROKES && high < 0 && -sum / count >= NAMED_STROKES_A_ROUND,
      )
      .sort((a, b) => a.strokes - b.strokes),
    findings: findings
      .filter(({ strokesARound }) => strokesARound >= NAMED_STROKES_A_ROUND)
      .sort((a, b) => b.strokesARound - a.strokesARound),
  }
}

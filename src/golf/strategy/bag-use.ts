import { type BagGap, bagGaps } from '#golf/player/bag-gaps.ts'
import { lieEffect } from '#golf/player/lie-effects.ts'
import { LIES, type Lie, type Player } from '#golf/player/player.ts'
import type { ClubUse, HoleUse } from './club-use.ts'
import { SELDOM_STROKES } from './settings.ts'

/** One club of a bag: its place in the set, where it is used, and what it is for over some holes. */
export interface BagRow extends BagGap, Omit<ClubUse, 'club'> {
  /** From which lies the player uses it. */
  readonly lies: readonly Lie[]
  /** Whether the plans of these holes ask for it less than {@link SELDOM_STROKES} each time they are played. */
  readonly isNeverAnswer: boolean
}

/** The bag over these holes, longest carry first: strokes are summed over the holes, each played once. */
export function bagUse(player: Player, holes: readonly HoleUse[]): readonly BagRow[] {
  return bagGaps(player.clubs).map((gap) => {
    const uses = holes.flatMap(({ clubs }) => clubs.filter(({ club }) => club === gap.club.name))
    const sum = (figure: Exclude<keyof ClubUse, 'club'>): number =>
      uses.reduce((total, use) => total + use[figure], 0)
    const strokes = sum('strokes')
    return {
      ...gap,
      strokes,
      near: sum('near'),
      tee: sum('tee'),
      worth: sum('worth'),
      lies: LIES.filter((lie) => lieEffect(lie, gap.club.name, player).allowed),
      isNeverAnswer: holes.length > 0 && strokes < SELDOM_STROKES,
    }
  })
}

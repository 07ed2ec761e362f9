import type { Lie } from '#golf/player/player.ts'

/** A round as it was logged: what is not known is `null`, and nothing is made up. */
export interface Round {
  readonly date: string | null
  /** Markers played from; `null` = those that a plan takes. */
  readonly tee: string | null
  readonly format: string | null
  readonly holes: readonly RoundHole[]
}

/** One hole of a round. The last stroke was holed, unless the ball was picked up. */
export interface RoundHole {
  readonly ref: string
  readonly strokes: readonly RoundStroke[]
  /** Putts that are counted and not logged one by one, after all the strokes. */
  readonly putts: number
  /** How long the first of them was, metres. */
  readonly firstPuttMetres: number | null
  readonly isPickedUp: boolean
  /** Where it stands in the source: `line 3`, `holes[2]`. */
  readonly place: string
}

/** One stroke, as far as it was written down. */
export interface RoundStroke {
  /** As in the player file, or `putter`. */
  readonly club: string | null
  /** Where the pattern's centre was aimed: metres right of the hole line's first leg at the club's stock total, as in a plan. */
  readonly aimOffsetMetres: number | null
  /** What the ball lay in before it. */
  readonly from: Lie | null
  /** Where the next stroke is played from, a drop included. */
  readonly finish: Finish | null
  /** What the ball lies in there. */
  readonly lie: Lie | null
  /** Penalty strokes; `null` = what the letter of the finish says, else none. */
  readonly penalty: number | null
  readonly isAsPlanned: boolean
  readonly place: string
}

/** A point of the hole frame, metres, or a letter of the paper log with what was left to the pin. */
export type Finish =
  | { readonly x: number; readonly y: number }
  | { readonly letter: FinishLetter; readonly leftMetres: number | null }

/** The letters of the paper log and what each says of where the ball finished. */
export const FINISH_LETTERS = {
  f: 'fairway',
  c: 'first cut',
  r: 'rough',
  h: 'heavy grass',
  b: 'bunker',
  p: 'penalty area',
  o: 'out of bounds or lost',
  g: 'green',
  x: 'way blocked',
} as const
export type FinishLetter = keyof typeof FINISH_LETTERS

/** Whether a word is a letter of the paper log. */
export function isFinishLetter(text: string): text is FinishLetter {
  return Object.hasOwn(FINISH_LETTERS, text)
}

/** Strokes of a hole, penalties counted; what a letter says stands for a penalty that was not written. */
export function scoreOf(hole: RoundHole): number {
  return hole.strokes.reduce((sum, stroke) => sum + 1 + penaltyOf(stroke), hole.putts)
}

/** Whether it has a score: a ball that was picked up has none, and where no stroke was logged nobody knows it. */
export function hasScore({ strokes, isPickedUp }: Pick<RoundHole, 'strokes' | 'isPickedUp'>): boolean {
  return !isPickedUp && strokes.length > 0
}

/** Whether the last that was logged is a ball that lay elsewhere than in the hole, by the letter of its finish. */
export function isTorn({ strokes, putts, isPickedUp }: RoundHole): boolean {
  const finish = strokes.at(-1)?.finish ?? null
  return !isPickedUp && putts === 0 && finish !== null && 'letter' in finish
}

/** Penalty strokes of a stroke: as written, else one for a ball in a penalty area, out of bounds or lost. */
export function penaltyOf({ penalty, finish }: Pick<RoundStroke, 'penalty' | 'finish'>): number {
  if (penalty !== null) return penalty
  return finish !== null && 'letter' in finish && (finish.letter === 'p' || finish.letter === 'o') ? 1 : 0
}

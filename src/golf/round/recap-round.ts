import {
  GAME_PARTS,
  type GamePart,
  type HoleRecap,
  type Split,
  type StrokeSplit,
  sumOf,
  totalOf,
  type Unsplit,
} from './recap.ts'
import { TOLD_DECISION_STROKES, TOLD_GAIN_STROKES } from './settings.ts'

/** A stroke with the hole it was played on. */
export interface StrokeOfHole {
  readonly hole: string
  readonly stroke: StrokeSplit
}

/** The part of the game that strokes belong to, with how many they are. */
export interface PartSum extends Split {
  readonly part: GamePart
  readonly count: number
}

/** A round split: sums over the holes that could be, and what stands out. */
export interface RoundRecap extends Split {
  readonly holes: readonly HoleRecap[]
  readonly score: number
  readonly value: number
  readonly addsUp: number
  readonly parts: readonly PartSum[]
  /** Strokes that ended with a penalty, and what they cost in all; they count in their parts too. */
  readonly penalties: Split & { readonly count: number; readonly strokes: number }
  /** Choices that cost something, dearest first. */
  readonly costly: readonly StrokeOfHole[]
  /** Strokes that gained most by how they were struck and by luck, best first. */
  readonly best: readonly StrokeOfHole[]
  /** How many strokes lack what it takes to be told apart, by what is lacking. */
  readonly unsplit: Readonly<Record<Unsplit, number>>
}

/** Sums up the holes of a round. */
export function recapRound(holes: readonly HoleRecap[]): RoundRecap {
  const all = holes.flatMap(({ ref, strokes }) =>
    strokes.map((stroke): StrokeOfHole => ({ hole: ref, stroke })),
  )
  const strokes = all.map(({ stroke }) => stroke)
  const penalised = strokes.filter(({ penalty }) => penalty > 0)
  const gain = ({ stroke }: StrokeOfHole): number => -(stroke.execution + stroke.luck)
  const split = sumOf(holes)
  const score = holes.reduce((sum, hole) => sum + hole.score, 0)
  const value = holes.reduce((sum, hole) => sum + hole.value, 0)
  const lacking = (what: Unsplit): number =>
    strokes.reduce((sum, stroke) => sum + (stroke.unsplit.includes(what) ? stroke.count : 0), 0)
  return {
    holes,
    score,
    value,
    ...split,
    addsUp: score - value - totalOf(split),
    parts: GAME_PARTS.map((part) => {
      const own = strokes.filter((stroke) => stroke.part === part)
      return { part, count: own.reduce((sum, { count }) => sum + count, 0), ...sumOf(own) }
    }),
    penalties: {
      count: penalised.length,
      strokes: penalised.reduce((sum, { penalty }) => sum + penalty, 0),
      ...sumOf(penalised),
    },
    costly: all
      .filter(({ stroke }) => stroke.decision >= TOLD_DECISION_STROKES)
      .sort((a, b) => b.stroke.decision - a.stroke.decision),
    best: all.filter((one) => gain(one) >= TOLD_GAIN_STROKES).sort((a, b) => gain(b) - gain(a)),
    unsplit: {
      club: lacking('club'),
      line: lacking('line'),
      places: lacking('places'),
      luck: lacking('luck'),
    },
  }
}

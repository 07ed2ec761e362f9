import type { Ground } from '#golf/course/ground.ts'
import type { Lie } from '#golf/player/player.ts'
import type { ReliefOption, ReliefSituation } from '#golf/rules/relief-options.ts'

/** A point of the hole frame, as programs outside read it. */
export interface ReliefPoint {
  readonly x_m: number
  readonly y_m: number
}

/** `relief/1`: the answer of `marram relief --json`, in SI. Field names are a promise to people outside. */
export interface Relief {
  readonly schema: 'relief/1'
  readonly course: string
  readonly hole: {
    readonly ref: string
    readonly par: number
    readonly length_m: number
    readonly tee: string
  }
  readonly player: string
  readonly rules: {
    readonly edition: string
    readonly in_force_from: string
    /** Model Local Rules in force on the course, such as `E-5`. */
    readonly local_rules: readonly string[]
    readonly ruling: string
  }
  readonly situation: {
    readonly what: ReliefSituation | 'as-it-lies'
    readonly from: ReliefPoint & { readonly lie: Lie }
    readonly ball: ReliefPoint | null
    readonly ground: Ground | null
    /** Where the ball last crossed the edge of the penalty area or boundary; `null` where it crossed none. */
    readonly crossing: ReliefPoint | null
    /** The ball's way over the ground. */
    readonly path: readonly ReliefPoint[]
  }
  readonly verdict: 'clear' | 'close' | 'too-close'
  /** Cheapest first; what cannot be valued stands last. */
  readonly options: readonly ReliefRow[]
  /** Options of the Rules that give nothing here. */
  readonly empty: readonly EmptyRelief[]
  readonly notes: readonly string[]
  readonly method: {
    readonly cell_m: number
    readonly club_length_m: number
    readonly residual: number
    readonly converged: boolean
    readonly milliseconds: number
  }
}

/** One option with its best spot. */
export interface ReliefRow {
  readonly letter: string
  readonly kind: ReliefOption['kind']
  readonly clause: string
  readonly penalty: number
  /** What the relief is measured from. */
  readonly reference: ReliefPoint
  /** Polygons of rings of `[x, y]`, metres in the hole frame; empty where the ball is played or put back on one spot. */
  readonly area_m: readonly (readonly (readonly (readonly [x: number, y: number])[])[])[]
  readonly spot: ReliefPoint & {
    readonly ground: Ground
    readonly lie: Lie | null
    readonly to_pin_m: number
  }
  /** Expected strokes to hole out from the spot, and with the penalty; `null` where the survey cannot tell. */
  readonly from_spot: number | null
  readonly strokes: number | null
  /** Against the cheapest. */
  readonly cost: number | null
}

/** An option that gives nothing here, and why. */
export interface EmptyRelief {
  readonly kind: ReliefOption['kind']
  readonly clause: string
  readonly penalty: number
  readonly reason: string
}

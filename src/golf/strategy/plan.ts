import type { Ground } from '#golf/course/ground.ts'
import type { Lie, Sit } from '#golf/player/player.ts'
import type { ShortShotKind } from '#golf/player/short-game-settings.ts'
import type { ObjectiveName } from './objective.ts'
import type { ShotShape } from './shots.ts'

/** `plan/1`: the answer of `marram plan --json`, in SI. Field names are a promise to people outside. */
export interface Plan {
  readonly schema: 'plan/1'
  readonly course: string
  readonly hole: {
    readonly ref: string
    readonly par: number
    readonly length_m: number
    readonly tee: string
  }
  readonly player: string
  readonly situation: {
    readonly x_m: number
    readonly y_m: number
    readonly lie: Lie
    /** How the ball sits and the slopes under the feet, where they were told. */
    readonly sit?: Sit
    readonly stance?: { readonly uphill_deg: number; readonly above_deg: number }
    readonly objective: 'strokes' | ObjectiveName
  }
  /** The fewest expected strokes; for another objective without their interval, which is that of its worth. */
  readonly value: { readonly strokes: number; readonly low: number; readonly high: number }
  /** The pin from the ball, and how far a carry to it plays today; `null` when no club of the player reaches so far, and near the green. */
  readonly plays: { readonly pin_m: number; readonly plays_m: number } | null
  readonly verdict: 'clear' | 'close' | 'too-close'
  readonly options: readonly PlanOption[]
  readonly flips: readonly Flip[]
  /** The hazard that the best clubs find most dearly, and its side of the hole line; `null` when none is worth naming, and near the green. */
  readonly avoid: { readonly what: string; readonly side: 'left' | 'right' | 'across' } | null
  readonly then: readonly NextShot[]
  /** The club that was asked for against the plan, and its price in strokes; `null` when none was. */
  readonly overruled: { readonly club: string; readonly cost: number } | null
  /** What the objective changes; `null` for the fewest strokes. */
  readonly format: FormatPart | null
  readonly sentence: string
  readonly cautions: readonly string[]
  /** Paths of the player's numbers that are guesses of the prior. */
  readonly guesses: readonly string[]
  readonly method: {
    readonly cell_m: number
    readonly states: number
    /** Strikes that stand for a pattern while all actions are weighed, and while the best of them are weighed again (`null`: they were not). */
    readonly quadrature: number
    readonly refined_quadrature: number | null
    readonly sweeps: number
    readonly residual: number
    readonly tolerance: number
    readonly converged: boolean
    readonly draws: number
    readonly milliseconds: number
  }
}

/** One club with its best line. */
export interface PlanOption {
  readonly club: string
  /** How the club is swung: a full or partial swing, or near the green the kind of short shot. */
  readonly shape: ShotShape | ShortShotKind
  /** `heading_deg`: direction of the pattern's centre, clockwise from the y axis of the hole frame; `offset_m`: its sideways distance, right positive, at the club's stock total `at_m`; `start_deg`: where the ball starts. */
  readonly aim: {
    readonly heading_deg: number
    readonly offset_m: number
    readonly at_m: number
    readonly start_deg: number
    /** With slopes under the feet: where the ball would start from a level stance, which is where to aim. */
    readonly aimed_deg?: number
  }
  /** How far the middle good strike finishes today, carry and run, metres from the ball. */
  readonly total_m: number
  /** Expected strokes with the plan for the fewest strokes after this one, whatever the objective. */
  readonly strokes: number
  /** With an objective other than strokes: what this option is worth with the best plan for it after this stroke. */
  readonly worth?: number
  /** Against the first option, in strokes or in the unit of the objective. */
  readonly cost: number
  readonly cost_low: number
  readonly cost_high: number
  /** Share of posterior draws in which this club is the best. */
  readonly best_in_draws: number
  /** Where the ball finishes, shares that add up to 1; penalty and out where it entered. */
  readonly outcomes: Readonly<Record<OutcomeGround, number>>
  readonly leave_m: { readonly p10: number; readonly p50: number; readonly p90: number }
  /** What the outer quarter of balls to each side costs against the half between, strokes. */
  readonly misses: { readonly left: number; readonly right: number }
  /**
   * How the middle of the pattern gets past trees and scrub, and the share of balls that they catch. `gap`: the angle
   * between what shuts the line on both sides, seen from the ball, and the same in the player's own spreads, from one
   * standard deviation left to one right; `null` when a side is open or the line itself is shut.
   */
  readonly trees: {
    readonly way: 'open' | 'over' | 'under' | 'through' | 'sideways'
    /** What the way first meets; `null` on an open way and sideways. */
    readonly growth: 'trees' | 'scrub' | null
    readonly caught: number
    readonly gap: { readonly degrees: number; readonly spreads: number } | null
  }
  /** Chance of each score on the hole, by strokes from here. */
  readonly scores: Readonly<Record<string, number>>
  /** Cost against the plan of this club on other lines, from left to right. */
  readonly aimCosts: readonly { readonly offset_m: number; readonly cost: number }[]
  /** Only near the green: where to land the ball, how it rolls, and how it goes wrong. */
  readonly short?: ShortPart
}

/**
 * What an objective other than strokes changes. Worths are expected points, the chance of at most so many strokes, or of
 * a match the hole won (a halved one counting ½).
 */
export interface FormatPart {
  /** What is played for, in words: `4 or better`. */
  readonly aim: string
  /** Strokes used on the hole before this one, and handicap strokes counted on it. */
  readonly played: number
  readonly received: number
  /** Worth of the plan, and between which worths it lies for players that this one may be: one draw in ten below, one above. */
  readonly value: number
  readonly low: number
  readonly high: number
  /** The stroke that the fewest strokes ask for, and what that plan would be worth all along. */
  readonly fewest_strokes: {
    readonly club: string
    readonly shape: PlanOption['shape']
    readonly aim: PlanOption['aim']
    readonly value: number
  }
  /** What planning for the objective gains against that, in all and by this stroke alone. */
  readonly gain: number
  readonly gain_here: number
  /** What of the plan is another: this stroke's club, only its line, only later strokes, or nothing that could be noticed. */
  readonly changes: 'club' | 'line' | 'later' | 'nothing'
  /** Whether its scores lie further apart than those of the plan for the fewest strokes, or closer; `null` when nothing changes. */
  readonly manner: 'attack' | 'protect' | null
  /** How many strokes more it costs on average. */
  readonly strokes_given_up: number
  /** Chances of the hole against the opponent; `null` without one. */
  readonly match: { readonly win: number; readonly halve: number; readonly lose: number } | null
  /** What a reader must know of how it was counted. */
  readonly notes: readonly string[]
  readonly sentence: string
}

/** A chip, pitch, lob, sand shot or putt in detail, SI. */
export interface ShortPart {
  /** Where a shot that goes as meant lands; of a putt the ball's own place. `on_green_m`: how far on from the green's edge along the way, `null` when it lands off the green. */
  readonly landing: {
    readonly x_m: number
    readonly y_m: number
    readonly ground: Ground
    readonly on_green_m: number | null
  }
  readonly carry_m: number
  readonly apex_m: number
  /** Path of its roll from the landing, and the places along it every half second. */
  readonly roll_m: number
  readonly path: readonly (readonly [x_m: number, y_m: number])[]
  /** How far beside the pin it starts, at the pin's distance, right positive: what the slope takes. */
  readonly start_beside_pin_m: number
  /** Shares of such shots that are holed, that are up and down in two, and that are struck fat or thin. */
  readonly holed: number
  readonly up_and_down: number
  readonly poor: number
  /** The dearest tenth of such shots: what they cost on average, counted from this stroke, and where the middle one of them ends. */
  readonly worst: {
    readonly strokes: number
    readonly x_m: number
    readonly y_m: number
    readonly ground: OutcomeGround
    readonly to_pin_m: number
  }
}

/** The grounds of an outcome: both penalty colours are one. */
export type OutcomeGround = Exclude<Ground, 'penalty-red' | 'penalty-yellow'> | 'penalty'

/** The nearest value of one quantity at which the best club changes; `at: null` when nothing in the sensible range does. */
export interface Flip {
  readonly what: string
  readonly unit: string
  readonly at: number | null
  readonly direction: string
  readonly club: string | null
  /** Of a hazard: the id of its area in the course. */
  readonly area?: string
}

/** What to play next from a place the first shot is likely to leave. */
export interface NextShot {
  readonly from: { readonly x_m: number; readonly y_m: number }
  readonly lie: Lie
  readonly club: string
  readonly shape: ShotShape
  readonly number: 'front' | 'middle' | 'back' | 'layup'
  /** To that number, and how far a carry to it plays today; `null` for a layup. */
  readonly distance_m: number | null
  readonly plays_m: number | null
}

import type { Lie } from '#golf/player/player.ts'
import type { ShotShape } from './shots.ts'

/**
 * `thumb/1`: where the trade's rules of thumb hold on one hole for one player, in SI. Distances named `…_m` without
 * further words are straight to the pin; bands run from far to near. Field names are a promise to people outside.
 */
export interface Thumb {
  readonly schema: 'thumb/1'
  readonly course: string
  readonly hole: {
    readonly ref: string
    readonly par: number
    readonly length_m: number
    readonly tee: string
  }
  readonly player: string
  /** One for each lie that was asked for, and the tee. */
  readonly lies: readonly LieThumb[]
  readonly leave: BestLeave
  readonly cautions: readonly string[]
  readonly guesses: readonly string[]
  readonly method: {
    readonly cell_m: number
    readonly states: number
    readonly step_m: number
    readonly too_close_strokes: number
    readonly residual: number
    readonly converged: boolean
    readonly milliseconds: number
  }
}

/** Everything that was found from one lie, along the hole line from where the fairway begins to 45 m from the pin. */
export interface LieThumb {
  readonly lie: Lie
  readonly places: readonly ThumbPlace[]
  readonly rules: readonly ThumbRule[]
  /** For the green, and over each water across the line. */
  readonly go: readonly GoOrLayUp[]
  readonly numbers: readonly NumberBand[]
}

/** The best stroke from one place. */
export interface ThumbPlace {
  readonly from_m: number
  readonly strokes: number
  readonly club: string
  readonly shape: ShotShape
  /** The number of the green that the stroke is played to; `layup` when it stays short of them all. */
  readonly number: 'front' | 'middle' | 'back' | 'layup'
  /** What its usual finish leaves, and the least that any stroke's does. */
  readonly leave_m: number
  readonly nearest_m: number
}

/** One rule of thumb from one lie: where it is right, indifferent and wrong, and by how much. */
export interface ThumbRule {
  readonly rule: 'short-of-water' | 'back-number' | 'fat-side' | 'full-club'
  /** The hazard it is about, where it is about one. */
  readonly hazard: string | null
  readonly bands: readonly ThumbBand[]
  readonly turns: readonly ThumbTurn[]
}

/** Neighbouring places with one verdict. `saves`: strokes that following saves there, negative = costs; from the least to the most. */
export interface ThumbBand {
  readonly from_m: number
  readonly to_m: number
  readonly verdict: 'right' | 'indifferent' | 'wrong'
  readonly saves: { readonly least: number; readonly most: number }
  /** The best that follows and the best that departs, where it matters most. */
  readonly follow: ThumbStroke
  readonly depart: ThumbStroke
}

/** A stroke, and what its usual finish leaves to the pin. */
export interface ThumbStroke {
  readonly club: string
  readonly shape: ShotShape
  readonly leave_m: number
}

/** Two places between which a rule turns from right to wrong or back; `at_m`: where following neither saves nor costs. */
export interface ThumbTurn {
  readonly right_m: number
  readonly wrong_m: number
  readonly at_m: number
}

/** Where to go and where to lay up, short of the green or of one water. `gains`: strokes that the named choice saves against the other. */
export interface GoOrLayUp {
  /** The water that is gone over; `null` = the green is gone for. */
  readonly over: string | null
  readonly bands: readonly {
    readonly from_m: number
    readonly to_m: number
    readonly choice: 'out-of-reach' | 'lay-up' | 'either' | 'go'
    readonly gains: { readonly least: number; readonly most: number } | null
    readonly go: ThumbStroke | null
    readonly layUp: ThumbStroke | null
  }[]
  /** What both cost from each place, far to near; `null` where one of them is not possible. */
  readonly curve: readonly {
    readonly from_m: number
    readonly go: number | null
    readonly lay_up: number | null
  }[]
  /** Where the choice turns, far to near: `by` cost where both were possible, `by` reach where going had just become so. */
  readonly switches: readonly {
    readonly at_m: number
    readonly to: 'go' | 'lay-up'
    readonly by: 'cost' | 'reach'
  }[]
}

/** Neighbouring places from which the best stroke is played to one number of the green. */
export interface NumberBand {
  readonly from_m: number
  readonly to_m: number
  readonly number: ThumbPlace['number']
}

/** What to leave for the next full stroke, from the fairway in the middle of the hole. */
export interface BestLeave {
  /** Expected strokes by what is left, far to near. */
  readonly strokes: readonly { readonly leave_m: number; readonly strokes: number }[]
  /** Leaves that cost at least 0.03 more than a longer one does, with the cheapest longer one. */
  readonly worseThanLonger: readonly {
    readonly leave_m: number
    readonly longer_m: number
    readonly cost: number
  }[]
}

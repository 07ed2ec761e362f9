import type { GreenSurvey } from './green-survey.ts'
import type { Ground } from './ground.ts'

/**
 * A hole as numbers, metres. Distances are *along the hole line* from the markers unless they are called straight;
 * offsets are square to the line, right positive.
 */
export interface HoleMeasures {
  readonly ref: string
  readonly teeName: string
  readonly par: number
  readonly strokeIndex: number | null
  readonly lengthMetres: number
  readonly bearingDegrees: number
  readonly riseMetres: number
  readonly legs: readonly LegMeasure[]
  /** Nearest first. */
  readonly hazards: readonly HazardMeasure[]
  /** Single trees that stand near the line, nearest to the markers first. */
  readonly trees: readonly TreeMeasure[]
  /** Every 20 m from the markers to the front of the green, places without fairway left out. */
  readonly fairway: readonly WidthMeasure[]
  /** The narrowest fairway from 100 m on that has 20 m of fairway before and behind it; `null` without any. */
  readonly pinch: WidthMeasure | null
  /** `null` when the survey lacks the green. */
  readonly green: GreenMeasure | null
  /** What is known of its slope; `null` when the survey lacks the green. */
  readonly greenSurvey: GreenSurvey | null
}

/** One straight piece of the hole line. */
export interface LegMeasure {
  readonly lengthMetres: number
  readonly endsAtMetres: number
  /** Turn at its end, degrees, right positive; `null` at the pin. */
  readonly bendDegrees: number | null
}

/** One hazard from the markers: the part of it within the hole's corridor and at most 60 m behind the pin. */
export interface HazardMeasure {
  readonly id: string
  readonly name: string | null
  readonly ground: Ground
  /** Of its trees or scrub, where the survey has it. */
  readonly heightMetres: number | null
  /** `across` when the hole line runs through it before the pin, or it lies wholly behind the pin on the line; else the side on which it comes nearer. */
  readonly side: 'left' | 'right' | 'across'
  /** To its nearest part, on the named side. */
  readonly reachMetres: number
  /** To its furthest part, on the named side. */
  readonly farMetres: number
  /** To be past it: where the line last leaves it, or its far end beside the line; `null` when the line never leaves it. */
  readonly carryMetres: number | null
  /** Its edge nearest to the line; 0 when it lies across. */
  readonly offsetMetres: number
  /** Where the line, drawn on 60 m behind the pin, runs through it. */
  readonly crossings: readonly { readonly fromMetres: number; readonly toMetres: number }[]
  /** `null` on a side where it does not lie, and both when it lies across. */
  readonly left: SideMeasure | null
  readonly right: SideMeasure | null
  /** In a straight line from the markers: to its nearest part on the named side, and to the place of the carry. */
  readonly straight: { readonly reachMetres: number; readonly carryMetres: number | null }
}

/** A single tree. */
export interface TreeMeasure {
  readonly id: string
  readonly reachMetres: number
  /** Its trunk from the line, right positive. */
  readonly offsetMetres: number
  /** `null` where the survey is silent. */
  readonly heightMetres: number | null
}

/** The part of a hazard on one side of the line. */
export interface SideMeasure {
  readonly reachMetres: number
  readonly farMetres: number
  readonly offsetMetres: number
}

/** The fairway across the line at one distance. */
export interface WidthMeasure {
  readonly atMetres: number
  readonly leftMetres: number
  readonly rightMetres: number
  readonly widthMetres: number
}

/** The green along the line of approach through its centre, from the last bend. */
export interface GreenMeasure {
  readonly frontMetres: number
  readonly middleMetres: number
  readonly backMetres: number
  readonly depthMetres: number
  /** Square to the line of approach, at the middle. */
  readonly widthMetres: number
  readonly straight: {
    readonly frontMetres: number
    readonly middleMetres: number
    readonly backMetres: number
  }
}

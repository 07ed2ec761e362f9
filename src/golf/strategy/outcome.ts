import type { Places } from './places.ts'

/**
 * What became of a ball, as one number: a kind and a place. At rest: where it lies. In a penalty area or out of
 * bounds: the last place before it crossed the edge, which is where relief is taken from.
 */
export type Outcome = number

/** Kinds of outcome; the outcome's number is `kind · places + place`. */
export const AT_REST = 0
export const IN_RED = 1
export const IN_YELLOW = 2
export const OUT_OF_BOUNDS = 3
export const OUTCOME_KINDS = 4

/** The number of an outcome. */
export function outcomeOf(places: Places, kind: number, place: number): Outcome {
  return kind * places.count + place
}

/** The place of an outcome: of rest, or of crossing. */
export function outcomePlace(places: Places, outcome: Outcome): number {
  return outcome % places.count
}

/** The kind of an outcome. */
export function outcomeKind(places: Places, outcome: Outcome): number {
  return Math.floor(outcome / places.count)
}

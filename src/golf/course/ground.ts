/**
 * Every class of ground, in the order in which it is painted: a later class covers an earlier one.
 * The order is the promise of the course file (`docs/course-file.md`).
 */
export const GROUND_CLASSES = [
  'out',
  'trees',
  'scrub',
  'rough',
  'heavy',
  'first-cut',
  'path',
  'fairway',
  'penalty-red',
  'penalty-yellow',
  'bunker',
  'fringe',
  'green',
  'tee',
] as const

/** What the ground is at a place. Ground inside no area is `rough`. */
export type Ground = (typeof GROUND_CLASSES)[number]

/** One byte for a ground class: its place in {@link GROUND_CLASSES}. */
export function groundCode(ground: Ground): number {
  return GROUND_CLASSES.indexOf(ground)
}

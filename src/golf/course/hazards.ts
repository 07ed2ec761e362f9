import type { Ground } from './ground.ts'

/** The grounds that a player keeps away from: what is measured from the tee, and what may be moved to see what it does. */
export const HAZARDS: ReadonlySet<Ground> = new Set([
  'bunker',
  'penalty-red',
  'penalty-yellow',
  'out',
  'trees',
  'scrub',
  'heavy',
])

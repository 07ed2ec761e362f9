import type { Fault } from '#faults/fault.ts'
import { isTorn, type RoundHole } from './round.ts'

/**
 * Adds a hole to those that were read, or a fault when it is among them: the first one counts. One that ends before the ball is
 * holed has no score, as if it were picked up. `words`: where, and what to do.
 */
export function addHole(
  holes: RoundHole[],
  hole: RoundHole,
  faults: Fault[],
  words: { readonly source: 'round' | 'log'; readonly advice: string },
): void {
  const first = holes.find(({ ref }) => ref === hole.ref)
  if (first === undefined) {
    holes.push(isTorn(hole) ? { ...hole, isPickedUp: true } : hole)
    if (isTorn(hole))
      faults.push({
        severity: 'error',
        code: 'MAR-ROUND-013',
        message: `Hole ${hole.ref} ends before the ball is holed, so it has no score.`,
        place: hole.place,
        advice: 'Write the strokes that are missing, or the putts; the last stroke of a hole has no letter.',
      })
  } else
    faults.push({
      severity: 'error',
      code: 'MAR-ROUND-005',
      message: `Hole ${hole.ref} is in the ${words.source} already, at ${first.place}.`,
      place: hole.place,
      advice: words.advice,
    })
}

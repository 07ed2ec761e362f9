import type { Fault } from '#faults/fault.ts'
import type { RoundHole } from './round.ts'

/** Adds a hole to those that were read, or a fault when it is among them: the first one counts. `words`: where, and what to do. */
export function addHole(
  holes: RoundHole[],
  hole: RoundHole,
  faults: Fault[],
  words: { readonly source: 'round' | 'log'; readonly advice: string },
): void {
  const first = holes.find(({ ref }) => ref === hole.ref)
  if (first === undefined) holes.push(hole)
  else
    faults.push({
      severity: 'error',
      code: 'MAR-ROUND-005',
      message: `Hole ${hole.ref} is in the ${words.source} already, at ${first.place}.`,
      place: hole.place,
      advice: words.advice,
    })
}

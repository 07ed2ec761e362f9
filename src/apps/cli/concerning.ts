import type { Fault } from '#faults/fault.ts'

/** Faults that bear on a hole, or on any of `all`: those of other holes do not. */
export function concerning(faults: readonly Fault[], ref: string): Fault[] {
  return faults.filter(({ place }) => {
    const named = holeOf(place)
    return ref === 'all' || named === null || named === ref
  })
}

/** The hole that the place of a fault names; `null` = none. */
export function holeOf(place: string): string | null {
  return /^hole (\S+)/.exec(place)?.[1] ?? null
}

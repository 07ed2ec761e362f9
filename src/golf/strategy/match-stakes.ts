import type { HoleStakes } from './objective.ts'

/** Chances of winning, halving and losing one hole. */
export interface HoleChances {
  readonly win: number
  readonly halve: number
  readonly lose: number
}

/**
 * What winning, halving and losing a hole is worth for the match: a match won 1, halved ½. `up`: holes up before it,
 * negative when down; `later`: the holes after it, played as their chances say. A match is over when somebody is more holes
 * up than are left (Rules of Golf 2023, 3.2a), and worth the same whatever is played after that.
 */
export function matchStakes(up: number, later: readonly HoleChances[]): HoleStakes {
  const known = new Map<string, number>()
  const worthAt = (lead: number, next: number): number => {
    const left = later.length - next
    if (Math.abs(lead) > left || left === 0) return lead > 0 ? 1 : lead === 0 ? 0.5 : 0
    const key = `${lead} ${next}`
    const before = known.get(key)
    if (before !== undefined) return before
    const { win, halve, lose } = later[next] as HoleChances
    const worth =
      win * worthAt(lead + 1, next + 1) + halve * worthAt(lead, next + 1) + lose * worthAt(lead - 1, next + 1)
    known.set(key, worth)
    return worth
  }
  return { win: worthAt(up + 1, 0), halve: worthAt(up, 0), lose: worthAt(up - 1, 0) }
}

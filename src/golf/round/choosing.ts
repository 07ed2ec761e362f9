import type { StrokeSplit } from './recap.ts'

/** A way in which a choice departs from the plan. */
export type Choosing =
  | 'longer-from-tee'
  | 'shorter-from-tee'
  | 'line-from-tee'
  | 'longer-approach'
  | 'shorter-approach'
  | 'toward-flag'
  | 'away-from-flag'
  | 'club-near-green'

/** Strokes chosen in one way, and what that cost in all. */
export interface ChoosingSum {
  readonly way: Choosing
  readonly count: number
  readonly strokes: number
}

/** Costs of choices by the way they depart from the plan, dearest first. A stroke may count twice: by its club and by its line. */
export function choosingSums(strokes: readonly StrokeSplit[]): ChoosingSum[] {
  const sums = new Map<Choosing, { count: number; strokes: number }>()
  for (const stroke of strokes)
    for (const [way, cost] of waysOf(stroke)) {
      const known = sums.get(way) ?? { count: 0, strokes: 0 }
      sums.set(way, { count: known.count + 1, strokes: known.strokes + cost })
    }
  return [...sums].map(([way, sum]) => ({ way, ...sum })).sort((a, b) => b.strokes - a.strokes)
}

function waysOf({ choice, part }: StrokeSplit): (readonly [Choosing, number])[] {
  if (choice === null) return []
  const { club, line, longer, towardFlag } = choice
  const ways: (readonly [Choosing, number])[] = []
  if (part === 'around') {
    if (club > 0) ways.push(['club-near-green', club])
  } else if (club > 0 && longer !== null) {
    if (part === 'tee') ways.push([longer ? 'longer-from-tee' : 'shorter-from-tee', club])
    else ways.push([longer ? 'longer-approach' : 'shorter-approach', club])
  }
  if (line > 0 && towardFlag !== null) {
    if (part === 'tee') ways.push(['line-from-tee', line])
    else ways.push([towardFlag ? 'toward-flag' : 'away-from-flag', line])
  }
  return ways
}

/** A stretch of a line, lower end first. */
export type Interval = readonly [from: number, to: number]

/** The stretches covered by any of the given ones, in order, touching ones joined. */
function uniteIntervals(intervals: readonly Interval[]): Interval[] {
  const united: [number, number][] = []
  for (const [from, to] of [...intervals].sort((a, b) => a[0] - b[0])) {
    const last = united.at(-1)
    if (last && from <= last[1]) last[1] = Math.max(last[1], to)
    else united.push([from, to])
  }
  return united
}

/** What is left of the given stretches when others are cut out of them, in order. */
export function subtractIntervals(intervals: readonly Interval[], cuts: readonly Interval[]): Interval[] {
  let left = uniteIntervals(intervals)
  for (const [from, to] of cuts)
    left = left.flatMap(([a, b]): Interval[] => {
      if (to <= a || from >= b) return [[a, b]]
      const pieces: Interval[] = []
      if (from > a) pieces.push([a, from])
      if (to < b) pieces.push([to, b])
      return pieces
    })
  return left
}

/** Distance from 0 to a stretch; 0 when it holds 0. */
export function gapFromZero([from, to]: Interval): number {
  return Math.max(0, from, -to)
}

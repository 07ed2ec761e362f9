/** One figure of the benchmark; `ratio` is this median as a share of the median named `against` in the same run. */
export interface Figure {
  readonly name: string
  readonly unit: 'ms' | 'MB' | 'thousandths of a stroke'
  readonly median: number
  readonly ratio: number | null
  readonly against: string | null
}

/** Something to time: `prepare` is not timed, and what it returns is handed to `run`. */
export interface Timed<T> {
  readonly name: string
  readonly prepare: () => T
  readonly run: (prepared: T) => void
}

/** Median time of a few runs, milliseconds, each from a fresh preparation. */
export function medianMilliseconds<T>({ prepare, run }: Timed<T>, runs: number): number {
  const times: number[] = []
  for (let count = 0; count < runs; count++) {
    const prepared = prepare()
    const start = performance.now()
    run(prepared)
    times.push(performance.now() - start)
  }
  return middleOf(times)
}

/** The median of some numbers; of an even number of them the mean of the two in the middle. */
export function middleOf(numbers: readonly number[]): number {
  const ordered = [...numbers].sort((a, b) => a - b)
  const middle = (ordered.length - 1) / 2
  return ((ordered[Math.floor(middle)] as number) + (ordered[Math.ceil(middle)] as number)) / 2
}

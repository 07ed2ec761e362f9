/**
 * The next value of a Markov chain whose values follow a density known up to a factor: slice sampling with stepping
 * out and shrinkage (R. M. Neal, Annals of Statistics 31 (2003) 705–767, figures 3 and 5). `logDensity` must be finite
 * at `from`; `width` is a guess of the density's width, of no influence on what comes out in the long run.
 */
export function sliceSample(
  logDensity: (x: number) => number,
  from: number,
  width: number,
  uniform: () => number,
): number {
  const level = logDensity(from) + Math.log(1 - uniform())
  let low = from - width * uniform()
  let high = low + width
  // How the steps are shared between the sides is drawn before any is taken, so that the limit does no harm.
  const toLeft = Math.floor(MOST_STEPS * uniform())
  for (let step = 0; step < toLeft && logDensity(low) > level; step++) low -= width
  for (let step = toLeft; step < MOST_STEPS - 1 && logDensity(high) > level; step++) high += width
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const next = low + (high - low) * uniform()
    if (logDensity(next) >= level) return next
    if (next < from) low = next
    else high = next
  }
  return from
}

/** Steps out on both sides together; each a width. */
const MOST_STEPS = 100
/** The slice shrinks towards where it began: after so many rounds nothing is left of it. */
const MOST_ROUNDS = 200

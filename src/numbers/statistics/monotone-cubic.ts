/**
 * Value at `at` on the smooth curve through `knots`, sorted by first member; flat outside, by straight pieces through
 * fewer than three. Piecewise cubic with continuous slope that never turns between two knots that do not (Fritsch &
 * Butland, SIAM Journal on Scientific and Statistical Computing 5, 1984). Any unit.
 */
export function monotoneCubic(knots: readonly (readonly [number, number])[], at: number): number {
  const first = knots[0]
  const last = knots.at(-1)
  if (first === undefined || last === undefined) throw new RangeError('monotoneCubic needs at least one knot')
  if (at <= first[0]) return first[1]
  if (at >= last[0]) return last[1]
  const above = knots.findIndex(([x]) => x > at)
  const low = knots[above - 1] ?? first
  const high = knots[above] ?? last
  const span = high[0] - low[0]
  const t = (at - low[0]) / span
  const from = slopeAt(knots, above - 1) * span
  const to = slopeAt(knots, above) * span
  return (
    low[1] * (1 + 2 * t) * (1 - t) ** 2 +
    from * t * (1 - t) ** 2 +
    high[1] * t ** 2 * (3 - 2 * t) +
    to * t ** 2 * (t - 1)
  )
}

/** Slope at a knot: a weighted harmonic mean of those of its two pieces, 0 where they turn; at an end by three knots. */
function slopeAt(knots: readonly (readonly [number, number])[], index: number): number {
  const piece = (of: number): readonly [width: number, slope: number] => {
    const [x0, y0] = knots[of] ?? [0, 0]
    const [x1, y1] = knots[of + 1] ?? [1, 0]
    return [x1 - x0, (y1 - y0) / (x1 - x0)]
  }
  if (knots.length === 2) return piece(0)[1]
  if (index === 0) return endSlope(piece(0), piece(1))
  if (index === knots.length - 1) return endSlope(piece(index - 1), piece(index - 2))
  const [leftWidth, left] = piece(index - 1)
  const [rightWidth, right] = piece(index)
  if (left * right <= 0) return 0
  const leftWeight = leftWidth + 2 * rightWidth
  const rightWeight = 2 * leftWidth + rightWidth
  return (leftWeight + rightWeight) / (leftWeight / left + rightWeight / right)
}

/** The parabola's slope at an end, held so that the curve does not turn. */
function endSlope(
  [width, slope]: readonly [width: number, slope: number],
  [nextWidth, next]: readonly [width: number, slope: number],
): number {
  const wanted = ((2 * width + nextWidth) * slope - width * next) / (width + nextWidth)
  if (wanted * slope <= 0) return 0
  return slope * next <= 0 && Math.abs(wanted) > 3 * Math.abs(slope) ? 3 * slope : wanted
}

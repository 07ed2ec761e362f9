import { splitNormalCdf, splitNormalPdf, splitNormalQuantile } from './split-normal.ts'

/** One part of a mixture: a split normal with its mode at `centre`. Equal spreads make it a plain normal. */
export interface MixturePart {
  /** Share of the whole; not negative. The weights of a mixture need not add up to 1. */
  readonly weight: number
  readonly centre: number
  /** Spreads on either side of the centre, in its unit; not both 0 where a density is asked for. */
  readonly leftSd: number
  readonly rightSd: number
}

/** Density of the mixture at `x`. */
export function mixturePdf(parts: readonly MixturePart[], x: number): number {
  return weightedMean(parts, (part) => splitNormalPdf(x - part.centre, part.leftSd, part.rightSd))
}

/** Probability that a value of the mixture is at most `x`. */
export function mixtureCdf(parts: readonly MixturePart[], x: number): number {
  return weightedMean(parts, (part) => splitNormalCdf(x - part.centre, part.leftSd, part.rightSd))
}

/**
 * The value below which probability `u` of the mixture lies. It stands between the lowest and the highest
 * quantile of the parts; halved until no machine number lies between.
 */
export function mixtureQuantile(parts: readonly MixturePart[], u: number): number {
  const present = parts.filter((part) => part.weight > 0)
  const quantiles = present.map((part) => part.centre + splitNormalQuantile(u, part.leftSd, part.rightSd))
  let low = Math.min(...quantiles)
  let high = Math.max(...quantiles)
  if (!(Number.isFinite(low) && Number.isFinite(high))) return u <= 0 ? low : high
  for (;;) {
    const middle = low + (high - low) / 2
    if (middle <= low || middle >= high) return high
    if (mixtureCdf(present, middle) < u) low = middle
    else high = middle
  }
}

function weightedMean(parts: readonly MixturePart[], value: (part: MixturePart) => number): number {
  let sum = 0
  let weights = 0
  for (const part of parts) {
    sum += part.weight * value(part)
    weights += part.weight
  }
  return sum / weights
}

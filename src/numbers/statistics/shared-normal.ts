/**
 * Members of a family, each normal before any data: `centre + shared · F + own · E`, with one standard normal F for
 * the family and an E of each member's own; and what was measured of each, with known noise.
 */
export interface FamilyMember {
  readonly centre: number
  readonly shared: number
  /** More than 0. */
  readonly own: number
  /** Sum of 1 / variance of the measurements, and the same sum of measurement / variance; both 0 without any. */
  readonly precision: number
  readonly weightedSum: number
}

/** What is known of the family after the measurements: exactly normal. */
export interface SharedNormal {
  readonly factorMean: number
  readonly factorSd: number
  /** Mean and spread of each member; given F it is normal with mean `intercept + slope · F` and spread `ownSd`. */
  readonly members: readonly {
    readonly mean: number
    readonly sd: number
    readonly intercept: number
    readonly slope: number
    readonly ownSd: number
  }[]
}

/**
 * The posterior in closed form: the conjugate normal model with one shared factor. Each member's own part is
 * integrated out for the factor, then put back (Gelman et al., Bayesian Data Analysis, 3rd edition, section 5.4).
 */
export function sharedNormal(family: readonly FamilyMember[]): SharedNormal {
  let precision = 1
  let weighted = 0
  for (const one of family) {
    if (one.precision === 0) continue
    // Of the member's mean measurement, around the centre, given F.
    const variance = one.own ** 2 + 1 / one.precision
    precision += one.shared ** 2 / variance
    weighted += (one.shared * (one.weightedSum / one.precision - one.centre)) / variance
  }
  const factorMean = weighted / precision
  const factorSd = 1 / Math.sqrt(precision)
  const members = family.map((one) => {
    const own = 1 / one.own ** 2
    const all = own + one.precision
    const intercept = (own * one.centre + one.weightedSum) / all
    const slope = (own * one.shared) / all
    const ownSd = 1 / Math.sqrt(all)
    return {
      mean: intercept + slope * factorMean,
      sd: Math.hypot(ownSd, slope * factorSd),
      intercept,
      slope,
      ownSd,
    }
  })
  return { factorMean, factorSd, members }
}

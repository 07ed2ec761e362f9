import { describe, expect, it } from 'vitest'
import { solveLinear } from '../geometry/linear/solve-linear.ts'
import { type FamilyMember, sharedNormal } from './shared-normal.ts'

const FAMILY: readonly FamilyMember[] = [
  { centre: 19, shared: 3.8, own: 2.3, precision: 0.4, weightedSum: 9.1 },
  { centre: 12, shared: 2.4, own: 1.4, precision: 0, weightedSum: 0 },
  { centre: 5, shared: 1, own: 0.6, precision: 6, weightedSum: 33 },
  { centre: 2, shared: -0.4, own: 0.3, precision: 0.01, weightedSum: 0.05 },
]

/** Mean and covariance of the factor and the members, from the whole precision matrix at once. */
function densePosterior(family: readonly FamilyMember[]): { mean: Float64Array; variance: number[] } {
  const size = family.length + 1
  const matrix = (): Float64Array => {
    const one = new Float64Array(size * size)
    one[0] = 1
    family.forEach(({ shared, own, precision }, index) => {
      const k = index + 1
      one[0] = one[0]! + (shared / own) ** 2
      one[k] = one[k * size] = -shared / own ** 2
      one[k * size + k] = 1 / own ** 2 + precision
    })
    return one
  }
  const right = new Float64Array(size)
  family.forEach(({ centre, shared, own, weightedSum }, index) => {
    right[0] = right[0]! - (shared * centre) / own ** 2
    right[index + 1] = centre / own ** 2 + weightedSum
  })
  const column = (k: number): Float64Array => Float64Array.from({ length: size }, (_, row) => +(row === k))
  return {
    mean: solveLinear(matrix(), right)!,
    variance: Array.from({ length: size }, (_, k) => solveLinear(matrix(), column(k))![k]!),
  }
}

describe('sharedNormal', () => {
  it('is the solution of the normal equations of factor and members together', () => {
    const { mean, variance } = densePosterior(FAMILY)
    const { factorMean, factorSd, members } = sharedNormal(FAMILY)
    expect(factorMean).toBeCloseTo(mean[0]!, 12)
    expect(factorSd).toBeCloseTo(Math.sqrt(variance[0]!), 12)
    members.forEach((member, index) => {
      expect(member.mean).toBeCloseTo(mean[index + 1]!, 11)
      expect(member.sd).toBeCloseTo(Math.sqrt(variance[index + 1]!), 12)
      expect(member.mean).toBeCloseTo(member.intercept + member.slope * factorMean, 12)
    })
  })

  it('is the prior without measurements', () => {
    const { factorMean, factorSd, members } = sharedNormal(
      FAMILY.map((one) => ({ ...one, precision: 0, weightedSum: 0 })),
    )
    expect([factorMean, factorSd]).toEqual([0, 1])
    members.forEach(({ mean, sd }, index) => {
      const { centre, shared, own } = FAMILY[index]!
      expect(mean).toBeCloseTo(centre, 12)
      expect(sd).toBeCloseTo(Math.hypot(shared, own), 12)
    })
  })

  // Gelman et al., Bayesian Data Analysis, equation 2.11: one normal mean with known variance.
  it('is the textbook normal mean for a member that shares nothing', () => {
    const [one] = sharedNormal([
      { centre: 5, shared: 0, own: 2, precision: 3 / 4, weightedSum: 18 / 4 },
    ]).members
    expect(one!.mean).toBeCloseTo((5 / 4 + 18 / 4) / (1 / 4 + 3 / 4), 14)
    expect(one!.sd).toBeCloseTo(1, 14)
  })
})

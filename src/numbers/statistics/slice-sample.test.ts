import { describe, expect, it } from 'vitest'
import { seededGenerator } from './seeded-generator.ts'
import { sliceSample } from './slice-sample.ts'

function momentsOf(
  logDensity: (x: number) => number,
  from: number,
  width: number,
): { mean: number; variance: number } {
  const uniform = seededGenerator(4)
  let [x, sum, square] = [from, 0, 0]
  const count = 60_000
  for (let k = 0; k < count; k++) {
    x = sliceSample(logDensity, x, width, uniform)
    sum += x
    square += x * x
  }
  const mean = sum / count
  return { mean, variance: square / count - mean ** 2 }
}

describe('sliceSample', () => {
  it('follows a normal density whatever the width it is told', () => {
    for (const width of [0.1, 1, 30]) {
      const { mean, variance } = momentsOf((x) => -((x - 3) ** 2) / 8, 0, width)
      expect(Math.abs(mean - 3)).toBeLessThan(0.08)
      expect(Math.abs(variance - 4)).toBeLessThan(0.16)
    }
  })

  // A gamma variable of shape a has mean a and variance a: any text on distributions.
  it('follows a skew density with an end', () => {
    const { mean, variance } = momentsOf((x) => (x > 0 ? 1.5 * Math.log(x) - x : -Infinity), 1, 1)
    expect(Math.abs(mean - 2.5)).toBeLessThan(0.06)
    expect(Math.abs(variance - 2.5)).toBeLessThan(0.15)
  })
})

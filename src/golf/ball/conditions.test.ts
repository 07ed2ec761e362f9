import { describe, expect, it } from 'vitest'
import { windInFrame, windShareOverGrass } from './conditions.ts'

describe('windInFrame', () => {
  it('turns a west wind on a hole that runs north into a wind to the right', () => {
    const wind = windInFrame({ speedMetresPerSecond: 5, fromDegrees: 270 }, 0)
    expect(wind.windX).toBeCloseTo(5, 9)
    expect(wind.windY).toBeCloseTo(0, 9)
  })

  it('is a wind into when it blows from where the hole runs to', () => {
    const wind = windInFrame({ speedMetresPerSecond: 5, fromDegrees: 130 }, 130)
    expect(wind.windY).toBeCloseTo(-5, 9)
  })
})

describe('windShareOverGrass', () => {
  // Reference section 3.5, from memory: 2 m wind = 0.72 of the 10 m wind, 25 m wind = 1.16, for z₀ = 0.03 m.
  it('is the logarithmic profile', () => {
    expect(windShareOverGrass(10)).toBe(1)
    expect(windShareOverGrass(2)).toBeCloseTo(0.72, 2)
    expect(windShareOverGrass(25)).toBeCloseTo(1.16, 2)
    expect(windShareOverGrass(-3)).toBeGreaterThan(0)
  })
})

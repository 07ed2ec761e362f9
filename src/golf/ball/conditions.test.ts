import { describe, expect, it } from 'vitest'
import { type Conditions, flightChange, windInFrame } from './conditions.ts'

const CALM: Conditions = {
  windX: 0,
  windY: 0,
  temperatureCelsius: 15,
  altitudeMetres: 0,
  risePerMetre: 0,
  riseHeading: 0,
}

describe('flightChange', () => {
  it('changes nothing at reference conditions, along any heading', () => {
    for (const heading of [-2, 0, 0.3, 3]) {
      expect(flightChange(CALM, heading).carryShare).toBe(1)
      expect(flightChange(CALM, heading).driftShare).toBeCloseTo(0, 12)
    }
  })

  // Common practice: 10 mph into takes 10 %, 10 mph behind gives 5 %; into costs more than behind gives.
  it('costs twice into the wind what the same wind gives behind', () => {
    const tenMph = 4.4704
    expect(flightChange({ ...CALM, windY: -tenMph }, 0).carryShare).toBeCloseTo(0.9, 9)
    expect(flightChange({ ...CALM, windY: tenMph }, 0).carryShare).toBeCloseTo(1.05, 9)
  })

  it('drifts with the wind, to the right when it blows to the right of the heading', () => {
    expect(flightChange({ ...CALM, windX: 4 }, 0).driftShare).toBeCloseTo(0.06, 9)
    expect(flightChange({ ...CALM, windX: 4 }, Math.PI).driftShare).toBeCloseTo(-0.06, 9)
  })

  // Order only: uphill costs carry; uphill costs less than downhill gives in this rule, thin and warm air give carry.
  it('orders height, altitude and temperature', () => {
    expect(flightChange({ ...CALM, risePerMetre: 0.05 }, 0).carryShare).toBeLessThan(1)
    expect(flightChange({ ...CALM, risePerMetre: 0.05 }, Math.PI).carryShare).toBeGreaterThan(1)
    expect(flightChange({ ...CALM, altitudeMetres: 1000 }, 0).carryShare).toBeGreaterThan(1.03)
    expect(flightChange({ ...CALM, temperatureCelsius: 5 }, 0).carryShare).toBeCloseTo(0.98, 9)
  })
})

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

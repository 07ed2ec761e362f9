import { describe, expect, it } from 'vitest'
import { airDensity, standardPressure } from './air.ts'

describe('airDensity', () => {
  // Derived from the gas laws (reference section 3.5); 20 °C dry also equals Penner 2001's 1.204.
  it.each([
    [0, 0, 1.2923],
    [15, 0, 1.225],
    [20, 0, 1.2041],
    [30, 0, 1.1644],
    [30, 1, 1.146],
    [5, 0.5, 1.267],
  ])('is the tabulated one at %i °C and humidity %f', (celsius, humidity, density) => {
    expect(airDensity(celsius, 101_325, humidity)).toBeCloseTo(density, 3)
  })

  // ICAO standard atmosphere: density at altitude as a share of that at sea level.
  it.each([
    [500, 0.9529],
    [1000, 0.9075],
    [1524, 0.8617],
    [2000, 0.8216],
    [3048, 0.7385],
  ])('thins with altitude as the standard atmosphere does: %i m', (metres, share) => {
    const density = airDensity(15 - 0.0065 * metres, standardPressure(metres), 0)
    expect(density / airDensity(15, 101_325, 0)).toBeCloseTo(share, 3)
  })

  it('is lighter when it is moist', () => {
    expect(airDensity(25, 101_325, 0.9)).toBeLessThan(airDensity(25, 101_325, 0.1))
  })
})

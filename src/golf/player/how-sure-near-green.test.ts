import { describe, expect, it } from 'vitest'
import { howSureNearGreen } from './how-sure-near-green.ts'
import { playerOfLevel } from './level.ts'

describe('howSureNearGreen', () => {
  it('holes half the putts from where the published levels do', () => {
    // Broadie 2008: average scores of 84–97 hole half from 5.1 ft, of 98–120 from 3.8 ft; about index 16 and 31.
    const { halfHoledMetres } = howSureNearGreen(playerOfLevel('15', { sex: 'male' }))
    expect(halfHoledMetres.value / 0.3048).toBeGreaterThan(4.9)
    expect(halfHoledMetres.value / 0.3048).toBeLessThan(5.5)
    const worse = howSureNearGreen(playerOfLevel('30', { sex: 'male' })).halfHoledMetres.value / 0.3048
    expect(worse).toBeGreaterThan(3.6)
    expect(worse).toBeLessThan(4.1)
  })

  it('has the number inside its range, and a better player the better numbers', () => {
    const [good, poor] = (['5', '25'] as const).map((level) => howSureNearGreen(playerOfLevel(level)))
    for (const { low, value, high } of [good, poor].flatMap((sure) => Object.values(sure!))) {
      expect(low).toBeLessThan(value)
      expect(high).toBeGreaterThan(value)
    }
    expect(good!.upAndDownShare.low).toBeGreaterThan(poor!.upAndDownShare.high)
    expect(good!.halfHoledMetres.value).toBeGreaterThan(poor!.halfHoledMetres.value)
  })
})

import { airDensity, standardPressure } from '../../src/golf/ball/air.ts'
import type { PublishedRow } from './published-row.ts'

const GAS_LAWS = 'gas laws with the vapour pressure of Buck (1981, 1996)'
const STANDARD_ATMOSPHERE = 'ICAO standard atmosphere, Doc 7488'

const DENSITIES = [
  [0, 0, 1.2923, 'DERIVED'],
  [15, 0, 1.225, 'DERIVED'],
  [20, 0, 1.2041, 'DERIVED; Penner 2001 has 1.204'],
  [30, 0, 1.1644, 'DERIVED'],
  [30, 1, 1.146, 'DERIVED'],
  [5, 0.5, 1.267, 'DERIVED'],
] as const

const SHARES = [
  [500, 0.9529],
  [1000, 0.9075],
  [1524, 0.8617],
  [2000, 0.8216],
  [3048, 0.7385],
] as const

/** Density of air by temperature and humidity, and its share of that at sea level by altitude. */
export function airRows(): PublishedRow[] {
  const density = DENSITIES.map(([celsius, humidity, published, status]) => ({
    what: `density at ${celsius} °C, humidity ${100 * humidity} %, 1013.25 hPa`,
    unit: 'kg/m³',
    published,
    source: GAS_LAWS,
    status,
    ours: airDensity(celsius, 101_325, humidity),
    decimals: 4,
    bound: 0.0005,
  }))
  const sea = airDensity(15, 101_325, 0)
  const altitude = SHARES.map(([metres, published]) => ({
    what: `density at ${metres} m as a share of that at sea level`,
    unit: '',
    published,
    source: STANDARD_ATMOSPHERE,
    status: 'DERIVED',
    ours: airDensity(15 - 0.0065 * metres, standardPressure(metres), 0) / sea,
    decimals: 4,
    bound: 0.0005,
  }))
  return [...density, ...altitude]
}

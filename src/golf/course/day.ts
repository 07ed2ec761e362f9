/** Where a hole is cut, as a pin sheet says it. */
export interface DayPin {
  /** Paces on from the front of the green. */
  readonly yPaces: number
  /** Paces in from the named edge at that depth; of a pin in the middle they say nothing. */
  readonly xPaces: number
  readonly from: 'left' | 'right' | 'middle'
}

/** The conditions of one day: what changes without the course changing. SI, degrees Celsius. */
export interface Day {
  readonly date: string | null
  readonly wind: { readonly speedMetresPerSecond: number; readonly fromDegrees: number }
  readonly temperatureCelsius: number
  readonly altitudeMetres: number
  readonly pressureHectopascal: number | null
  /** Multiplies run: soft 0.4, normal 1, firm 1.7. */
  readonly firmness: number
  /** Green speed on the standard ramp test, feet. */
  readonly greenSpeedFeet: number
  readonly rough: 'short' | 'normal' | 'long'
  /** By hole ref. */
  readonly pins: Readonly<Record<string, DayPin>>
  /** By hole ref: metres the markers stand ahead (+) or behind (−) their plate. */
  readonly tees: Readonly<Record<string, { readonly movedMetres: number }>>
}

/** A calm, mild, normal day at sea level: what stock distances refer to. */
export const REFERENCE_DAY: Day = {
  date: null,
  wind: { speedMetresPerSecond: 0, fromDegrees: 0 },
  temperatureCelsius: 15,
  altitudeMetres: 0,
  pressureHectopascal: null,
  firmness: 1,
  greenSpeedFeet: 9,
  rough: 'normal',
  pins: {},
  tees: {},
}

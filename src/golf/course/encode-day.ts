import type { Day } from './day.ts'

/** A day as a `day/1` file, which {@link parseDay} reads back the same. */
export function encodeDay(day: Day): string {
  const {
    date,
    wind,
    temperatureCelsius,
    altitudeMetres,
    pressureHectopascal,
    firmness,
    greenSpeedFeet,
    rough,
  } = day
  const file = {
    schema: 'day/1',
    ...(date === null ? {} : { date }),
    wind: { speed_mps: wind.speedMetresPerSecond, from_deg: wind.fromDegrees },
    temperature_c: temperatureCelsius,
    altitude_m: altitudeMetres,
    pressure_hpa: pressureHectopascal,
    firmness,
    greenSpeed_ft: greenSpeedFeet,
    rough,
    pins: mapped(day.pins, ({ xPaces, yPaces, from }) => ({
      ...(from === 'middle' ? {} : { x_paces: xPaces }),
      y_paces: yPaces,
      from,
    })),
    tees: mapped(day.tees, ({ movedMetres }) => ({ moved_m: movedMetres })),
  }
  return `${JSON.stringify(file, null, 2)}\n`
}

function mapped<From, To>(of: Readonly<Record<string, From>>, to: (from: From) => To): Record<string, To> {
  return Object.fromEntries(Object.entries(of).map(([name, value]) => [name, to(value)]))
}

import { HALF_LIFE_DAYS, WARMEST_DAY } from './learn-settings.ts'

const DAY = 86_400_000
const YEAR_DAYS = 365.25

/** Days since 1970 of an ISO day; `null` when there is none. */
export function dayNumber(date: string | null): number | null {
  const time = date === null ? Number.NaN : Date.parse(`${date.slice(0, 10)}T00:00:00Z`)
  return Number.isFinite(time) ? time / DAY : null
}

/** Place of a day in the year's wave: 1 when the north is warmest, −1 half a year later. */
export function seasonWave(day: number): number {
  // Years counted from the first of January 1970: within a day of the calendar, which moves no shot.
  return Math.cos((2 * Math.PI * (day - WARMEST_DAY)) / YEAR_DAYS)
}

/** How much a shot of that day counts by now: half after each half-life; never more than a shot of today. */
export function recencyWeight(day: number, today: number): number {
  return 2 ** (-Math.max(0, today - day) / HALF_LIFE_DAYS)
}

import type { ShotRecord } from '#golf/player/shot-record.ts'
import { FAR_DATES } from './settings.ts'

/** A few shots dated long after all others, or very long before: their places, ascending, and the years between. */
export interface FarDates {
  readonly places: readonly number[]
  readonly years: number
  readonly isAfter: boolean
}

const YEAR = 365.25 * 86_400_000

/**
 * Dates that are a slip of the pen by their distance from the rest. It matters: shots are old or new by the newest of
 * them, so one dated years ahead would make all others count for nothing.
 */
export function farDates(shots: readonly ShotRecord[]): readonly FarDates[] {
  const dated = shots
    .flatMap(({ date }, place) => {
      const time = date === null ? Number.NaN : Date.parse(date)
      return Number.isFinite(time) ? [{ place, time }] : []
    })
    .sort((a, b) => a.time - b.time)
  const few = dated.length < FAR_DATES.leastShots ? 0 : Math.max(1, FAR_DATES.mostShare * dated.length)
  return [
    apart(dated.toReversed(), few, FAR_DATES.yearsAfter, true),
    apart(dated, few, FAR_DATES.yearsBefore, false),
  ].flatMap((found) => (found === null ? [] : [found]))
}

/** The first of shots in order of time, when they are few and lie so many years from the next. */
function apart(
  shots: readonly { readonly place: number; readonly time: number }[],
  few: number,
  leastYears: number,
  isAfter: boolean,
): FarDates | null {
  let found: FarDates | null = null
  for (let count = 1; count <= few; count++) {
    const [last, next] = [shots[count - 1], shots[count]]
    if (last === undefined || next === undefined) break
    const years = Math.abs(last.time - next.time) / YEAR
    if (years < leastYears) continue
    const places = shots.slice(0, count).map(({ place }) => place)
    found = { places: places.sort((a, b) => a - b), years, isAfter }
  }
  return found
}

import { dayParts, daysOf } from './calendar.ts'

/** The day so many weeks after another, both as `2026-11-25` (Gregorian calendar); `null` for what is no day. */
export function retestDay(from: string, weeks: number): string | null {
  const parts = dayParts(from)
  if (parts === null) return null
  let [year, month, day] = parts
  day += 7 * weeks
  for (let days = daysOf(year, month); day > days; days = daysOf(year, month)) {
    day -= days
    month += 1
    if (month > 12) [year, month] = [year + 1, 1]
  }
  return [String(year).padStart(4, '0'), ...[month, day].map((part) => String(part).padStart(2, '0'))].join(
    '-',
  )
}

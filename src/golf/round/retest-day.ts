/** The day so many weeks after another, both as `2026-11-25` (Gregorian calendar); `null` for what is no day. */
export function retestDay(from: string, weeks: number): string | null {
  const [, ...parts] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(from) ?? []
  let [year = 0, month = 0, day = 0] = parts.map(Number)
  if (month < 1 || month > 12 || day < 1 || day > daysOf(year, month)) return null
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

function daysOf(year: number, month: number): number {
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0
  if (month === 2) return isLeap ? 29 : 28
  return [4, 6, 9, 11].includes(month) ? 30 : 31
}

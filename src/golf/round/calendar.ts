/** Year, month and day of `2026-11-25` (Gregorian calendar); `null` for what is no day. */
export function dayParts(text: string): readonly [number, number, number] | null {
  const [, ...parts] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text) ?? []
  const [year = 0, month = 0, day = 0] = parts.map(Number)
  return month < 1 || month > 12 || day < 1 || day > daysOf(year, month) ? null : [year, month, day]
}

/** How many days a month has, 1 = January. */
export function daysOf(year: number, month: number): number {
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0
  if (month === 2) return isLeap ? 29 : 28
  return [4, 6, 9, 11].includes(month) ? 30 : 31
}

/** The day so many weeks after another, both as `2026-11-25`; `null` for what is no day. */
export function retestDay(from: string, weeks: number): string | null {
  const start = new Date(`${from}T00:00:00Z`)
  if (
    !/^\d{4}-\d\d-\d\d$/.test(from) ||
    Number.isNaN(start.getTime()) ||
    start.toISOString().slice(0, 10) !== from
  )
    return null
  return new Date(start.getTime() + weeks * 7 * 86_400_000).toISOString().slice(0, 10)
}

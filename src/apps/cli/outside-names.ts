/**
 * A record of ours with the field names that JSON carries outside: `reachMetres` → `reach_m`, `bendDegrees` →
 * `bend_deg`, all the way down. Units keep standing in the name; values are untouched.
 */
export function outsideNames(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(outsideNames)
  if (value === null || typeof value !== 'object') return value
  return Object.fromEntries(
    Object.entries(value).map(([name, inside]) => [
      name
        .replace(/Metres$/, '_m')
        .replace(/Degrees$/, '_deg')
        .replace(/Percent$/, '_percent'),
      outsideNames(inside),
    ]),
  )
}

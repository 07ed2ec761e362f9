import type { Reader } from '../desk/desk.ts'

/** How the reader likes to read, from what was kept; what is missing or unknown is as usual. */
export function readReader(text: string | null): Reader {
  const kept = recordOf(text)
  return {
    units: kept.units === 'metres' ? 'metres' : 'yards',
    windUnit: kept.windUnit === 'mph' || kept.windUnit === 'knots' ? kept.windUnit : 'm/s',
    theme: kept.theme === 'night' || kept.theme === 'sun' ? kept.theme : 'day',
    print: kept.print === 'large' ? 'large' : 'usual',
  }
}

function recordOf(text: string | null): Readonly<Record<string, unknown>> {
  try {
    const kept: unknown = JSON.parse(text ?? '{}')
    return typeof kept === 'object' && kept !== null ? (kept as Readonly<Record<string, unknown>>) : {}
  } catch {
    return {}
  }
}

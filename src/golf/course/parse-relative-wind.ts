import { Failure } from '#faults/failure.ts'
import type { Day } from './day.ts'
import { DAY_RANGES } from './settings.ts'

/** Where the wind of each word comes from, degrees clockwise from the direction of play. */
const FROM = { into: 0, right: 90, behind: 180, left: 270 } as const

/**
 * The wind of words such as `into:7` (m/s) on a hole of that true bearing: `into` blows from the pin, `behind` from
 * the tee, `left` and `right` from that side. Throws a Failure for anything else.
 */
export function parseRelativeWind(text: string, bearingDegrees: number): Day['wind'] {
  const match = /^(into|behind|left|right):(\d+(?:\.\d+)?)$/.exec(text.trim().toLowerCase())
  const side = match?.[1] as keyof typeof FROM | undefined
  const speedMetresPerSecond = Number(match?.[2])
  const { from, to } = DAY_RANGES.windMetresPerSecond
  if (side === undefined || speedMetresPerSecond < from || speedMetresPerSecond > to)
    throw new Failure(
      'MAR-DAY-006',
      `"${text}" is no wind: write into, behind, left or right, a colon, and ${from} to ${to} m/s, such as into:7.`,
    )
  return { speedMetresPerSecond, fromDegrees: (((bearingDegrees + FROM[side]) % 360) + 360) % 360 }
}

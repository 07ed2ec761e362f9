import type { Point } from '#numbers/geometry/point.ts'

/** A turn of the hole line. */
export interface Bend {
  /** Metres along the line. */
  readonly at: number
  /** Radians, right positive. */
  readonly turn: number
}

/** A hole line that starts northwards at the origin and turns at its bends; metres. */
export interface BentLine {
  /** The point so far along and so far off the line, right positive; beyond the ends the first and last leg go on. */
  readonly place: (along: number, offset: number) => Point
  /** Where it turns, metres along, in order. */
  readonly turns: readonly number[]
}

/**
 * Lays out a line from its bends. Offsets at a bend lie on its bisector, so that strips on both sides of a dogleg
 * stay whole.
 */
export function bentLine(bends: readonly Bend[]): BentLine {
  const sorted = [...bends].sort((a, b) => a.at - b.at)
  const legs: { readonly at: number; readonly start: Point; readonly heading: number }[] = [
    { at: Number.NEGATIVE_INFINITY, start: [0, 0], heading: 0 },
  ]
  let from = 0
  let [x, y] = [0, 0]
  let heading = 0
  for (const bend of sorted) {
    x += (bend.at - from) * Math.sin(heading)
    y += (bend.at - from) * Math.cos(heading)
    heading += bend.turn
    from = bend.at
    legs.push({ at: bend.at, start: [x, y], heading })
  }
  const place = (along: number, offset: number): Point => {
    const index = legs.findLastIndex((leg) => leg.at <= along)
    const leg = legs[index] ?? { at: 0, start: [0, 0] as Point, heading: 0 }
    const past = along - Math.max(leg.at, index === 0 ? 0 : leg.at)
    const before = legs[index - 1]
    // Exactly on a bend the sideways direction is its bisector, longer by the mitre.
    const turn = before && past === 0 ? leg.heading - before.heading : 0
    const side = leg.heading - turn / 2 + Math.PI / 2
    const reach = offset / Math.cos(turn / 2)
    return [
      leg.start[0] + past * Math.sin(leg.heading) + reach * Math.sin(side),
      leg.start[1] + past * Math.cos(leg.heading) + reach * Math.cos(side),
    ]
  }
  return { place, turns: sorted.map((bend) => bend.at) }
}

import type { Point, Ring } from '#numbers/geometry/point.ts'
import { distance } from '#numbers/geometry/point.ts'
import type { Place, Station } from './hole-design.ts'
import { roundedLine, shapeGenerator } from './shapes.ts'

/** How far before and after a bend a ball in play already turns, metres. Our choice. */
const BEND_REACH = 55

/** How a hole is played, as a smooth line on which places are measured. */
export interface LineOfPlay {
  readonly lengthMetres: number
  /** Course plane; beyond either end the line goes straight on. */
  readonly toPlane: (place: Place) => Point
  /** Heading in radians clockwise from north at a distance along. */
  readonly headingAt: (along: number) => number
}

/** The line of play through the architect's points, its bends rounded. */
export function lineOfPlay(points: readonly Point[]): LineOfPlay {
  const line = roundedLine(points, BEND_REACH, 4)
  const starts: number[] = [0]
  for (let i = 1; i < line.length; i++)
    starts.push((starts[i - 1] ?? 0) + distance(line[i - 1] as Point, line[i] as Point))
  const lengthMetres = starts[starts.length - 1] ?? 0

  function legAt(along: number): { readonly from: Point; readonly to: Point; readonly start: number } {
    let i = 0
    while (i < line.length - 2 && (starts[i + 1] ?? 0) <= along) i++
    return { from: line[i] as Point, to: line[i + 1] as Point, start: starts[i] ?? 0 }
  }

  function headingAt(along: number): number {
    // Over a few metres, so that the sides of a corridor have no steps.
    const near = legAt(along - 4)
    const far = legAt(along + 4)
    return Math.atan2(far.to[0] - near.from[0], far.to[1] - near.from[1])
  }

  function toPlane(place: Place): Point {
    const { from, to, start } = legAt(place[0])
    const share = (place[0] - start) / distance(from, to)
    const heading = headingAt(place[0])
    return [
      from[0] + share * (to[0] - from[0]) + place[1] * Math.cos(heading),
      from[1] + share * (to[1] - from[1]) - place[1] * Math.sin(heading),
    ]
  }

  return { lengthMetres, toPlane, headingAt }
}

/** The outline of a corridor along the line of play, wider by `margin` metres all round, its ends rounded. */
export function corridorOutline(
  play: LineOfPlay,
  name: string,
  stations: readonly Station[],
  margin: number,
): Ring {
  const random = shapeGenerator(name)
  const waves = [37, 59, 97].map((length) => ({ length, left: random() * 7, right: random() * 7 }))
  const first = stations[0]
  const last = stations[stations.length - 1]
  if (first === undefined || last === undefined) throw new Error(`${name} has no stations`)
  const from = first[0] - margin
  const to = last[0] + margin
  const pieces = Math.round((to - from) / 4)
  const edge = (side: 'left' | 'right'): Point[] =>
    Array.from({ length: pieces + 1 }, (_, k) => {
      const along = from + ((to - from) * k) / pieces
      const ends = endShare(Math.min(along - from, to - along), 14)
      const uneven = waves.reduce(
        (sum, wave) => sum + 0.6 * Math.sin((2 * Math.PI * along) / wave.length + wave[side]),
        0,
      )
      const half = (widthAt(stations, along, side) + uneven + margin) * ends
      return play.toPlane([along, side === 'left' ? -half : half])
    })
  return [...edge('left'), ...edge('right').reverse()]
}

/** 0 at the very end of a corridor, 1 from `reach` metres on, rounded like a quarter circle. */
function endShare(fromEnd: number, reach: number): number {
  if (fromEnd >= reach) return 1
  const missing = 1 - Math.max(0, fromEnd) / reach
  return Math.max(0.12, Math.sqrt(1 - missing * missing))
}

function widthAt(stations: readonly Station[], along: number, side: 'left' | 'right'): number {
  const column = side === 'left' ? 1 : 2
  const next = stations.findIndex((station) => station[0] >= along)
  if (next === 0) return stations[0]?.[column] ?? 0
  if (next < 0) return stations[stations.length - 1]?.[column] ?? 0
  const a = stations[next - 1] as Station
  const b = stations[next] as Station
  const t = (along - a[0]) / (b[0] - a[0])
  return a[column] + (b[column] - a[column]) * t * t * (3 - 2 * t)
}

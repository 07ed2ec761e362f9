import { Failure } from '#faults/failure.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { pointAlong, polylineLength, projectOnPolyline } from '#numbers/geometry/polyline.ts'
import type { Course, HoleLine } from '../course.ts'
import { ahead, headingTo } from '../measures/ahead.ts'
import { servingTees, teeStretch } from '../serving-tees.ts'
import { BEND_TOO_NEAR_METRES } from '../settings.ts'

/** Where a hole is started from, on the course plane. */
export interface Markers {
  readonly teeName: string
  readonly position: Point
  /** The vertices of the hole line still ahead, its surveyed end last; at least one. */
  readonly onward: readonly Point[]
  /** Direction of the first leg, radians clockwise from north. */
  readonly bearingRadians: number
  readonly elevationMetres: number | null
}

/**
 * The markers of one tee of a hole, moved ahead along the first leg by what the day says. Without a name: the tee
 * nearest the start of the line, or the start itself where no tee is mapped. A name that only the card knows
 * (`dist:<tee>`) puts the markers where the line is as long as the card says. Throws a Failure for any other name.
 */
export function markersOf(
  course: Course,
  hole: HoleLine,
  teeName: string | null,
  movedMetres: number,
): Markers {
  const start = hole.line[0]
  const end = hole.line.at(-1)
  if (!start || !end || polylineLength(hole.line) < 1)
    throw new Failure('MAR-COURSE-004', `Hole ${hole.ref} has no line to play along.`, `hole ${hole.ref}`)
  const plate = teePlate(course, hole, teeName) ?? { name: '', position: start, elevationMetres: null }
  const onward = vertices(hole.line, plate.position)
  const next = onward[0] ?? end
  const bearingRadians = headingTo(plate.position, next)
  return {
    teeName: plate.name,
    position: ahead(plate.position, bearingRadians, movedMetres),
    onward,
    bearingRadians,
    elevationMetres: plate.elevationMetres,
  }
}

interface Plate {
  readonly name: string
  readonly position: Point
  readonly elevationMetres: number | null
}

function teePlate(course: Course, hole: HoleLine, teeName: string | null): Plate | null {
  const tees = servingTees(course, hole)
  if (teeName === null) return tees[0] ?? null
  const wanted = teeName.trim().toLowerCase()
  const mapped = tees.find((tee) => tee.name.toLowerCase() === wanted)
  if (mapped) return mapped
  const onCard = Object.entries(hole.cardLengths).find(
    ([name]) => name !== '' && name.toLowerCase() === wanted,
  )
  if (onCard)
    return { name: onCard[0], position: markersForLength(hole.line, onCard[1]), elevationMetres: null }
  throw new Failure('MAR-COURSE-002', unknownTee(course, hole, teeName), `hole ${hole.ref}`)
}

function unknownTee(course: Course, hole: HoleLine, teeName: string): string {
  const names = new Set([
    ...servingTees(course, hole).map((tee) => tee.name),
    ...Object.keys(hole.cardLengths),
  ])
  names.delete('')
  const known = names.size > 0 ? `Its tees are: ${[...names].join(', ')}.` : 'No tee of it has a name.'
  return `Hole ${hole.ref} has no tee "${teeName}". ${known}`
}

/** The place on the line, or straight back from its start, from which the rest is so long. */
function markersForLength(line: readonly Point[], metres: number): Point {
  const spare = polylineLength(line) - metres
  const [start, second] = [line[0], line[1]]
  if (spare >= 0 || !start || !second) return pointAlong(line, Math.max(0, spare))
  return ahead(start, headingTo(start, second), spare)
}

/** The line's vertices ahead of the markers, leaving out a bend so near that it would only turn the frame. */
function vertices(line: readonly Point[], markers: Point): Point[] {
  const along = projectOnPolyline(teeStretch(line), markers).along
  const onward: Point[] = []
  let travelled = 0
  for (const [index, point] of line.entries()) {
    const previous = line[index - 1]
    if (!previous) continue
    travelled += distance(previous, point)
    const isEnd = index === line.length - 1
    if (isEnd || travelled > along + BEND_TOO_NEAR_METRES) onward.push(point)
  }
  return onward
}

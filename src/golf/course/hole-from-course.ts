import { Failure } from '#faults/failure.ts'
import { planarFrame } from '#numbers/geometry/frame.ts'
import { meanGradient } from '#numbers/geometry/mean-gradient.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { polylineLength } from '#numbers/geometry/polyline.ts'
import { radiansToDegrees, wholeTurn } from '#numbers/units/units.ts'
import { suggestPar } from './assembly/read-par.ts'
import type { Area, Course, HoleLine } from './course.ts'
import type { Day } from './day.ts'
import { greenHeights, moveGreenHeights, moveHeightGrid } from './green-heights.ts'
import { surfaceOfHeights } from './green-surface.ts'
import { greenOfHole } from './greens/green-of-hole.ts'
import type { Hole } from './hole.ts'
import { corridorAreas, corridorTrees } from './holes/corridor.ts'
import { markersOf } from './holes/markers.ts'
import { edgePin, middlePin, pacedPin, requireOnGreen } from './holes/pin-position.ts'

/** What is chosen about a hole before it is played. */
export interface HoleChoice {
  /** Name of the tee in any case; absent = the tee nearest the start of the line. */
  readonly tee?: string | undefined
  /** Moves the markers and, where `pin` is absent, cuts the hole. */
  readonly day?: Day | undefined
  /** A part of the green, or a place in the hole frame; absent = what the day says, else the middle. */
  readonly pin?: 'middle' | 'front' | 'back' | Point | undefined
}

/**
 * One hole of a course as played from one set of markers to one pin, in its hole frame. The frame follows the
 * surveyed line, so it does not turn when the pin is moved. Throws a Failure that says what the survey lacks or
 * which names are known.
 */
export function holeFromCourse(course: Course, ref: string, choice: HoleChoice = {}): Hole {
  const hole = findHole(course, ref)
  const moved = choice.day?.tees[ref]?.movedMetres ?? 0
  const markers = markersOf(course, hole, choice.tee ?? null, moved)
  const frame = planarFrame(markers.position, markers.bearingRadians)
  const green = greenOfHole(course, hole)
  const lastBend = markers.onward.at(-2) ?? markers.position
  const pin = choosePin(
    hole,
    green,
    lastBend,
    choice,
    () => middlePin(course, hole, green, lastBend),
    frame.fromFrame,
  )
  const plane = [markers.position, ...markers.onward.slice(0, -1), pin]
  const line = plane.map(frame.toFrame)
  const bearingDegrees = wholeTurn(radiansToDegrees(markers.bearingRadians))
  const shape = greenShape(course, green, frame.toFrame, bearingDegrees)
  const lengthMetres = polylineLength(line)
  return {
    ref: hole.ref,
    name: hole.name,
    par: hole.par ?? suggestPar(lengthMetres),
    isParGuess: hole.par === null,
    strokeIndex: hole.strokeIndex,
    teeName: markers.teeName,
    line,
    lengthMetres,
    bearingDegrees,
    isBearingInvented: hole.isBearingInvented,
    pin: frame.toFrame(pin),
    ...shape,
    riseMetres: rise(markers.elevationMetres, green?.elevationMetres ?? null),
    areas: corridorAreas(course.areas, hole.ref, plane).map((area) => ({
      ...area,
      polygon: movedPolygon(area.polygon, frame.toFrame),
      heightGrid: area.heightGrid && moveHeightGrid(area.heightGrid, frame.toFrame),
    })),
    trees: corridorTrees(course.trees, plane).map((tree) => ({
      ...tree,
      position: frame.toFrame(tree.position),
    })),
    localRules: course.localRules,
  }
}

/** The outline, fall and heights of a green in the hole frame. */
function greenShape(
  course: Course,
  green: Area | null,
  toFrame: (point: Point) => Point,
  bearingDegrees: number,
): Pick<
  Hole,
  'green' | 'greenFallPercent' | 'greenFallTowardDegrees' | 'greenHeights' | 'greenGridCellMetres'
> {
  const outline = green && movedPolygon(green.polygon, toFrame)
  const measured = green && greenHeights(course, green)
  const heights = measured && moveGreenHeights(measured, toFrame)
  const surface = heights && surfaceOfHeights(heights)
  const [riseX, riseY] = surface && outline ? meanGradient(surface, outline) : [0, 0]
  return {
    green: outline,
    greenFallPercent: surface ? 100 * Math.hypot(riseX, riseY) : (green?.fallPercent ?? 0),
    greenFallTowardDegrees: surface
      ? wholeTurn(radiansToDegrees(Math.atan2(-riseX, -riseY)))
      : wholeTurn((green?.fallTowardDegrees ?? bearingDegrees) - bearingDegrees),
    greenHeights: surface ? heights : null,
    greenGridCellMetres: green?.gridCellMetres ?? null,
  }
}

function findHole(course: Course, ref: string): HoleLine {
  const hole = course.holes.find((candidate) => candidate.ref === ref)
  if (hole) return hole
  const refs = course.holes.map((candidate) => candidate.ref)
  throw new Failure(
    'MAR-COURSE-001',
    refs.length > 0
      ? `There is no hole ${ref} on ${course.name || 'this course'}. Its holes are: ${refs.join(', ')}.`
      : `${course.name || 'This course'} has no holes.`,
    `hole ${ref}`,
  )
}

function choosePin(
  hole: HoleLine,
  green: Area | null,
  lastBend: Point,
  choice: HoleChoice,
  middle: () => Point,
  fromFrame: (point: Point) => Point,
): Point {
  const paces = choice.day?.pins[hole.ref]
  if (choice.pin === undefined && paces) return pacedPin(hole, green, lastBend, paces)
  if (choice.pin === undefined || choice.pin === 'middle') return middle()
  if (choice.pin === 'front' || choice.pin === 'back') return edgePin(hole, green, lastBend, choice.pin)
  const pin = fromFrame(choice.pin)
  requireOnGreen(hole, green, pin)
  return pin
}

function movedPolygon(polygon: Polygon, move: (point: Point) => Point): Polygon {
  return polygon.map((ring) => ring.map(move))
}

/** Height of the green above the markers, metres; 0 when either is unknown. */
function rise(markers: number | null, green: number | null): number {
  return markers === null || green === null ? 0 : green - markers
}

import { approachHole } from '#golf/course/approach-hole.ts'
import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { polygonBounds } from '#numbers/geometry/polygon.ts'
import { drawSurvey } from '#paper/draw/draw-hole.ts'
import type { Drawing } from '#paper/draw/drawing.ts'
import { renderSvg } from '#paper/draw/render-svg.ts'
import { sheetInFrame } from '#paper/draw/sheet.ts'
import type { GreenPicture, HolePicture } from './hole-picture.ts'

/** The hole as it is played that day; `null` when it cannot be laid out. */
export function playedHole(course: Course, ref: string, tee: string | null, day: Day | null): Hole | null {
  try {
    return holeFromCourse(course, ref, { ...(tee === null ? {} : { tee }), ...(day === null ? {} : { day }) })
  } catch {
    return null
  }
}

/** The picture of a hole: ground without figures, and for a round that counts without heights and falls. */
export function drawPicture(surveyed: Hole, isCounting: boolean, hasGreen: boolean): HolePicture {
  // What a survey measured of a green is no business of a round that counts.
  const hole = isCounting ? { ...surveyed, greenFallPercent: 0, greenHeights: null } : surveyed
  const box = boxOf(hole)
  const [across, along] = [box.maxX - box.minX, box.maxY - box.minY]
  const width = 360
  const unitsPerMetre = Math.min(width / across, MOST_HIGH / along)
  const height = Math.ceil(along * unitsPerMetre)
  const middle: Point = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2]
  return {
    ref: hole.ref,
    ground: groundOf(hole, { left: 0, top: 0, right: width, bottom: height }, middle, unitsPerMetre, 'h'),
    width,
    height,
    unitsPerMetre,
    middle,
    green: hasGreen ? greenOf(hole) : null,
  }
}

function greenOf(hole: Hole): GreenPicture | null {
  if (hole.green === null) return null
  // The green stands as the player comes to it.
  const approached = approachHole(hole)
  const { minX, maxX, minY, maxY } = polygonBounds(approached.green ?? hole.green)
  const [across, along] = [maxX - minX + 2 * GREEN_ROOM, maxY - minY + 2 * GREEN_ROOM]
  const frame = { left: 0, top: 0, right: across * GREEN_UNITS, bottom: along * GREEN_UNITS }
  const middle: Point = [(minX + maxX) / 2, (minY + maxY) / 2]
  return {
    ground: groundOf(approached, frame, middle, GREEN_UNITS, 'g'),
    acrossMetres: across,
    alongMetres: along,
  }
}

function groundOf(
  hole: Hole,
  frame: Parameters<typeof sheetInFrame>[0],
  middle: Point,
  unitsPerMetre: number,
  idPrefix: string,
): string {
  const sheet = sheetInFrame(frame, middle, unitsPerMetre)
  // The first layer is the ground alone: line, distances and figures come after it.
  const [ground] = drawSurvey(hole, sheet, { hasTitle: false }).ground
  const drawing: Drawing = {
    width: sheet.width,
    height: sheet.height,
    title: '',
    description: '',
    shapes: ground === undefined ? [] : [ground],
  }
  return renderSvg(drawing, {
    colours: { ink: '#000', paper: '#fff', spot: '#000' },
    hasPaper: false,
    lineWeight: SUN_LINE_WEIGHT,
    idPrefix: `${idPrefix}${hole.ref.replaceAll(/\W/g, '')}`,
  })
}

/** The line and the green with room for balls beside and beyond. */
function boxOf({ line, pin, green }: Hole) {
  const points = [...line, pin, ...(green?.[0] ?? [])]
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
  return {
    minX: Math.min(...xs) - ROOM_BESIDE,
    maxX: Math.max(...xs) + ROOM_BESIDE,
    minY: Math.min(...ys) - ROOM_BEHIND,
    maxY: Math.max(...ys) + ROOM_BEYOND,
  }
}

/** Room about the line, metres, the height of a picture and the size of a green, drawing units: our assumption, for a phone held upright. */
const ROOM_BESIDE = 45
const ROOM_BEHIND = 12
const ROOM_BEYOND = 30
const MOST_HIGH = 460
const GREEN_ROOM = 4
const GREEN_UNITS = 8
/** Lines as heavy as on the desk in full sun. */
const SUN_LINE_WEIGHT = 1.4

import type { Hole } from '#golf/course/hole.ts'
import { measureHole } from '#golf/course/measure-hole.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { drawSurvey } from '../draw/draw-hole.ts'
import { sheetInFrame } from '../draw/sheet.ts'
import { rectangleSteps } from '../draw/steps.ts'
import type { BookFacts } from './book-facts.ts'
import type { Page } from './page.ts'
import type { BookHole } from './planned-hole.ts'
import { POCKET, POINTS_PER_MILLIMETRE, RULE, TYPE } from './settings.ts'
import type { Purpose } from './stroke-words.ts'
import { text } from './text.ts'

/** The left page of a hole: the hole to a round scale that is written on it, with numbers to reach and to carry. */
export function holePage(
  { hole: surveyed }: BookHole,
  { ruler, purpose }: BookFacts,
  size: { readonly width: number; readonly height: number },
): Page {
  const hole = carriedHole(surveyed, purpose)
  const frame = {
    left: POCKET.margin,
    top: POCKET.margin + 26,
    right: size.width - POCKET.margin,
    bottom: size.height - POCKET.margin - 12,
  }
  const box = boxOf(hole)
  const [across, along] = [box.maxX - box.minX, box.maxY - box.minY]
  const scale = smallestFitting(
    Math.max(across / (frame.right - frame.left), along / (frame.bottom - frame.top - 2 * FLAG_POINTS)),
  )
  const middle: Point = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2]
  const sheet = sheetInFrame(frame, middle, pointsPerMetre(scale))
  const options = { units: ruler.word, measures: measureHole(hole) }
  const facts = [
    `par ${hole.par}`,
    `${ruler.figure(hole.lengthMetres)} ${ruler.sign}`,
    ...(hole.strokeIndex === null ? [] : [`index ${hole.strokeIndex}`]),
  ]
  return {
    name: `hole ${hole.ref}`,
    greens: [],
    plansFrom: [],
    drawing: {
      ...size,
      title: `Hole ${hole.ref}`,
      description: facts.join(', '),
      shapes: [
        text(hole.ref, [frame.left, frame.top - 8], TYPE.title + 4, 'sans-bold'),
        text(facts.join(', '), [frame.right, frame.top - 8], TYPE.small, 'sans', 'end'),
        ...drawSurvey(hole, sheet, options).ground,
        {
          kind: 'path',
          steps: rectangleSteps(frame.left, frame.top, frame.right - frame.left, frame.bottom - frame.top),
          stroke: { paint: 'ink', width: RULE.fine },
        },
        text(`Scale 1:${scale}`, [frame.left, frame.bottom + 12], TYPE.small, 'sans'),
        text(`numbers in ${ruler.word}`, [frame.right, frame.bottom + 12], TYPE.small, 'sans', 'end'),
      ],
    },
  }
}

/** Without heights of the green where its slope may not be carried. */
export function carriedHole(hole: Hole, purpose: Purpose): Hole {
  return purpose === 'practice' ? hole : { ...hole, greenFallPercent: 0, greenHeights: null }
}

/** Points on paper for a metre of ground at 1 to `scale`. */
export function pointsPerMetre(scale: number): number {
  return (1000 * POINTS_PER_MILLIMETRE) / scale
}

/** The first round scale at which so many metres to the point fit. */
function smallestFitting(metresPerPoint: number): number {
  const least = metresPerPoint * 1000 * POINTS_PER_MILLIMETRE
  return SCALES.find((scale) => scale >= least) ?? 500 * Math.ceil(least / 500)
}

/** A flag is as high at every scale, and stands above what is fitted. */
const FLAG_POINTS = 10

const SCALES = [1000, 1250, 1500, 2000, 2500, 3000, 3500, 4000, 4500, 5000]

/** What of a hole is shown: its line and green with room around, metres. */
function boxOf({ line, green, pin }: Hole): { minX: number; maxX: number; minY: number; maxY: number } {
  const points = [...line, pin, ...(green?.[0] ?? [])]
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
  return {
    minX: Math.min(...xs) - POCKET.roomBeside,
    maxX: Math.max(...xs) + POCKET.roomBeside,
    minY: Math.min(...ys) - POCKET.roomAlong,
    maxY: Math.max(...ys) + POCKET.roomAlong,
  }
}

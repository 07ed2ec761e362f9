import type { Relief, ReliefPoint } from '#golf/strategy/relief.ts'
import type { Point } from '#numbers/geometry/point.ts'
import type { GroupShape, Shape } from '../drawing.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import type { Sheet } from '../sheet.ts'
import { circleSteps, lineSteps, polylineSteps, rectangleSteps } from '../steps.ts'
import { hatchArea } from './hatch-area.ts'
import { placeLetters } from './place-letters.ts'

/** A relief area smaller than this on the sheet is left to the enlarged plan, units. */
const SMALLEST_AREA = 14

/**
 * What the Rules give one ball, on any sheet of its hole: relief areas hatched, the ball's way dotted, the point of
 * crossing a small cross, the ball a ring, each spot a dot with its letter, the reference line broken.
 */
export function drawReliefMarks(relief: Relief, sheet: Sheet, pin: Point): GroupShape {
  const { left, top, right, bottom } = sheet.frame
  const { situation, options } = relief
  const at = (point: ReliefPoint): Point => sheet.toSheet([point.x_m, point.y_m])
  const ball = situation.ball && at(situation.ball)
  const crossing = situation.crossing && at(situation.crossing)
  const spots = options.map(({ letter, spot }) => ({ letter, at: at(spot) }))
  return {
    kind: 'group',
    name: 'relief',
    clip: rectangleSteps(left, top, right - left, bottom - top),
    shapes: [
      ...options.flatMap(({ area_m: area }, index) =>
        isLarge(area.flat(2).map(sheet.toSheet)) ? [hatchArea(area, index, sheet)] : [],
      ),
      ...referenceLine(relief, sheet, pin),
      {
        kind: 'path',
        steps: polylineSteps(situation.path.map(at)),
        stroke: {
          paint: 'spot',
          width: DRAW_SETTINGS.heavyLine,
          dash: [0.1, 4],
          cap: 'round',
          join: 'round',
        },
      },
      ...(ball === null ? [] : [ring(ball)]),
      ...(crossing === null ? [] : [cross(crossing)]),
      { kind: 'dots', points: spots.map((spot) => spot.at), radius: 2.2, fill: 'spot' },
      ...placeLetters(spots, [...(ball ? [ball] : []), ...(crossing ? [crossing] : [])], sheet),
    ],
  }
}

function isLarge(corners: readonly Point[]): boolean {
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)]
  return (
    corners.length > 0 &&
    Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)) >= SMALLEST_AREA
  )
}

/** The line from the hole through the reference point to the spot of back-on-the-line relief, where that is offered. */
function referenceLine({ options }: Relief, sheet: Sheet, pin: Point): Shape[] {
  const back = options.filter(({ kind }) => kind.startsWith('back-on-the-line'))
  const furthest = back.reduce<(typeof back)[number] | null>(
    (far, one) => (far && far.spot.to_pin_m >= one.spot.to_pin_m ? far : one),
    null,
  )
  if (furthest === null) return []
  const { spot } = furthest
  const beyond = 1 + 8 / Math.max(spot.to_pin_m, 1)
  const end: Point = [pin[0] + (spot.x_m - pin[0]) * beyond, pin[1] + (spot.y_m - pin[1]) * beyond]
  return [
    {
      kind: 'path',
      steps: lineSteps(sheet.toSheet(pin), sheet.toSheet(end)),
      stroke: { paint: 'spot', width: DRAW_SETTINGS.fineLine, dash: [7, 3.5] },
    },
  ]
}

function ring(at: Point): Shape {
  return {
    kind: 'path',
    steps: circleSteps(at, 3.6),
    fill: 'paper',
    stroke: { paint: 'spot', width: DRAW_SETTINGS.heavyLine },
  }
}

function cross([x, y]: Point): Shape {
  const arm = 4.6
  return {
    kind: 'path',
    steps: [
      ...lineSteps([x - arm, y - arm], [x + arm, y + arm]),
      ...lineSteps([x - arm, y + arm], [x + arm, y - arm]),
    ],
    stroke: { paint: 'spot', width: 2, cap: 'round' },
  }
}

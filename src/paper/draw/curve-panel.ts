import type { TestedCurve } from '#golf/player/test-day-curves.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { bottomScale, leftScale, type Tick } from './axes.ts'
import type { Shape, Stroke } from './drawing.ts'
import { DRAW_SETTINGS } from './settings.ts'
import { circleSteps, lineSteps, polylineSteps, rectangleSteps } from './steps.ts'

/** Where one panel of curves lies and what its scales show. */
export interface CurvePanel {
  readonly frame: {
    readonly left: number
    readonly top: number
    readonly right: number
    readonly bottom: number
  }
  /** Ends of the scales: metres across, the curve's own quantity up. */
  readonly across: readonly [from: number, to: number]
  readonly up: readonly [from: number, to: number]
  /** Ticks by their value, with a figure where there is room. */
  readonly acrossTicks: readonly (readonly [value: number, figure: string])[]
  readonly upTicks: readonly (readonly [value: number, figure: string])[]
}

/** Lines of a curve as it is now, as it was before the test, and on the tour: told apart without colour. */
export const CURVE_STROKES: Readonly<Record<'now' | 'before' | 'tour', Stroke>> = {
  now: { paint: 'spot', width: 2.4, join: 'round' },
  before: { paint: 'ink', width: 1.2, dash: [8, 5], join: 'round' },
  tour: { paint: 'ink', width: 1.8, dash: [0.1, 4.5], cap: 'round', join: 'round' },
}
/** Strokes that hatch a band: fine, and every so many units. */
export const BAND_STROKE: Stroke = { paint: 'spot', width: DRAW_SETTINGS.line }
export const BAND_SPACING = 4

/** The frame of a panel with its scales. */
export function panelFrame({ frame, acrossTicks, upTicks, ...scales }: CurvePanel): Shape[] {
  const { left, top, right, bottom } = frame
  const at = placeIn({ frame, ...scales })
  const ticks = (values: CurvePanel['upTicks'], axis: 0 | 1): Tick[] =>
    values.map(([value, figure]) => {
      const place = at(axis === 0 ? value : scales.across[0], axis === 0 ? scales.up[0] : value)[axis]
      return figure === '' ? { at: place } : { at: place, figure }
    })
  return [
    {
      kind: 'path',
      steps: rectangleSteps(left, top, right - left, bottom - top),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline },
    },
    ...leftScale(left, top, bottom, ticks(upTicks, 1)),
    ...bottomScale(bottom, left, right, ticks(acrossTicks, 0)),
  ]
}

/** One curve in its panel: band, tour, before and now, cut to the frame, and what was played on the day. */
export function panelCurve(panel: CurvePanel, { points, played }: TestedCurve): Shape[] {
  const { left, top, right, bottom } = panel.frame
  const at = placeIn(panel)
  const line = (name: keyof typeof CURVE_STROKES): Shape => ({
    kind: 'path',
    steps: polylineSteps(points.map((point) => at(point.metres, point[name]))),
    stroke: CURVE_STROKES[name],
  })
  const lines: Shape = {
    kind: 'group',
    name: 'curve',
    clip: rectangleSteps(left, top, right - left, bottom - top),
    shapes: [
      { kind: 'path', steps: hatch(points, at), stroke: BAND_STROKE },
      line('tour'),
      line('before'),
      line('now'),
    ],
  }
  // A station where nothing was holed lies on the frame: its mark is not cut.
  return [lines, ...played.flatMap(({ metres, value }) => playedMark(at(metres, value)))]
}

/** The mark of what was played at a station: a ring, paper inside. */
export function playedMark(at: Point): Shape[] {
  return [
    {
      kind: 'path',
      steps: circleSteps(at, 4.4),
      fill: 'paper',
      stroke: { paint: 'ink', width: DRAW_SETTINGS.heavyLine },
    },
  ]
}

/** Upright strokes from the low end of the band to the high one. */
function hatch(
  points: TestedCurve['points'],
  at: (across: number, up: number) => Point,
): ReturnType<typeof lineSteps> {
  let last = Number.NEGATIVE_INFINITY
  return points.flatMap(({ metres, low, high }) => {
    const [x, y] = at(metres, low)
    if (x - last < BAND_SPACING * 0.99) return []
    last = x
    return lineSteps([x, y], at(metres, high))
  })
}

/** Where a value of both scales of a panel stands on its sheet. */
export function placeIn({
  frame: { left, top, right, bottom },
  across,
  up,
}: Pick<CurvePanel, 'frame' | 'across' | 'up'>): (across: number, up: number) => Point {
  return (x, y) => [
    left + ((x - across[0]) / (across[1] - across[0])) * (right - left),
    bottom - ((y - up[0]) / (up[1] - up[0])) * (bottom - top),
  ]
}

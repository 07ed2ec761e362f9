import type { Hole } from '#golf/course/hole.ts'
import type { Point } from '#numbers/geometry/point.ts'
import type { Shape, Step } from '../drawing.ts'
import type { WindMark } from '../hole-drawing-options.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import { circleSteps, lineSteps, polylineSteps } from '../steps.ts'

/** Room the compass needs about its centre, units. */
export const COMPASS_SIZE: { readonly width: number; readonly height: number } = { width: 92, height: 114 }

/**
 * True north, where it is known, and the day's wind blowing across the rose from where it comes: the arrow flies with the wind.
 * `at` is the upper left corner of its room.
 */
export function drawCompass(hole: Hole, at: Point, wind: WindMark | undefined): Shape[] {
  const centre: Point = [at[0] + COMPASS_SIZE.width / 2, at[1] + 48]
  const turned = (degrees: number, reach: number): Point => {
    const angle = ((degrees - hole.bearingDegrees) * Math.PI) / 180
    return [centre[0] + Math.sin(angle) * reach, centre[1] - Math.cos(angle) * reach]
  }
  const ticks: Step[] = []
  for (let degrees = 0; degrees < 360; degrees += 15)
    ticks.push(...lineSteps(turned(degrees, 27), turned(degrees, degrees % 45 === 0 ? 23 : 25)))
  const star: Shape[] = [0, 90, 180, 270].flatMap((degrees): Shape[] => {
    const reach = degrees === 0 ? 34 : 20
    const [tip, root, left, right] = [
      turned(degrees, reach),
      centre,
      turned(degrees - 45, 4.5),
      turned(degrees + 45, 4.5),
    ]
    return [
      {
        kind: 'path',
        steps: polylineSteps([tip, left, root], true),
        fill: 'ink',
        stroke: { paint: 'ink', width: 0.5 },
      },
      {
        kind: 'path',
        steps: polylineSteps([tip, right, root], true),
        fill: 'paper',
        stroke: { paint: 'ink', width: 0.5 },
      },
    ]
  })
  const north = turned(0, 40)
  return [
    {
      kind: 'path',
      steps: circleSteps(centre, 27),
      fill: 'paper',
      stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine },
    },
    { kind: 'path', steps: ticks, stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline } },
    ...(hole.isBearingInvented
      ? []
      : [
          ...star,
          {
            kind: 'text',
            text: 'N',
            at: [north[0], north[1] + 3.5],
            size: DRAW_SETTINGS.smallType,
            paint: 'ink',
            face: 'serif-bold',
            anchor: 'middle',
            halo: 2,
          } as const,
        ]),
    ...(wind === undefined || wind.speedMetresPerSecond < 0.05
      ? []
      : windArrow(wind.fromDegrees, centre, turned)),
    ...(wind === undefined
      ? []
      : [
          {
            kind: 'text',
            text: wind.speedMetresPerSecond < 0.05 ? 'calm' : `wind ${wind.label}`,
            at: [centre[0], at[1] + COMPASS_SIZE.height - 5],
            size: DRAW_SETTINGS.smallType,
            paint: 'ink',
            face: 'serif-italic',
            anchor: 'middle',
            halo: 2,
          } as const,
        ]),
  ]
}

/** A long arrow that flies with the wind, open-headed so that it cannot be taken for the north point. */
function windArrow(
  fromDegrees: number,
  centre: Point,
  turned: (degrees: number, reach: number) => Point,
): Shape[] {
  const [tail, tip] = [turned(fromDegrees, 40), turned(fromDegrees + 180, 40)]
  const length = Math.hypot(tip[0] - tail[0], tip[1] - tail[1])
  const [dx, dy] = [(tip[0] - tail[0]) / length, (tip[1] - tail[1]) / length]
  const barb = (sign: number): Point => [tip[0] - dx * 8 - dy * sign * 4, tip[1] - dy * 8 + dx * sign * 4]
  const feather = (back: number): Step[] =>
    [1, -1].flatMap((sign) =>
      lineSteps(
        [tail[0] + dx * back, tail[1] + dy * back],
        [tail[0] + dx * (back - 4) - dy * sign * 4, tail[1] + dy * (back - 4) + dx * sign * 4],
      ),
    )
  const steps: Step[] = [
    ...lineSteps(tail, tip),
    ...polylineSteps([barb(1), tip, barb(-1)]),
    ...feather(1),
    ...feather(4),
    ...feather(7),
  ]
  return [
    { kind: 'path', steps, stroke: { paint: 'paper', width: 3.4, cap: 'round' } },
    { kind: 'path', steps: circleSteps(centre, 0.4), fill: 'ink' },
    { kind: 'path', steps, stroke: { paint: 'ink', width: 1.2, cap: 'round', join: 'round' } },
  ]
}

import type { Point } from '#numbers/geometry/point.ts'
import { pointAlong, polylineLength } from '#numbers/geometry/polyline.ts'
import type { Area } from '../course.ts'
import type { WidthMeasure } from '../hole-measures.ts'
import {
  FAIRWAY_END_METRES,
  FAIRWAY_NEAR_METRES,
  PINCH_FROM_METRES,
  PINCH_STEP_METRES,
  PINCH_TIE_METRES,
  WIDTH_STEP_METRES,
} from '../settings.ts'
import { headingTo } from './ahead.ts'
import { chordsAcross } from './chords-across.ts'
import { gapFromZero, type Interval, subtractIntervals } from './intervals.ts'

/** Fairway and what lies in it, as one hole sees them. */
export interface FairwayGround {
  readonly fairways: readonly Area[]
  /** Sand and water that cut the fairway. */
  readonly cuts: readonly Area[]
}

/** The fairway across the line every 20 m up to a distance; places without any are left out. */
export function fairwayWidths(ground: FairwayGround, line: readonly Point[], until: number): WidthMeasure[] {
  return stations(WIDTH_STEP_METRES, until).flatMap((at) => fairwayAt(ground, line, at) ?? [])
}

/** The narrowest fairway from 100 m on that has fairway for 20 m before and behind it: no rounded end, no neck of a green. */
export function fairwayPinch(
  ground: FairwayGround,
  line: readonly Point[],
  until: number,
): WidthMeasure | null {
  const skipped = Math.round(FAIRWAY_END_METRES / PINCH_STEP_METRES)
  const widths = stations(PINCH_STEP_METRES, until).map((at) => fairwayAt(ground, line, at))
  const inner = widths.filter((width, index): width is WidthMeasure => {
    if (!width || width.atMetres < PINCH_FROM_METRES) return false
    const around = widths.slice(Math.max(0, index - skipped), index + skipped + 1)
    return index + skipped < widths.length && around.every((near) => near !== null)
  })
  const narrowest = inner.reduce(
    (least, width) => Math.min(least, width.widthMetres),
    Number.POSITIVE_INFINITY,
  )
  // An even fairway has no narrowest place: the first that is as narrow, so that rounding does not choose.
  return inner.find((width) => width.widthMetres <= narrowest + PINCH_TIE_METRES) ?? null
}

/** The one band of fairway across the line at a distance that holds the line or comes nearest to it. */
function fairwayAt(ground: FairwayGround, line: readonly Point[], at: number): WidthMeasure | null {
  const point = pointAlong(line, at)
  const heading = headingAt(line, at)
  const chords = (areas: readonly Area[]): Interval[] =>
    areas.flatMap((area) => chordsAcross(area.polygon, point, heading))
  const bands = subtractIntervals(chords(ground.fairways), chords(ground.cuts))
  const gap = Math.min(...bands.map(gapFromZero))
  if (gap > FAIRWAY_NEAR_METRES) return null
  // Of two bands as near as each other, on both sides of a bunker, the wider.
  const nearest = bands.filter((other) => gapFromZero(other) <= gap + PINCH_TIE_METRES)
  const band = nearest.sort((a, b) => b[1] - b[0] - (a[1] - a[0]))[0]
  if (!band) return null
  const [leftMetres, rightMetres] = band
  return { atMetres: at, leftMetres, rightMetres, widthMetres: rightMetres - leftMetres }
}

function headingAt(line: readonly Point[], at: number): number {
  let travelled = 0
  let heading = 0
  for (const [index, to] of line.entries()) {
    const from = line[index - 1]
    if (!from) continue
    heading = headingTo(from, to)
    travelled += polylineLength([from, to])
    if (travelled > at) break
  }
  return heading
}

function stations(step: number, until: number): number[] {
  return Array.from({ length: Math.max(0, Math.floor(until / step + 1e-9)) + 1 }, (_, index) => index * step)
}

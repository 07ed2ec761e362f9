import type { BagPattern } from '#golf/strategy/bag-patterns.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { bottomScale, leftScale, roundStep, type Tick } from './axes.ts'
import type { Shape } from './drawing.ts'
import { patternIsoline } from './marks/draw-pattern.ts'
import { rulerOf } from './ruler.ts'
import { DRAW_SETTINGS } from './settings.ts'
import { type Sheet, sheetInFrame } from './sheet.ts'
import { rectangleSteps } from './steps.ts'

/** A stretch of a level range on a sheet to true scale: metres right of the aim and along it. */
export interface PatternSheet extends Pick<Sheet, 'frame' | 'toSheet' | 'unitsPerMetre'> {
  readonly holds: (place: Point) => boolean
}

/** Where the chart may lie, units. */
export interface ChartRoom {
  readonly left: number
  readonly right: number
  readonly top: number
}

/** The chart is no higher than this, units: words below it stay on the page. */
const MOST_HEIGHT = 560
/** So far a chart reaches beyond what it shows, metres. */
const ROOM_METRES = 4

/**
 * Lays the patterns on the sheet with the aim in the middle, as large as they go. Balls struck so far from the rest that
 * the pattern does not reach them may lie off it.
 */
export function layOutPattern(
  patterns: readonly BagPattern[],
  marks: readonly { readonly x: number; readonly y: number }[],
  room: ChartRoom,
): PatternSheet {
  const [low, high, side] = extentOf(patterns)
  const reach = (high - low) / 3
  // A ball beside the pattern is worth some paper, one in the next field is not.
  const shown = marks.filter(({ x, y }) => y > low - reach && y < high + reach && Math.abs(x) < 2 * side)
  const halfWidth = Math.max(side, ...shown.map(({ x }) => Math.abs(x))) + ROOM_METRES
  const from = Math.max(0, Math.min(low, ...shown.map(({ y }) => y)) - ROOM_METRES)
  const to = Math.max(high, ...shown.map(({ y }) => y)) + ROOM_METRES
  const unitsPerMetre = Math.min((room.right - room.left) / (2 * halfWidth), MOST_HEIGHT / (to - from))
  const middle = (room.left + room.right) / 2
  const frame = {
    left: middle - halfWidth * unitsPerMetre,
    right: middle + halfWidth * unitsPerMetre,
    top: room.top + 12,
    bottom: room.top + 12 + (to - from) * unitsPerMetre,
  }
  return {
    ...sheetInFrame(frame, [0, (from + to) / 2], unitsPerMetre),
    holds: ([x, y]) => Math.abs(x) <= halfWidth && y >= from && y <= to,
  }
}

/** The frame with its scales: distance at the left, sideways below, the aim at 0. */
export function patternScales(sheet: PatternSheet, units: 'yards' | 'metres'): Shape[] {
  const { frame, toSheet, unitsPerMetre } = sheet
  const ruler = rulerOf(units)
  const step = roundStep(unitsPerMetre * ruler.metres, 34)
  const ticks = (low: number, high: number, toUnits: (value: number) => number): Tick[] => {
    const [first, last] = [Math.ceil(low / step), Math.floor(high / step)]
    return Array.from({ length: last - first + 1 }, (_, index) => {
      const value = step * (first + index)
      return { at: toUnits(value * ruler.metres), figure: String(Math.abs(value)) }
    })
  }
  const metresAt = (at: number): number => (at - toSheet([0, 0])[1]) / -unitsPerMetre / ruler.metres
  const half = (frame.right - frame.left) / 2 / unitsPerMetre / ruler.metres
  return [
    {
      kind: 'path',
      steps: rectangleSteps(frame.left, frame.top, frame.right - frame.left, frame.bottom - frame.top),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline },
    },
    ...leftScale(
      frame.left,
      frame.top,
      frame.bottom,
      ticks(metresAt(frame.bottom), metresAt(frame.top), (metres) => toSheet([0, metres])[1]),
    ),
    ...bottomScale(
      frame.bottom,
      frame.left,
      frame.right,
      ticks(-half, half, (metres) => toSheet([metres, 0])[0]),
    ),
    ...(['left', 'right'] as const).map(
      (side): Shape => ({
        kind: 'text',
        text: side === 'left' ? `← left, ${units}` : `right, ${units} →`,
        at: [frame[side], frame.bottom + 40],
        size: DRAW_SETTINGS.type,
        paint: 'ink',
        face: 'serif-italic',
        anchor: side === 'left' ? 'start' : 'end',
      }),
    ),
  ]
}

/** How near, how far and how far to a side the outer isolines reach, metres. */
function extentOf(patterns: readonly BagPattern[]): readonly [low: number, high: number, side: number] {
  const share = Math.max(...DRAW_SETTINGS.isolineShares)
  const places = patterns.flatMap((pattern) =>
    patternIsoline({ ...pattern, club: pattern.club.name }, share, { toSheet: (place) => place }).flatMap(
      (step): Point[] => (step[0] === 'Z' ? [] : [[step.at(-2) as number, step.at(-1) as number]]),
    ),
  )
  const along = places.map(([, y]) => y)
  return [Math.min(...along), Math.max(...along), Math.max(...places.map(([x]) => Math.abs(x)))]
}

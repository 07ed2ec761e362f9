import type { Shape } from './drawing.ts'
import { DRAW_SETTINGS } from './settings.ts'
import { lineSteps } from './steps.ts'

/** A tick of a scale: where it stands on the sheet, and its figure where it has one. */
export interface Tick {
  readonly at: number
  readonly figure?: string
}

/** A scale that stands left of a chart, its figures outside. */
export function leftScale(x: number, top: number, bottom: number, ticks: readonly Tick[]): Shape[] {
  return [
    ...ruleShapes(
      [lineSteps([x, top], [x, bottom])],
      ticks.map(({ at, figure }) => lineSteps([x, at], [x - (figure === undefined ? 4 : 8), at])),
    ),
    ...figures(ticks, (at) => [x - 11, at + DRAW_SETTINGS.farType * 0.34], 'end'),
  ]
}

/** A scale that lies below a chart, its figures outside. */
export function bottomScale(y: number, left: number, right: number, ticks: readonly Tick[]): Shape[] {
  return [
    ...ruleShapes(
      [lineSteps([left, y], [right, y])],
      ticks.map(({ at, figure }) => lineSteps([at, y], [at, y + (figure === undefined ? 4 : 8)])),
    ),
    ...figures(ticks, (at) => [at, y + 11 + DRAW_SETTINGS.farType * 0.8], 'middle'),
  ]
}

/** The least of some round steps of a scale between whose ticks figures have room, in the scale's own unit. */
export function roundStep(unitsPerOne: number, room: number): number {
  return STEPS.find((step) => step * unitsPerOne >= room) ?? 100
}

const STEPS = [1, 2, 5, 10, 20, 50]

type Steps = ReturnType<typeof lineSteps>

function ruleShapes(lines: readonly Steps[], ticks: readonly Steps[]): Shape[] {
  return [
    { kind: 'path', steps: lines.flat(), stroke: { paint: 'ink', width: DRAW_SETTINGS.line } },
    { kind: 'path', steps: ticks.flat(), stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine } },
  ]
}

function figures(
  ticks: readonly Tick[],
  placeOf: (at: number) => readonly [number, number],
  anchor: 'middle' | 'end',
): Shape[] {
  return ticks.flatMap(({ at, figure }): Shape[] =>
    figure === undefined
      ? []
      : [
          {
            kind: 'text',
            text: figure,
            at: placeOf(at),
            size: DRAW_SETTINGS.farType,
            paint: 'ink',
            face: 'sans',
            anchor,
          },
        ],
  )
}

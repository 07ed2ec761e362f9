import type { Point } from '#numbers/geometry/point.ts'
import { METRES_PER_YARD } from '#numbers/units/units.ts'
import { roundStep } from './axes.ts'
import { type CurvePanel, panelFrame, placeIn } from './curve-panel.ts'
import type { Drawing, Shape, Stroke } from './drawing.ts'
import { DRAW_SETTINGS } from './settings.ts'
import { circleSteps, lineSteps, polylineSteps, rectangleSteps } from './steps.ts'

/** Expected scores of going and of laying up from places along a hole, far to near, and where the choice turns. */
export interface GoCurves {
  readonly title: string
  /** The same in words, for people who cannot see the drawing. */
  readonly description: string
  /** Distance to the pin, and what both choices cost from there; `null` where one of them is not possible. */
  readonly places: readonly {
    readonly from_m: number
    readonly go: number | null
    readonly lay_up: number | null
  }[]
  /** Distances at which the choice turns: the two cost the same, or going has just come into reach. */
  readonly crossings: readonly number[]
  readonly units: 'yards' | 'metres'
  readonly width: number
}

const HEIGHT = 300
const FRAME = { left: 46, top: 30, right: 14, bottom: 58 }
const STROKES: Readonly<Record<'go' | 'lay_up', Stroke>> = {
  go: { paint: 'spot', width: 2.4, join: 'round' },
  lay_up: { paint: 'ink', width: 1.8, dash: [8, 5], join: 'round' },
}
const NAMES: Readonly<Record<'go' | 'lay_up', string>> = { go: 'go', lay_up: 'lay up' }
/** Room for the figures of a scale, units. */
const FIGURE_ROOM = 46
/** So much is shown beyond the places from which both are possible, metres. */
const BEYOND_METRES = 30
/** How far a curve's name stands above it, units. */
const NAME_LIFT = 11

/**
 * Go or lay up as two curves over the distance to the pin, nearer to the left: going drawn through, laying up broken, a
 * ring and a plumb line where the choice turns with the distance at its foot. Nothing in it is told by colour alone.
 */
export function drawGoOrLayUp(of: GoCurves): Drawing {
  const curves = { ...of, places: shownOf(of.places) }
  const { title, description, width, units } = curves
  const panel = panelOf(curves)
  const { left, top, right, bottom } = panel.frame
  const cut = rectangleSteps(left, top, right - left, bottom - top)
  const lines = (['lay_up', 'go'] as const).flatMap((name) => curveOf(curves, name, panel))
  return {
    width,
    height: HEIGHT,
    title,
    description,
    shapes: [
      ...panelFrame(panel),
      { kind: 'group', name: 'curves', clip: cut, shapes: lines },
      ...(['lay_up', 'go'] as const).flatMap((name) => nameOf(curves, name, panel)),
      ...curves.crossings.flatMap((metres) => crossingOf(curves, metres, panel)),
      words(`${units} to the pin`, [(left + right) / 2, HEIGHT - 10], 'serif-italic', 'middle'),
      words('expected score', [left, top - 10], 'serif-italic', 'start'),
    ],
  }
}

/** The places from which both are possible, and a little of what lies beyond them. */
function shownOf(places: GoCurves['places']): GoCurves['places'] {
  const both = places.filter(({ go, lay_up: layUp }) => go !== null && layUp !== null)
  const distances = both.map(({ from_m: metres }) => metres)
  const [least, most] = [Math.min(...distances) - BEYOND_METRES, Math.max(...distances) + BEYOND_METRES]
  return places.filter(
    ({ from_m: metres, go, lay_up: layUp }) =>
      metres >= least && metres <= most && (go !== null || layUp !== null),
  )
}

function panelOf({ places, units, width }: GoCurves): CurvePanel {
  const frame = {
    left: FRAME.left,
    top: FRAME.top,
    right: width - FRAME.right,
    bottom: HEIGHT - FRAME.bottom,
  }
  const far = places.map(({ from_m: metres }) => metres)
  const scores = places.flatMap(({ go, lay_up: layUp }) => [go, layUp].filter((one) => one !== null))
  const across = [Math.min(...far), Math.max(...far)] as const
  const up = [Math.min(...scores) - 0.05, Math.max(...scores) + 0.12] as const
  const unit = units === 'yards' ? METRES_PER_YARD : 1
  const acrossStep = roundStep(((frame.right - frame.left) * unit) / (across[1] - across[0]), FIGURE_ROOM)
  const upStep = roundStep((frame.bottom - frame.top) / (up[1] - up[0]) / 20, FIGURE_ROOM / 2) / 20
  return {
    frame,
    across,
    up,
    acrossTicks: ticks(across[0] / unit, across[1] / unit, acrossStep).map((at) => [
      at * unit,
      `${Math.round(at)}`,
    ]),
    upTicks: ticks(up[0], up[1], upStep).map((at) => [at, at.toFixed(2)]),
  }
}

/** Whole steps between two ends. */
function ticks(from: number, to: number, step: number): number[] {
  const first = Math.ceil(from / step - 1e-9)
  const count = Math.floor(to / step + 1e-9) - first + 1
  return Array.from({ length: Math.max(0, count) }, (_, index) => (first + index) * step)
}

/** One curve; it is broken where its choice is not possible. */
function curveOf({ places }: GoCurves, name: 'go' | 'lay_up', panel: CurvePanel): Shape[] {
  const at = placeIn(panel)
  const runs: Point[][] = [[]]
  for (const place of places) {
    const score = place[name]
    if (score === null) runs.push([])
    else runs.at(-1)?.push(at(place.from_m, score))
  }
  return runs
    .filter((run) => run.length > 1)
    .map((run) => ({ kind: 'path', steps: polylineSteps(run), stroke: STROKES[name] }))
}

/** The name of a curve outside the two, where they lie furthest apart about the middle of the drawing. */
function nameOf({ places }: GoCurves, name: 'go' | 'lay_up', panel: CurvePanel): Shape[] {
  const apart = ({ go, lay_up: layUp }: GoCurves['places'][number]): number =>
    go === null || layUp === null ? 0 : Math.abs(go - layUp)
  const { left, right } = panel.frame
  const at = placeIn(panel)
  const [from, to] = [left + (right - left) / 4, right - (right - left) / 4]
  const named = places.filter((place) => place[name] !== null)
  const middle = named.filter(({ from_m: metres }) => at(metres, 0)[0] >= from && at(metres, 0)[0] <= to)
  const known = middle.length > 0 ? middle : named
  const [first] = known
  if (first === undefined) return []
  const widest = known.reduce((most, one) => (apart(one) > apart(most) ? one : most), first)
  const other = widest[name === 'go' ? 'lay_up' : 'go']
  const score = widest[name] as number
  const isBelow = other !== null && score < other
  const [x, y] = at(widest.from_m, score)
  const held = Math.max(left + 30, Math.min(right - 30, x))
  const paint = STROKES[name].paint
  return [
    {
      ...words(NAMES[name], [held, isBelow ? y + NAME_LIFT + 12 : y - NAME_LIFT], 'serif-bold', 'middle'),
      paint,
      halo: 3,
    },
  ]
}

/** A ring where the choice turns, and a plumb line to the distance at the foot. */
function crossingOf({ places, units }: GoCurves, metres: number, panel: CurvePanel): Shape[] {
  const score = scoreAt(places, metres)
  if (score === null) return []
  const [x, y] = placeIn(panel)(metres, score)
  const { bottom, top } = panel.frame
  const figure = Math.round(units === 'yards' ? metres / METRES_PER_YARD : metres)
  return [
    {
      kind: 'path',
      steps: lineSteps([x, y + 5], [x, bottom]),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine, dash: [2, 3] },
    },
    {
      kind: 'path',
      steps: circleSteps([x, y], 4.4),
      fill: 'paper',
      stroke: { paint: 'ink', width: DRAW_SETTINGS.heavyLine },
    },
    { ...words(`${figure}`, [x, Math.max(top + 14, bottom - 8)], 'sans-bold', 'middle'), halo: 3 },
  ]
}

/** What going costs at a distance, straight between the places about it. */
function scoreAt(places: GoCurves['places'], metres: number): number | null {
  for (const [index, near] of places.entries()) {
    const far = places[index - 1]
    if (far === undefined || near.from_m > metres || far.from_m < metres) continue
    if (near.go === null || far.go === null) return near.go ?? far.go
    const share = (metres - near.from_m) / (far.from_m - near.from_m || 1)
    return near.go + (far.go - near.go) * share
  }
  return null
}

function words(
  text: string,
  at: Point,
  face: 'serif-italic' | 'serif-bold' | 'sans-bold',
  anchor: 'start' | 'middle',
) {
  return { kind: 'text', text, at, size: DRAW_SETTINGS.farType, paint: 'ink', face, anchor } as const
}

import type { Lie } from '#golf/player/player.ts'
import type { TestDayCurves, TestedCurve } from '#golf/player/test-day-curves.ts'
import { METRES_PER_FOOT, METRES_PER_YARD } from '#numbers/units/units.ts'
import { curveLegend } from './curve-legend.ts'
import type { CurvePanel } from './curve-panel.ts'
import { panelCurve, panelFrame } from './curve-panel.ts'
import type { Drawing, Shape } from './drawing.ts'
import { DRAW_SETTINGS } from './settings.ts'

/** Whose test day is drawn, and how lengths are read. */
export interface TestCurvesOptions {
  readonly playerName: string
  readonly units: 'yards' | 'metres'
  /** What was played: `42 putts, 28 short shots`. */
  readonly basis: string
}

const WIDTH = 620
const MARGIN = 34
const LEFT = MARGIN + 34
const PUTTS = { top: 104, height: 290 }
const SHORT = { top: 506, height: 200, gap: 20 }
const LIE_WORDS: Partial<Record<Lie, string>> = {
  fairway: 'from fairway',
  rough: 'from rough',
  bunker: 'from sand',
}

/**
 * Putting and short game by distance after a test day: chances of one putt and of three, and strokes to hole out from
 * three lies, each with the band that holds it nine times in ten, as it was before, beside a tour player, over what was
 * played. Nothing in it is told by colour alone.
 */
export function drawTestCurves(
  curves: TestDayCurves,
  { playerName, units, basis }: TestCurvesOptions,
): Drawing {
  const putting = puttingPanel(curves, units)
  const short = curves.short.map((_, index) => shortPanel(curves, index, units))
  const legend = curveLegend([MARGIN, SHORT.top + SHORT.height + 64], WIDTH - 2 * MARGIN)
  const feet = units === 'yards'
  return {
    width: WIDTH,
    height: SHORT.top + SHORT.height + 64 + legend.height + 8,
    title: `Putting and short game of ${playerName}`,
    description: description(curves, playerName, basis, units),
    shapes: [
      words(`Putting and short game of ${playerName}`, [MARGIN, MARGIN + 8], 26, 'serif'),
      words(basis, [MARGIN, MARGIN + 32], DRAW_SETTINGS.farType, 'serif-italic'),
      words('Putts in a hundred', [MARGIN, PUTTS.top - 10], DRAW_SETTINGS.farType, 'serif-bold'),
      ...panelFrame(putting),
      // The names first: a mark of what was played is not covered by the paper about a word.
      curveName('one putt', curves.onePutt, putting, ONE_PUTT_AT, 'start'),
      curveName('three putts or more', curves.threePutts, putting, 0.98, 'end'),
      ...panelCurve(putting, curves.threePutts),
      ...panelCurve(putting, curves.onePutt),
      unitName(`${feet ? 'feet' : 'metres'} from the hole`, putting),
      words('Strokes to hole out', [MARGIN, SHORT.top - 34], DRAW_SETTINGS.farType, 'serif-bold'),
      ...curves.short.flatMap(({ lie, strokes }, index): Shape[] => {
        const panel = short[index] as CurvePanel
        return [
          words(
            LIE_WORDS[lie] ?? lie,
            [panel.frame.left + 2, SHORT.top - 8],
            DRAW_SETTINGS.farType,
            'serif-italic',
          ),
          ...panelFrame(panel),
          ...panelCurve(panel, strokes),
        ]
      }),
      unitName(`${units} from the hole`, short.at(-1) as CurvePanel),
      ...legend.shapes,
    ],
  }
}

function puttingPanel({ onePutt }: TestDayCurves, units: TestCurvesOptions['units']): CurvePanel {
  const longest = onePutt.points.at(-1)?.metres ?? 1
  const [unit, step] = units === 'yards' ? [METRES_PER_FOOT, 5] : [1, 2]
  return {
    frame: { left: LEFT, top: PUTTS.top, right: WIDTH - MARGIN, bottom: PUTTS.top + PUTTS.height },
    across: [0, longest],
    up: [0, 1],
    acrossTicks: ticksTo(longest, unit, step),
    upTicks: [0, 0.25, 0.5, 0.75, 1].map((share) => [share, String(100 * share)] as const),
  }
}

/** The panels of the short game stand side by side on one scale of strokes. */
function shortPanel({ short }: TestDayCurves, index: number, units: TestCurvesOptions['units']): CurvePanel {
  const points = short.flatMap(({ strokes }) => strokes.points)
  const longest = Math.max(...points.map(({ metres }) => metres))
  const least = 2
  const most = Math.ceil(2 * Math.max(...points.flatMap(({ high, before }) => [high, before]))) / 2
  const unit = units === 'yards' ? METRES_PER_YARD : 1
  const width = (WIDTH - MARGIN - LEFT - SHORT.gap * (short.length - 1)) / short.length
  const left = LEFT + index * (width + SHORT.gap)
  const halves = Array.from({ length: 2 * (most - least) + 1 }, (_, half) => least + half / 2)
  return {
    frame: { left, top: SHORT.top, right: left + width, bottom: SHORT.top + SHORT.height },
    across: [0, longest],
    up: [least, most],
    acrossTicks: ticksTo(longest, unit, 10),
    upTicks: halves.map((strokes) => [strokes, index === 0 ? strokes.toFixed(1) : ''] as const),
  }
}

function ticksTo(longest: number, unit: number, step: number): (readonly [number, string])[] {
  const count = Math.floor(longest / (unit * step))
  return Array.from({ length: count + 1 }, (_, index) => [index * step * unit, String(index * step)] as const)
}

/** Where the name of the falling curve stands, as a share of the scale: right of the tour line while that is high. */
const ONE_PUTT_AT = 0.1

/** The name of a curve outside all its lines: right of a falling one, above a rising one. */
function curveName(
  text: string,
  { points }: TestedCurve,
  { frame, across, up }: CurvePanel,
  share: number,
  anchor: 'start' | 'end',
): Shape {
  const point = points[Math.round(share * (points.length - 1))] as TestedCurve['points'][number]
  const most = Math.max(point.high, point.before, point.tour)
  const x = frame.left + (point.metres / across[1]) * (frame.right - frame.left)
  const y = frame.bottom - ((most - up[0]) / (up[1] - up[0])) * (frame.bottom - frame.top)
  return {
    kind: 'text',
    text,
    at: anchor === 'start' ? [x + 10, y + 4] : [x, y - 10],
    size: DRAW_SETTINGS.farType,
    paint: 'spot',
    face: 'serif-italic',
    anchor,
    halo: 2.5,
  }
}

function unitName(text: string, { frame }: CurvePanel): Shape {
  return {
    kind: 'text',
    text,
    at: [frame.right, frame.bottom + 40],
    size: DRAW_SETTINGS.type,
    paint: 'ink',
    face: 'serif-italic',
    anchor: 'end',
  }
}

function words(
  text: string,
  at: readonly [number, number],
  size: number,
  face: 'serif' | 'serif-bold' | 'serif-italic',
): Shape {
  return { kind: 'text', text, at, size, paint: 'ink', face }
}

/** The same in sentences, at a few distances. */
function description(
  { onePutt, threePutts, short }: TestDayCurves,
  playerName: string,
  basis: string,
  units: TestCurvesOptions['units'],
): string {
  const percent = (share: number): string => String(Math.round(100 * share))
  const near = (curve: TestedCurve, metres: number): TestedCurve['points'][number] =>
    curve.points.reduce((best, one) =>
      Math.abs(one.metres - metres) < Math.abs(best.metres - metres) ? one : best,
    )
  const putt = (metres: number): string => {
    const [one, three] = [near(onePutt, metres), near(threePutts, metres)]
    const from = units === 'yards' ? `${Math.round(metres / METRES_PER_FOOT)} feet` : `${metres} metres`
    return `From ${from} one putt ${percent(one.now)} times in 100, between ${percent(one.low)} and ${percent(one.high)}; three putts ${percent(three.now)}.`
  }
  const chip = short.map(({ lie, strokes }) => {
    const at = near(strokes, 15)
    return `${LIE_WORDS[lie] ?? lie} ${at.now.toFixed(2)}, between ${at.low.toFixed(2)} and ${at.high.toFixed(2)}`
  })
  const away = units === 'yards' ? `${Math.round(15 / METRES_PER_YARD)} yards` : '15 metres'
  return `${playerName}, ${basis}. ${[2, 4, 8, 14].map(putt).join(' ')} Strokes to hole out from ${away}: ${chip.join('; ')}.`
}

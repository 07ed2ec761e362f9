import { clubWords } from '#golf/player/club-words.ts'
import type { ShotMarks } from '#golf/player/shot-marks.ts'
import type { BagPattern } from '#golf/strategy/bag-patterns.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { layOutPattern, type PatternSheet, patternScales } from './club-pattern-sheet.ts'
import type { Drawing, Shape, Step, Stroke } from './drawing.ts'
import { type LegendEntry, legend } from './legend.ts'
import { patternIsoline } from './marks/draw-pattern.ts'
import { rulerOf } from './ruler.ts'
import { DRAW_SETTINGS } from './settings.ts'
import { lineSteps, rectangleSteps } from './steps.ts'
import { textLines } from './text-lines.ts'

/** What the picture of one club's pattern shows. */
export interface ClubPatternPicture {
  readonly playerName: string
  readonly units: 'yards' | 'metres'
  readonly now: BagPattern
  /** The pattern before these shots, where it is to be held against the one of now; `isGuess`: nothing but a guess. */
  readonly before?: { readonly pattern: BagPattern; readonly isGuess: boolean }
  /** Balls that were struck with the club. */
  readonly marks: ShotMarks
  /** What it rests on: `77 shots, which count for 70 by now`. */
  readonly basis: string
  /** What has changed, and how surely. */
  readonly sentences: readonly string[]
}

const WIDTH = 620
const MARGIN = 34
const TOP = 84
const LINE = 19

/**
 * One club's pattern at true scale, seen from above on a level range: the lines inside which half and nine in ten of all
 * balls come down, mishits among them, over the balls that were struck, about the player's aim. With a pattern from
 * before, its lines are broken and in ink, those of now whole: they are told apart on a grey copy too.
 */
export function drawClubPattern(picture: ClubPatternPicture): Drawing {
  const { now, before, marks, units } = picture
  const name = clubWords(now.club.name)
  const sheet = layOutPattern(before ? [now, before.pattern] : [now], marks.places, {
    left: MARGIN + 26,
    right: WIDTH - MARGIN,
    top: TOP,
  })
  const outside = marks.places.filter(({ x, y }) => !sheet.holds([x, y])).length
  const legendTop = sheet.frame.bottom + 64
  const key = legend(keyEntries(before, marks), [MARGIN, legendTop], WIDTH - 2 * MARGIN)
  const notes = [...picture.sentences, ...noteLines(marks, outside)]
  const lines = notes.flatMap((sentence) => textLines(sentence, 78))
  const wordsTop = legendTop + key.height + 12
  const title = `${name.charAt(0).toUpperCase()}${name.slice(1)} of ${picture.playerName}`
  return {
    width: WIDTH,
    height: wordsTop + lines.length * LINE + MARGIN / 2,
    title,
    description: [
      `${title}: ${rulerOf(units).figure(now.club.carryMetres)} ${units}, ${picture.basis}.`,
      ...notes,
    ].join(' '),
    shapes: [
      { kind: 'text', text: title, at: [MARGIN, MARGIN + 8], size: 26, paint: 'ink', face: 'serif' },
      {
        kind: 'text',
        text: `carries ${rulerOf(units).figure(now.club.carryMetres)} ${units}; ${picture.basis}`,
        at: [MARGIN, MARGIN + 32],
        size: DRAW_SETTINGS.farType,
        paint: 'ink',
        face: 'serif-italic',
      },
      ...patternScales(sheet, units),
      ...aimShapes(sheet, now.club.carryMetres),
      {
        kind: 'group',
        name: 'pattern',
        clip: rectangleSteps(
          sheet.frame.left,
          sheet.frame.top,
          sheet.frame.right - sheet.frame.left,
          sheet.frame.bottom - sheet.frame.top,
        ),
        shapes: [
          ...markShapes(marks, sheet),
          ...(before ? isolines(before.pattern, BEFORE, sheet) : []),
          ...isolines(now, NOW, sheet),
        ],
      },
      ...isolineNames(now, sheet),
      ...key.shapes,
      ...lines.map(
        (text, index): Shape => ({
          kind: 'text',
          text,
          at: [MARGIN, wordsTop + (index + 0.7) * LINE],
          size: DRAW_SETTINGS.farType,
          paint: 'ink',
          face: 'serif',
        }),
      ),
    ],
  }
}

/** Strokes of the two isolines, half and nine in ten. */
type LinePair = readonly [half: Stroke, nine: Stroke]
const NOW: LinePair = [
  { paint: 'spot', width: 2.4, join: 'round' },
  { paint: 'spot', width: 1.4, join: 'round' },
]
const BEFORE: LinePair = [
  { paint: 'ink', width: 1.8, dash: [8, 5], join: 'round' },
  { paint: 'ink', width: 1.2, dash: [8, 5], join: 'round' },
]

function keyEntries(before: ClubPatternPicture['before'], { places }: ShotMarks): LegendEntry[] {
  const was = before?.isGuess ? 'as guessed before' : 'before'
  const line = (words: string, stroke: Stroke): LegendEntry => ({
    words,
    draw: (from, to) => [{ kind: 'path', steps: lineSteps(from, to), stroke }],
  })
  const mark = (words: string, isMishit: boolean): LegendEntry[] =>
    places.some((place) => place.isMishit === isMishit)
      ? [{ words, draw: ([x, y], [end]) => balls([[(x + end) / 2, y]], isMishit) }]
      : []
  return [
    line(before ? 'half of the balls now' : 'half of the balls', NOW[0]),
    line(before ? 'nine in ten now' : 'nine in ten', NOW[1]),
    ...(before ? [line(`half ${was}`, BEFORE[0]), line(`nine in ten ${was}`, BEFORE[1])] : []),
    ...mark('a ball that came down', false),
    ...mark('a mishit, by the player’s word', true),
  ]
}

function isolines(pattern: BagPattern, strokes: LinePair, sheet: PatternSheet): Shape[] {
  return strokes.map((stroke, index) => ({ kind: 'path', steps: stepsOf(pattern, index, sheet), stroke }))
}

function stepsOf(pattern: BagPattern, index: number, sheet: PatternSheet): Step[] {
  const share = DRAW_SETTINGS.isolineShares[index] as number
  return patternIsoline({ ...pattern, club: pattern.club.name }, share, sheet)
}

/** `half` and `9 in 10` beside the lines of now, where they reach furthest to the right. */
function isolineNames(now: BagPattern, sheet: PatternSheet): Shape[] {
  return ['half', '9 in 10'].flatMap((text, index): Shape[] => {
    const places = stepsOf(now, index, sheet).flatMap((step): Point[] =>
      step[0] === 'Z' ? [] : [[step.at(-2) as number, step.at(-1) as number]],
    )
    const [rightmost] = places.sort((a, b) => b[0] - a[0])
    return rightmost === undefined
      ? []
      : [
          {
            kind: 'text',
            text,
            at: [rightmost[0] + 5, rightmost[1] + 5],
            size: DRAW_SETTINGS.farType,
            paint: 'spot',
            face: 'serif-italic',
            halo: 2.5,
          },
        ]
  })
}

/** The line the player aims along, and the stock carry across it. */
function aimShapes({ frame, toSheet }: PatternSheet, carryMetres: number): Shape[] {
  const [x, y] = toSheet([0, carryMetres])
  return [
    {
      kind: 'path',
      steps: lineSteps([x, frame.bottom], [x, frame.top]),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine, dash: [10, 3, 2, 3] },
    },
    {
      kind: 'path',
      steps: [...lineSteps([x - 9, y], [x + 9, y]), ...lineSteps([x, y - 9], [x, y + 9])],
      stroke: { paint: 'ink', width: DRAW_SETTINGS.heavyLine },
    },
    {
      kind: 'text',
      text: 'aim',
      at: [x, frame.top - 5],
      size: DRAW_SETTINGS.farType,
      paint: 'ink',
      face: 'serif-italic',
      anchor: 'middle',
    },
  ]
}

/** The balls that were struck, and a dash on the scale where no side was written down. */
function markShapes({ places, withoutSide }: ShotMarks, sheet: PatternSheet): Shape[] {
  const { left } = sheet.frame
  const levels = withoutSide.map((carry) => sheet.toSheet([0, carry])[1])
  return [
    ...[false, true].flatMap((isMishit) =>
      balls(
        places.filter((place) => place.isMishit === isMishit).map(({ x, y }) => sheet.toSheet([x, y])),
        isMishit,
      ),
    ),
    {
      kind: 'path',
      steps: levels.flatMap((y) => lineSteps([left, y], [left + 12, y])),
      stroke: MARK,
    },
  ]
}

const MARK: Stroke = { paint: 'spot', width: 1.3, cap: 'round' }

/** A dot a ball, a cross a mishit. */
function balls(at: readonly Point[], isMishit: boolean): Shape[] {
  if (!isMishit) return [{ kind: 'dots', points: at, radius: 1.9, fill: 'spot' }]
  const steps = at.flatMap(([x, y]) => [
    ...lineSteps([x - 3, y - 3], [x + 3, y + 3]),
    ...lineSteps([x - 3, y + 3], [x + 3, y - 3]),
  ])
  return [{ kind: 'path', steps, stroke: MARK }]
}

function noteLines({ withoutSide, withoutCarry }: ShotMarks, outside: number): string[] {
  const count = (many: number, rest: string): string => `${many} ${many === 1 ? 'shot' : 'shots'} ${rest}`
  return [
    ...(outside === 0 ? [] : [`${count(outside, 'came down off this sheet')}.`]),
    ...(withoutSide.length === 0
      ? []
      : [`${count(withoutSide.length, 'without a side')}: dashes on the scale at the left.`]),
    ...(withoutCarry === 0
      ? []
      : [`${count(withoutCarry, 'without a carry')}: learned from, and not drawn.`]),
  ]
}

import { clubWords } from '#golf/player/club-words.ts'
import type { BagPattern } from '#golf/strategy/bag-patterns.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { METRES_PER_YARD } from '#numbers/units/units.ts'
import type { Drawing, Shape } from './drawing.ts'
import { patternIsoline } from './marks/draw-pattern.ts'
import { DRAW_SETTINGS } from './settings.ts'
import { lineSteps } from './steps.ts'

/** How a bag is drawn. */
export interface BagDrawingOptions {
  readonly units: 'yards' | 'metres'
  readonly playerName: string
  /** Words beside the gap below a club, by its name: `overlap`, `no club here`. */
  readonly gapWords?: ReadonlyMap<string, string>
}

/** Of a portrait page. */
const WIDTH = 620
const HEIGHT = 860
const MARGIN = 34
/** Room for club names and figures on the right, units. */
const NAME_ROOM = 236
/** Ground shown before the shortest club's line and beyond the longest's, metres. */
const ROOM_METRES = 3
const NAME_STEP = 15

/**
 * The bag at true scale, as seen from above on a level range: for each club the line inside which half of its balls come
 * down, its carry, the gap to the next, and how many shots that rests on. Mishits are left to the pattern of one club:
 * here they would hide the gaps.
 */
export function drawBag(patterns: readonly BagPattern[], options: BagDrawingOptions): Drawing {
  const longest = Math.max(...patterns.map((one) => one.club.carryMetres + halfLength(one))) + ROOM_METRES
  const shortest = Math.min(...patterns.map((one) => one.club.carryMetres - halfLength(one))) - ROOM_METRES
  const widest = Math.max(...patterns.map(halfWidth))
  const left = MARGIN + 30
  const top = MARGIN + 34
  const unitsPerMetre = Math.min(
    (WIDTH - left - NAME_ROOM) / (2 * widest),
    (HEIGHT - top - MARGIN) / (longest - shortest),
  )
  const height = top + (longest - shortest) * unitsPerMetre + MARGIN
  const middle = left + widest * unitsPerMetre
  const toSheet = ([x, y]: Point): Point => [middle + x * unitsPerMetre, top + (longest - y) * unitsPerMetre]
  const figure = (metres: number): string => figureOf(metres, options.units)
  const names = placedNames(patterns, (metres) => toSheet([0, metres])[1])
  const bottom = height - MARGIN
  return {
    width: WIDTH,
    height,
    title: `The bag of ${options.playerName}`,
    description: patterns
      .map(
        ({ club }) => `${club.name}: ${figure(club.carryMetres)} ${options.units}, ${shotWords(club.shots)}.`,
      )
      .join(' '),
    shapes: [
      {
        kind: 'text',
        text: `The bag of ${options.playerName}`,
        at: [MARGIN, MARGIN + 6],
        size: 22,
        paint: 'ink',
        face: 'serif',
      },
      ...rule(longest, shortest, left - 8, (metres) => toSheet([0, metres])[1], options.units),
      {
        kind: 'path',
        steps: lineSteps([middle, top], [middle, bottom]),
        stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline, dash: [6, 3] },
      },
      ...patterns.map(
        (pattern): Shape => ({
          kind: 'path',
          steps: patternIsoline({ ...goodPattern(pattern), club: pattern.club.name }, 0.5, { toSheet }),
          stroke: {
            paint: 'spot',
            width: DRAW_SETTINGS.line,
            // Nothing but a guess stands behind it.
            ...(pattern.club.shots === 0 ? { dash: [4, 2.5] } : {}),
            join: 'round',
          },
        }),
      ),
      ...names.flatMap(({ pattern: { club }, at, next }): Shape[] => {
        const start = WIDTH - NAME_ROOM + 12
        const level = toSheet([0, club.carryMetres])[1]
        const words = options.gapWords?.get(club.name)
        return [
          {
            kind: 'path',
            steps: [...lineSteps([middle, level], [start - 14, level]), ['L', start - 3, at - 4]],
            stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline },
          },
          {
            kind: 'text',
            text: clubWords(club.name),
            at: [start, at],
            size: 13,
            paint: 'ink',
            face: 'serif-bold',
          },
          {
            kind: 'text',
            text: figure(club.carryMetres),
            at: [start + 124, at],
            size: 13,
            paint: 'ink',
            face: 'sans-bold',
            anchor: 'end',
          },
          {
            kind: 'text',
            text: shotWords(club.shots),
            at: [start + 132, at],
            size: DRAW_SETTINGS.smallType,
            paint: 'ink',
            face: 'serif-italic',
          },
          ...(next === null
            ? []
            : [
                {
                  kind: 'text',
                  text: `${words ? `${words}  ` : ''}${figure(club.carryMetres - next)}`,
                  at: [start + 124, at + NAME_STEP],
                  anchor: 'end',
                  size: DRAW_SETTINGS.smallType,
                  paint: words ? 'spot' : 'ink',
                  face: 'sans',
                } as const,
              ]),
        ]
      }),
      {
        kind: 'text',
        text: `Half of the good strikes come down inside each line. Carries in ${options.units}; shots as they count by now; dashed: a guess.`,
        at: [MARGIN, height - 10],
        size: DRAW_SETTINGS.smallType,
        paint: 'ink',
        face: 'serif-italic',
      },
    ],
  }
}

/** How far to a side, and along, the line reaches that half of the good strikes come down inside: about where eight in ten are not further off, metres. */
function halfWidth({ x, goodCount }: BagPattern): number {
  return eightInTen(x.slice(0, goodCount))
}
function halfLength({ y, goodCount, club }: BagPattern): number {
  return eightInTen(y.slice(0, goodCount).map((along) => along - club.carryMetres))
}
function eightInTen(off: Float64Array): number {
  const away = off.map(Math.abs).sort()
  return away[Math.floor(0.8 * away.length)] ?? 0
}

function goodPattern({ x, y, weight, goodCount }: BagPattern): Pick<BagPattern, 'x' | 'y' | 'weight'> {
  return { x: x.slice(0, goodCount), y: y.slice(0, goodCount), weight: weight.slice(0, goodCount) }
}

function shotWords(shots: number): string {
  return shots === 0 ? 'guess' : shots === 1 ? '1 shot' : `${shots} shots`
}

function figureOf(metres: number, units: BagDrawingOptions['units']): string {
  return String(Math.round(units === 'yards' ? metres / METRES_PER_YARD : metres))
}

interface PlacedName {
  readonly pattern: BagPattern
  /** Baseline of the name. */
  readonly at: number
  /** Carry of the next shorter club, metres. */
  readonly next: number | null
}

/** Names beside their carries, moved down where they would stand on each other. */
function placedNames(patterns: readonly BagPattern[], levelOf: (metres: number) => number): PlacedName[] {
  const sorted = patterns.toSorted((a, b) => b.club.carryMetres - a.club.carryMetres)
  let last = Number.NEGATIVE_INFINITY
  return sorted.map((pattern, index) => {
    last = Math.max(levelOf(pattern.club.carryMetres) + 4, last + 2 * NAME_STEP)
    return { pattern, at: last, next: sorted[index + 1]?.club.carryMetres ?? null }
  })
}

/** The scale of distance: a tick every ten, a figure every fifty. */
function rule(
  longest: number,
  shortest: number,
  x: number,
  levelOf: (metres: number) => number,
  units: BagDrawingOptions['units'],
): Shape[] {
  const metres = units === 'yards' ? METRES_PER_YARD : 1
  const [from, to] = [Math.ceil(shortest / metres / 10), Math.floor(longest / metres / 10)]
  const tens = Array.from({ length: to - from + 1 }, (_, index) => 10 * (from + index))
  return [
    {
      kind: 'path',
      steps: lineSteps([x, levelOf(longest)], [x, levelOf(shortest)]),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.line },
    },
    {
      kind: 'path',
      steps: tens.flatMap((ten) =>
        lineSteps([x, levelOf(ten * metres)], [x - (ten % 50 === 0 ? 8 : 4), levelOf(ten * metres)]),
      ),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine },
    },
    ...tens
      .filter((ten) => ten % 50 === 0)
      .map(
        (ten): Shape => ({
          kind: 'text',
          text: String(ten),
          at: [x - 11, levelOf(ten * metres) + 4],
          size: DRAW_SETTINGS.smallType,
          paint: 'ink',
          face: 'sans',
          anchor: 'end',
        }),
      ),
  ]
}

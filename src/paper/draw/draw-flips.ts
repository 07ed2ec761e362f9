import type { Drawing, Shape } from './drawing.ts'
import { DRAW_SETTINGS } from './settings.ts'
import { lineSteps, polylineSteps } from './steps.ts'

/** One change that flips the plan, ready to stand on the ruler. */
export interface FlipMark {
  /** What changes and how far: `wind into, 4 m/s`. */
  readonly label: string
  /** The club it changes to. */
  readonly club: string
  /** How far along its sensible range the change lies: 0 = as today, 1 = its end. */
  readonly share: number
}

/** How the ruler is drawn. */
export interface FlipRulerOptions {
  readonly width?: number
  /** The plan's club, at today's end of the ruler. */
  readonly club: string
}

/** Width of a letter as a share of the size of type, near enough for keeping labels apart. */
const LETTER = 0.54

/**
 * The ruler of flips: one line from today to the end of what is sensible, a tick for every change that would give
 * another club, club names above, what changes below. The nearer a tick stands to today, the sooner the plan flips.
 */
export function drawFlips(marks: readonly FlipMark[], options: FlipRulerOptions): Drawing {
  const width = options.width ?? 420
  const [left, right] = [4, width - 4]
  const sorted = marks.toSorted((a, b) => a.share - b.share)
  const tier = DRAW_SETTINGS.type * 2 + 6
  const level = 30
  const placed = placeLabels(sorted, left, right)
  const rows = Math.max(1, ...placed.map(({ row }) => row + 1))
  const top = (row: number): number => level + 14 + row * tier
  const ticks: Shape[] = placed.map(({ x, row }) => ({
    kind: 'path',
    steps: lineSteps([x, level - 7], [x, top(row) + 12]),
    stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine },
  }))
  // Words after ticks, so that a tick passing behind a label is broken by its margin.
  const words = placed.flatMap(({ mark, x, row, isEnd }): Shape[] => {
    const anchor = isEnd ? 'end' : 'start'
    const at = isEnd ? x - 3 : x + 3
    const text = { kind: 'text', paint: 'ink', anchor, halo: 2 } as const
    return [
      { ...text, text: mark.club, at: [at, top(row)], size: DRAW_SETTINGS.type, face: 'serif-bold' },
      { ...text, text: mark.label, at: [at, top(row) + 12], size: DRAW_SETTINGS.smallType, face: 'sans' },
    ]
  })
  return {
    width,
    height: level + 14 + rows * tier,
    title: 'The ruler of flips',
    description:
      sorted.length === 0
        ? `Nothing inside the sensible ranges changes the ${options.club}.`
        : sorted.map((mark) => `${mark.label}: ${mark.club}.`).join(' '),
    shapes: [...scale(left, right, level, options.club), ...ticks, ...words],
  }
}

interface PlacedMark {
  readonly mark: FlipMark
  readonly x: number
  /** 0 = nearest the line. */
  readonly row: number
  /** True when the words stand left of the tick. */
  readonly isEnd: boolean
}

/** From the far end to today: every label goes below those it would touch, so that no tick crosses a label to its right. */
function placeLabels(sorted: readonly FlipMark[], left: number, right: number): PlacedMark[] {
  const placed: (PlacedMark & { readonly start: number })[] = []
  for (const mark of sorted.toReversed()) {
    const x = left + Math.max(0, Math.min(1, mark.share)) * (right - left)
    const letters = Math.max(
      mark.label.length * DRAW_SETTINGS.smallType,
      mark.club.length * DRAW_SETTINGS.type,
    )
    const room = letters * LETTER + 6
    const isEnd = x + room > right
    const [start, end] = isEnd ? [x - room, x] : [x, x + room]
    const touched = placed.filter((other) => other.start < end + 4)
    placed.push({ mark, x, isEnd, start, row: Math.max(-1, ...touched.map(({ row }) => row)) + 1 })
  }
  return placed
}

/** The line with its small divisions, today at one end and the end of the sensible range at the other. */
function scale(left: number, right: number, level: number, club: string): Shape[] {
  const divisions = Array.from({ length: 21 }, (_, index) => {
    const x = left + ((right - left) * index) / 20
    return lineSteps([x, level], [x, level - (index % 5 === 0 ? 5 : 3)])
  }).flat()
  return [
    {
      kind: 'path',
      steps: lineSteps([left, level], [right, level]),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.line },
    },
    { kind: 'path', steps: divisions, stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline } },
    {
      kind: 'path',
      steps: polylineSteps(
        [
          [left, level - 1],
          [left - 4, level - 10],
          [left + 4, level - 10],
        ],
        true,
      ),
      fill: 'spot',
    },
    {
      kind: 'text',
      text: `today: ${club}`,
      at: [left + 8, level - 9],
      size: DRAW_SETTINGS.type,
      paint: 'spot',
      face: 'serif-bold',
    },
    {
      kind: 'text',
      text: 'the far end of what is likely',
      at: [right, level - 9],
      size: DRAW_SETTINGS.smallType,
      paint: 'ink',
      face: 'serif-italic',
      anchor: 'end',
    },
  ]
}

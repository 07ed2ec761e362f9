import type { Drawing, Shape } from './drawing.ts'
import { DRAW_SETTINGS } from './settings.ts'
import { lineSteps } from './steps.ts'

/** Where the answer changes along one quantity, with the clubs on both sides of it. */
export interface FlipCrossing {
  readonly at: number
  /** The club where the quantity is less, and where it is more. */
  readonly below: string
  readonly above: string
}

/** One scale of the ruler of flips. */
export interface FlipScale {
  /** What is changed along it: `wind along the hole`. */
  readonly title: string
  readonly low: number
  readonly high: number
  /** As surveyed, calm, as the player is: a longer division. */
  readonly rest: number
  /** What less and more mean: `behind`, `into`. */
  readonly ends: readonly [string, string]
  readonly crossings: readonly FlipCrossing[]
  readonly width: number
}

/** Height of the line on its drawing, so that a pointer can stand on it, units. */
export const FLIP_SCALE_LEVEL = 34
/** Free at both ends of the line, half the width of that pointer, units. */
export const FLIP_SCALE_MARGIN = 8

/** Width of a letter as a share of the size of type, near enough for keeping labels apart. */
const LETTER = 0.54
const ROW = DRAW_SETTINGS.type + 3

/** A scale of the ruler of flips: one line, a tick wherever another club takes over, the clubs on both sides below it. */
export function drawFlipScale({ title, low, high, rest, ends, crossings, width }: FlipScale): Drawing {
  const [left, right] = [FLIP_SCALE_MARGIN, width - FLIP_SCALE_MARGIN]
  const on = (value: number): number => left + ((value - low) / (high - low)) * (right - left)
  const sorted = crossings.filter(({ at }) => at >= low && at <= high).toSorted((a, b) => a.at - b.at)
  const labels = placed(labelsOf(sorted, on, [left, right]), width)
  const rows = Math.max(1, ...labels.map(({ row }) => row + 1))
  const level = FLIP_SCALE_LEVEL
  const ticks = sorted.flatMap(({ at }) => lineSteps([on(at), level - 11], [on(at), level + 6]))
  return {
    width,
    height: level + 6 + rows * ROW,
    title,
    description:
      sorted.length === 0
        ? 'No other club takes over along it.'
        : sorted.map(({ below, above, at }) => `${below} below ${at.toFixed(1)}, ${above} above.`).join(' '),
    shapes: [
      ...scale(left, right, on(rest), ends),
      { kind: 'path', steps: ticks, stroke: { paint: 'ink', width: DRAW_SETTINGS.heavyLine } },
      ...labels.map(
        ({ text, at, row }): Shape => ({
          kind: 'text',
          text,
          at: [at, level + 3 + (row + 1) * ROW],
          size: DRAW_SETTINGS.type,
          paint: 'ink',
          face: 'serif-bold',
          anchor: 'middle',
          halo: 2,
        }),
      ),
    ],
  }
}

interface Label {
  readonly text: string
  /** The middle of the word on the line. */
  readonly at: number
}

/** The club of every stretch between two ticks: once where both ticks agree on it, else at each tick. */
function labelsOf(
  sorted: readonly FlipCrossing[],
  on: (value: number) => number,
  [left, right]: readonly [number, number],
): Label[] {
  return [...sorted, null].flatMap((next, index): Label[] => {
    const before = sorted[index - 1]
    const [from, to] = [before ? on(before.at) : left, next ? on(next.at) : right]
    const names = [before?.above, next?.below].filter((name) => name !== undefined)
    const [first, second] = names
    if (first !== undefined && second !== undefined && first !== second)
      return [
        { text: first, at: from + room(first) / 2 },
        { text: second, at: to - room(second) / 2 },
      ]
    if (first === undefined) return []
    // Of an open stretch only what lies beside its tick is known.
    const half = room(first) / 2
    return [{ text: first, at: before && next ? (from + to) / 2 : before ? from + half : to - half }]
  })
}

/** The same kept on the sheet and clear of each other, row below row. */
function placed(labels: readonly Label[], width: number): (Label & { readonly row: number })[] {
  const ends: number[] = []
  return labels.map(({ text, at }) => {
    const half = room(text) / 2
    const held = Math.max(half, Math.min(width - half, at))
    const free = ends.findIndex((end) => end <= held - half)
    const row = free < 0 ? ends.length : free
    ends[row] = held + half
    return { text, at: held, row }
  })
}

function room(text: string): number {
  return text.length * DRAW_SETTINGS.type * LETTER + 8
}

/** The line with its small divisions and the longer one at rest, and what its two ends mean. */
function scale(left: number, right: number, rest: number, ends: FlipScale['ends']): Shape[] {
  const level = FLIP_SCALE_LEVEL
  const divisions = Array.from({ length: 21 }, (_, index) => {
    const x = left + ((right - left) * index) / 20
    return lineSteps([x, level], [x, level - 3])
  }).flat()
  const word = (text: string, x: number, anchor: 'start' | 'end'): Shape => ({
    kind: 'text',
    text,
    at: [x, 10],
    size: DRAW_SETTINGS.type,
    paint: 'ink',
    face: 'serif-italic',
    anchor,
  })
  return [
    {
      kind: 'path',
      steps: lineSteps([left, level], [right, level]),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.line },
    },
    {
      kind: 'path',
      steps: [...divisions, ...lineSteps([rest, level], [rest, level - 7])],
      stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline },
    },
    word(ends[0], left, 'start'),
    word(ends[1], right, 'end'),
  ]
}

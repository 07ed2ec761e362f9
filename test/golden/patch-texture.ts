import type { Patch } from './ground-patches.ts'
import { type Copy, DOTS_PER_INCH, inkAt } from './photocopy.ts'

/** What an eye has to tell one ground from another on a copy: its edge, the band inside it, and its middle. */
export interface Texture {
  /** Share of the way round the edge that is inked; 0 = no edge. */
  readonly edgeShare: number
  /** How long a dash of the edge is, drawing units; an unbroken edge as long as its side. */
  readonly edgeDash: number
  /** Ink of the edge across it, drawing units, and how many lines it has beside each other where there are any. */
  readonly edgeWeight: number
  readonly edgeLines: number
  /** Share of ink in the band inside the edge, and in the middle. */
  readonly bandInk: number
  readonly middleInk: number
  /** Size of a mark in the middle, square drawing units; 0 = there is none. */
  readonly mark: number
  /** How upright the marks of the middle are: changes along a row over changes down a column, as a share of both. */
  readonly upright: number
}

const DOTS_PER_UNIT = DOTS_PER_INCH / 72
/** Drawing units: how far the edge reaches out and in, how deep the band is, where the middle begins. */
const EDGE_OUT = 3.6
const EDGE_IN = 1
const BAND = 9
const MIDDLE = 13

/** Measures a patch on a copy; what is not nearly white counts as ink where a dot is asked for. */
export function textureOf(copy: Copy, { left, top, side }: Patch): Texture {
  const ink = (x: number, y: number): number =>
    inkAt(copy, Math.round(x * DOTS_PER_UNIT), Math.round(y * DOTS_PER_UNIT))
  const step = 1 / DOTS_PER_UNIT
  const inside = (margin: number): { ink: number; dots: number } => {
    let [sum, dots] = [0, 0]
    for (let x = left + margin; x < left + side - margin; x += step)
      for (let y = top + margin; y < top + side - margin; y += step) {
        sum += ink(x, y)
        dots += 1
      }
    return { ink: sum, dots }
  }
  const [outer, inner, middle] = [inside(EDGE_IN + 1), inside(BAND), inside(MIDDLE)]
  return {
    ...edgeOf(ink, { left, top, side }, step),
    bandInk: (outer.ink - inner.ink) / (outer.dots - inner.dots),
    middleInk: middle.ink / middle.dots,
    ...marksOf(copy, left + MIDDLE, top + MIDDLE, side - 2 * MIDDLE),
  }
}

/** Walks along the four sides, looking across the edge. */
function edgeOf(
  ink: (x: number, y: number) => number,
  { left, top, side }: Omit<Patch, 'ground'>,
  step: number,
): Pick<Texture, 'edgeShare' | 'edgeDash' | 'edgeWeight' | 'edgeLines'> {
  let [steps, inked, dashes, weight, lines] = [0, 0, 0, 0, 0]
  for (const at of [0, 1, 2, 3]) {
    let wasInked = false
    // The corners are left out: two sides meet there.
    for (let along = 6; along < side - 6; along += step) {
      let [across, before] = [0, 0]
      for (let out = -EDGE_IN; out <= EDGE_OUT; out += step) {
        const off = at % 2 === 0 ? -out : side + out
        const dot = at < 2 ? ink(left + along, top + off) : ink(left + off, top + along)
        if (dot > 0.5 && before <= 0.5) lines += 1
        across += dot
        before = dot
      }
      const isInked = across >= 0.6
      steps += 1
      weight += across * step
      if (isInked) inked += 1
      if (isInked && !wasInked) dashes += 1
      wasInked = isInked
    }
  }
  return {
    edgeShare: inked / steps,
    edgeDash: dashes === 0 ? 0 : (inked * step) / dashes,
    edgeWeight: weight / steps,
    edgeLines: inked === 0 ? 0 : lines / inked,
  }
}

/** Marks of a square: dots of ink that touch, and which way they stand. */
function marksOf(copy: Copy, left: number, top: number, side: number): Pick<Texture, 'mark' | 'upright'> {
  const [x0, y0, size] = [left, top, side].map((each) => Math.round(each * DOTS_PER_UNIT)) as [number, number, number]
  const isInk = (x: number, y: number): boolean =>
    x >= 0 && y >= 0 && x < size && y < size && inkAt(copy, x0 + x, y0 + y) > 0.5
  let [along, down, inked, marks] = [0, 0, 0, 0]
  const seen = new Set<number>()
  for (let y = 0; y < size; y += 1)
    for (let x = 0; x < size; x += 1) {
      if (isInk(x, y) !== isInk(x - 1, y)) along += 1
      if (isInk(x, y) !== isInk(x, y - 1)) down += 1
      if (!isInk(x, y)) continue
      inked += 1
      if (seen.has(y * size + x)) continue
      marks += 1
      const open = [[x, y] as const]
      seen.add(y * size + x)
      for (let next = open.pop(); next !== undefined; next = open.pop())
        for (const [dx, dy] of NEIGHBOURS) {
          const [nx, ny] = [next[0] + dx, next[1] + dy]
          if (!isInk(nx, ny) || seen.has(ny * size + nx)) continue
          seen.add(ny * size + nx)
          open.push([nx, ny])
        }
    }
  return {
    mark: marks === 0 ? 0 : inked / marks / DOTS_PER_UNIT ** 2,
    upright: along + down === 0 ? 0.5 : along / (along + down),
  }
}

const NEIGHBOURS = [-1, 0, 1].flatMap((dx) => [-1, 0, 1].map((dy) => [dx, dy] as const))

/**
 * How far two textures are apart: the most that any one measure differs, where 1 is a difference that is seen at once
 * side by side. Our own scale: a measure that doubles, half a line, or one eighth of an edge or of the way the marks stand.
 */
export function apartBy(one: Texture, other: Texture): number {
  return Math.max(
    Math.abs(one.edgeShare - other.edgeShare) / 0.125,
    doublings(one.edgeWeight, other.edgeWeight, 0.25),
    Math.abs(one.edgeLines - other.edgeLines) / 0.5,
    doublings(one.edgeDash, other.edgeDash, 0.8),
    doublings(one.bandInk, other.bandInk, 0.02),
    doublings(one.middleInk, other.middleInk, 0.02),
    doublings(one.mark, other.mark, 0.4),
    Math.abs(one.upright - other.upright) / 0.125,
  )
}

/** How often a measure doubles; under `floor` an eye sees nothing of it. */
function doublings(one: number, other: number, floor: number): number {
  return Math.abs(Math.log2((one + floor) / (other + floor)))
}

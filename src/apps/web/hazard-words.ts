import type { Hole } from '#golf/course/hole.ts'
import { measureHole } from '#golf/course/measure-hole.ts'
import type { HazardMove } from '#golf/course/move-hazards.ts'
import type { Reader } from './desk/desk.ts'
import { figure, unitSign } from './words.ts'

/** A hazard of the hole as the desk names it. */
export interface NamedHazard {
  readonly id: string
  /** `water left`, or its own name. */
  readonly words: string
  /** With where it begins and ends along the hole: `water left, 140 to 190 yd`. */
  readonly place: string
}

const WORDS: Readonly<Record<string, string>> = {
  bunker: 'bunker',
  'penalty-red': 'water, red',
  'penalty-yellow': 'water, yellow',
  out: 'out of bounds',
  trees: 'trees',
  scrub: 'scrub',
  heavy: 'heavy grass',
}

/** The hazards of a hole as surveyed, nearest to the markers first. */
export function hazardsOf(surveyed: Hole, reader: Reader): readonly NamedHazard[] {
  return measureHole(surveyed).hazards.map(({ id, name, ground, side, reachMetres, farMetres }) => {
    const words = name ?? `${WORDS[ground] ?? ground} ${side}`
    return {
      id,
      words,
      place: `${words}, ${figure(reachMetres, reader)} to ${figure(farMetres, reader)} ${unitSign(reader)}`,
    }
  })
}

/** How a hazard was moved, in words: `moved 20 yd on and 5 yd left`; empty when it was not. */
export function moveWords(move: HazardMove, reader: Reader): string {
  const sides = [
    ...pairWords('near edge', 'far edge', move.near, move.far, ['on', 'back'], reader),
    ...pairWords('left edge', 'right edge', move.left, move.right, ['right', 'left'], reader),
  ]
  return sides.length === 0 ? '' : `moved: ${sides.join(', ')}`
}

function pairWords(
  lowName: string,
  highName: string,
  low: number,
  high: number,
  ways: readonly [string, string],
  reader: Reader,
): readonly string[] {
  const words = (metres: number): string =>
    `${figure(Math.abs(metres), reader)} ${unitSign(reader)} ${metres > 0 ? ways[0] : ways[1]}`
  const isSeen = (metres: number): boolean => figure(metres, reader) !== '0'
  if (Math.abs(low - high) < 1e-9) return isSeen(low) ? [words(low)] : []
  return [
    ...(isSeen(low) ? [`${lowName} ${words(low)}`] : []),
    ...(isSeen(high) ? [`${highName} ${words(high)}`] : []),
  ]
}

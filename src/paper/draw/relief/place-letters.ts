import type { Point } from '#numbers/geometry/point.ts'
import type { Shape } from '../drawing.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import type { Sheet } from '../sheet.ts'
import { lineSteps } from '../steps.ts'

/** Spots this near to each other on the sheet share one label, units. */
const SHARED = 5
/** Distances of a label from its spot, units, and how many directions are tried. */
const AWAY = [13, 20] as const
const DIRECTIONS = 16

interface Spot {
  readonly letter: string
  readonly at: Point
}

/** The letters of the spots beside them, clear of each other and of the other marks, with a short leader where they stand off. */
export function placeLetters(spots: readonly Spot[], others: readonly Point[], sheet: Sheet): Shape[] {
  const taken = [...spots.map(({ at }) => at), ...others]
  const shapes: Shape[] = []
  for (const { letter, at } of gathered(spots.filter((spot) => isInside(spot.at, sheet, 0)))) {
    const label = best(at, taken, sheet)
    taken.push(label)
    if (Math.hypot(label[0] - at[0], label[1] - at[1]) > AWAY[0] + 1)
      shapes.push({
        kind: 'path',
        steps: lineSteps(at, between(at, label)),
        stroke: { paint: 'spot', width: DRAW_SETTINGS.hairline },
      })
    shapes.push({
      kind: 'text',
      text: letter,
      at: [label[0], label[1] + 4.4],
      size: 13,
      paint: 'spot',
      face: 'serif-bold',
      anchor: 'middle',
      halo: 3,
    })
  }
  return shapes
}

function gathered(spots: readonly Spot[]): Spot[] {
  const groups: { letter: string; at: Point }[] = []
  for (const { letter, at } of spots) {
    const near = groups.find((group) => Math.hypot(group.at[0] - at[0], group.at[1] - at[1]) < SHARED)
    if (near) near.letter = `${near.letter}, ${letter}`
    else groups.push({ letter, at })
  }
  return groups
}

/** The place around a spot that is furthest from everything taken; a nearer one and one beside it are a little better. */
function best(at: Point, taken: readonly Point[], sheet: Sheet): Point {
  let found: Point = at
  let most = Number.NEGATIVE_INFINITY
  for (const away of AWAY)
    for (let direction = 0; direction < DIRECTIONS; direction++) {
      const angle = (2 * Math.PI * direction) / DIRECTIONS
      const label: Point = [at[0] + away * Math.cos(angle), at[1] + away * Math.sin(angle)]
      if (!isInside(label, sheet, 9)) continue
      const room = Math.min(30, ...taken.map((other) => Math.hypot(other[0] - label[0], other[1] - label[1])))
      const score = room - (away - AWAY[0]) * 0.9 - Math.abs(Math.sin(angle)) * 2
      if (score <= most) continue
      most = score
      found = label
    }
  return found
}

/** From a spot towards its label, stopping short of the letter. */
function between(at: Point, label: Point): Point {
  const share = 0.62
  return [at[0] + (label[0] - at[0]) * share, at[1] + (label[1] - at[1]) * share]
}

function isInside([x, y]: Point, { frame }: Sheet, margin: number): boolean {
  return (
    x >= frame.left + margin &&
    x <= frame.right - margin &&
    y >= frame.top + margin &&
    y <= frame.bottom - margin
  )
}

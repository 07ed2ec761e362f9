import { hazardBox } from '#golf/course/hazard-box.ts'
import type { Hole } from '#golf/course/hole.ts'
import { NOT_MOVED } from '#golf/course/move-hazards.ts'
import type { Flip, Plan } from '#golf/strategy/plan.ts'
import type { Point } from '#numbers/geometry/point.ts'
import type { FlipCrossing } from '#paper/draw/draw-flip-scale.ts'
import type { Desk } from './desk.ts'
import * as edits from './edits.ts'

/** What is dragged along one scale of the ruler of flips; a hazard goes along the first leg, or across it, metres. */
export type Quantity =
  | { readonly what: 'wind along' | 'wind across' | 'firmness' | 'spread' }
  | { readonly what: 'hazard along' | 'hazard across'; readonly hazard: string }

/** One scale with the places on it that are known to change the answer. */
export interface RulerScale {
  readonly quantity: Quantity
  /** Everything else that the plan is of: crossings hold while it stays. */
  readonly rest: string
  readonly crossings: readonly FlipCrossing[]
}

/** A quantity by its name. */
export function quantityName(quantity: Quantity): string {
  return 'hazard' in quantity ? `${quantity.what} ${quantity.hazard}` : quantity.what
}

/** Where the desk stands on a scale: m/s into the wind or from the right, the factor, metres further or to the right. */
export function valueOn(desk: Desk, surveyed: Hole, quantity: Quantity): number {
  switch (quantity.what) {
    case 'wind along':
      return edits.windParts(desk, surveyed.bearingDegrees).into
    case 'wind across':
      return edits.windParts(desk, surveyed.bearingDegrees).fromRight
    case 'firmness':
      return desk.day.firmness
    case 'spread':
      return desk.spread
    default:
      return shiftOf(desk, surveyed, quantity.hazard)[quantity.what === 'hazard along' ? 1 : 0]
  }
}

/** The desk with a quantity brought to a value, all else as it is. */
export function setOn(desk: Desk, surveyed: Hole, quantity: Quantity, value: number): Desk {
  switch (quantity.what) {
    case 'wind along':
      return edits.setWindPart(desk, surveyed.bearingDegrees, 'into', value)
    case 'wind across':
      return edits.setWindPart(desk, surveyed.bearingDegrees, 'fromRight', value)
    case 'firmness':
      return edits.setFirmness(desk, value)
    case 'spread':
      return edits.setSpread(desk, value)
    default: {
      const { hazard } = quantity
      const by = value - valueOn(desk, surveyed, quantity)
      const [ox, oy] = onwardOf(surveyed, hazard)
      const [dx, dy] = quantity.what === 'hazard along' ? [0, by] : [by, 0]
      const [right, on] = [dx * oy - dy * ox, dx * ox + dy * oy]
      const { near, far, left, right: rightEdge } = desk.moved[hazard] ?? NOT_MOVED
      const move = { near: near + on, far: far + on, left: left + right, right: rightEdge + right }
      return edits.moveHazard(desk, hazard, move)
    }
  }
}

/** The scales that a full plan of the desk knows, each quantity with what was found along it. */
export function scalesOf(
  plan: Pick<Plan, 'flips' | 'options' | 'avoid'>,
  desk: Desk,
  surveyed: Hole,
): RulerScale[] {
  const present = plan.options[0]?.club ?? ''
  const scales = new Map<string, RulerScale>()
  for (const flip of plan.flips) {
    const found = placeOf(flip, plan.avoid?.side === 'left' ? -1 : 1)
    if (found === null) continue
    const { quantity, sign } = found
    const name = quantityName(quantity)
    const scale = scales.get(name) ?? { quantity, rest: restOf(desk, surveyed, quantity), crossings: [] }
    const crossing = crossingOf(flip, sign, present, valueOn(desk, surveyed, quantity))
    scales.set(name, { ...scale, crossings: [...scale.crossings, ...crossing] })
  }
  return [...scales.values()]
}

/**
 * Scales with what was known of them before: a crossing stays while all but its own quantity does, so that it stays marked
 * while one drags past it; a hazard that no longer matters most keeps its scale while it alone was moved.
 */
export function rememberScales(
  known: readonly RulerScale[],
  found: readonly RulerScale[],
  restNow: (quantity: Quantity) => string,
): RulerScale[] {
  const before = new Map(known.map((scale) => [quantityName(scale.quantity), scale]))
  const now = new Set(found.map(({ quantity }) => quantityName(quantity)))
  return [
    ...found.map((scale) => {
      const old = before.get(quantityName(scale.quantity))
      return old?.rest === scale.rest
        ? { ...scale, crossings: joined(old.crossings, scale.crossings) }
        : scale
    }),
    ...known.filter(({ quantity, rest }) => !now.has(quantityName(quantity)) && rest === restNow(quantity)),
  ]
}

/** Everything that a plan is of but one quantity. */
export function restOf(desk: Desk, surveyed: Hole, quantity: Quantity): string {
  const { club: _, aimDegrees: __, ...rest } = desk
  const zero = setOn(
    desk,
    surveyed,
    quantity,
    quantity.what === 'firmness' || quantity.what === 'spread' ? 1 : 0,
  )
  const { into, fromRight } = edits.windParts(zero, surveyed.bearingDegrees)
  const day = { ...zero.day, wind: [into, fromRight].map(rounded) }
  const moved = Object.entries(zero.moved)
    .map(([id, { near, far, left, right }]) => [id, ...[near, far, left, right].map(rounded)])
    .filter(([, ...sides]) => sides.some((side) => side !== 0))
  return JSON.stringify({ ...rest, day, moved, spread: rounded(zero.spread) })
}

/** Old crossings stay where they are; of the same two clubs there is one. */
function joined(old: readonly FlipCrossing[], found: readonly FlipCrossing[]): FlipCrossing[] {
  const isKnown = ({ below, above }: FlipCrossing): boolean =>
    old.some((one) => one.below === below && one.above === above)
  return [...old, ...found.filter((one) => !isKnown(one))]
}

function crossingOf({ what, at, club }: Flip, sign: number, present: string, value: number): FlipCrossing[] {
  if (at === null || club === null) return []
  const place = what === 'firmness' ? at : what === 'spread' ? value * at : value + sign * at
  return [sign > 0 ? { at: place, below: present, above: club } : { at: place, below: club, above: present }]
}

/** On which scale a flip stands, and to which side of now. `outwards`: the sign of away from the line. */
function placeOf(
  { what, direction, area }: Flip,
  outwards: number,
): { quantity: Quantity; sign: number } | null {
  const known = SIGNS[`${what} ${direction}`]
  if (known !== undefined) return { quantity: { what: known[0] }, sign: known[1] }
  if (area === undefined) return null
  if (direction === 'further' || direction === 'nearer')
    return { quantity: { what: 'hazard along', hazard: area }, sign: direction === 'further' ? 1 : -1 }
  const sign = direction === 'wider of the line' ? outwards : -outwards
  return { quantity: { what: 'hazard across', hazard: area }, sign }
}

const SIGNS: Readonly<
  Record<string, readonly ['wind along' | 'wind across' | 'firmness' | 'spread', number]>
> = {
  'wind into': ['wind along', 1],
  'wind behind': ['wind along', -1],
  'wind from the right': ['wind across', 1],
  'wind from the left': ['wind across', -1],
  'firmness firmer': ['firmness', 1],
  'firmness softer': ['firmness', -1],
  'spread wider': ['spread', 1],
  'spread tighter': ['spread', -1],
}

/** How far a hazard lies from where it was surveyed in the hole frame, by its near and left sides, metres. */
function shiftOf(desk: Desk, surveyed: Hole, hazard: string): Point {
  const { near, left } = desk.moved[hazard] ?? NOT_MOVED
  const [ox, oy] = onwardOf(surveyed, hazard)
  return [left * oy + near * ox, near * oy - left * ox]
}

function onwardOf(surveyed: Hole, hazard: string): Point {
  const area = surveyed.areas.find(({ id }) => id === hazard)
  return area === undefined ? [0, 1] : hazardBox(area.polygon, surveyed.line).onward
}

function rounded(value: number): number {
  return Math.round(value * 1000) / 1000 + 0
}

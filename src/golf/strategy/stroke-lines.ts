import { degreesToRadians } from '#numbers/units/units.ts'
import type { Situation } from './evaluate-stroke.ts'
import { isHamperedAt } from './hampered.ts'
import type { HoleModel } from './hole-model.ts'
import { directionsOn } from './lines-of-play.ts'
import { STROKE_LINES_DEGREES, STROKE_SIDEWAYS_DEGREES, STROKE_SIDEWAYS_STEP_DEGREES } from './settings.ts'

/**
 * Headings to try for one stroke, radians: multiples of the step about the pin and about the next bend, from left to
 * right. Where trees are in the way, also to the sides, coarser, and low shots may be played.
 */
export function strokeLines(
  model: HoleModel,
  { x, y, lie }: Situation,
  stepDegrees: number,
): { readonly headings: number[]; readonly isHampered: boolean } {
  const { pin, bend } = directionsOn(model.hole, x, y)
  const { canopy } = model
  const isHampered = isHamperedAt(canopy, canopy.fromPoint(x, y), 0, lie, { pin, bend })
  const found = new Set<number>()
  const add = (direction: number, reach: number, multiple: number): void => {
    const centre = (direction * 180) / Math.PI
    const first = Math.ceil((centre - reach) / (multiple * stepDegrees))
    const last = Math.floor((centre + reach) / (multiple * stepDegrees))
    for (let at = first; at <= last; at++) found.add(at * multiple)
  }
  for (const direction of Number.isNaN(bend) ? [pin] : [pin, bend]) add(direction, STROKE_LINES_DEGREES, 1)
  if (isHampered)
    add(pin, STROKE_SIDEWAYS_DEGREES, Math.max(1, Math.round(STROKE_SIDEWAYS_STEP_DEGREES / stepDegrees)))
  return {
    headings: [...found].sort((a, b) => a - b).map((multiple) => degreesToRadians(multiple * stepDegrees)),
    isHampered,
  }
}

import type { Hole } from '#golf/course/hole.ts'
import { shotWords } from '#golf/strategy/near-green-sentence.ts'
import type { Plan, PlanOption, ShortPart } from '#golf/strategy/plan.ts'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import { shortProfile } from '#golf/strategy/short-profile.ts'
import { drawShortShot } from './draw-short-shot.ts'
import type { Drawing } from './drawing.ts'

/** One short shot of a plan near the green from the side: carry, landing spot and roll over the ground's own heights; `width` in drawing units. */
export function drawShortOption(
  hole: Hole,
  plan: Pick<Plan, 'situation'>,
  option: PlanOption & { readonly short: ShortPart },
  units: 'yards' | 'metres',
  width?: number,
): Drawing {
  const { x_m: x, y_m: y } = plan.situation
  const { short } = option
  const pin = Math.hypot(hole.pin[0] - x, hole.pin[1] - y)
  const along = (atX: number, atY: number): number =>
    ((atX - x) * (hole.pin[0] - x) + (atY - y) * (hole.pin[1] - y)) / Math.max(1e-9, pin)
  const [restX, restY] = short.path.at(-1) ?? [short.landing.x_m, short.landing.y_m]
  const rest = along(restX, restY)
  const land = along(short.landing.x_m, short.landing.y_m)
  return drawShortShot({
    profile: shortProfile(hole, [x, y], Math.max(land, rest)),
    title: `Hole ${hole.ref}: ${clubWords(option)}`,
    sentence: shotWords(option, units),
    carryMetres: short.carry_m,
    apexMetres: short.apex_m,
    landMetres: land,
    restMetres: rest,
    units,
    ...(width === undefined ? {} : { width }),
  })
}

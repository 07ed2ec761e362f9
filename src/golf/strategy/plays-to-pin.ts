import { playsAs } from '#golf/ball/plays-as.ts'
import type { Point } from '#numbers/geometry/point.ts'
import type { HoleModel } from './hole-model.ts'
import type { Plan } from './plan.ts'
import { shotsOf } from './shots.ts'

/** How far a carry of `metres` from a place towards the pin plays today for this player's clubs, metres. */
export function playsToPin(
  model: Pick<HoleModel, 'hole' | 'player' | 'flights'>,
  from: Point,
  metres: number,
): number {
  const { pin } = model.hole
  const clubs = shotsOf(model.player).map(({ stock, loftDegrees }) => ({
    carryMetres: stock.carryMetres,
    loftDegrees,
  }))
  return playsAs(model.flights, clubs, metres, Math.atan2(pin[0] - from[0], pin[1] - from[1]))
}

/** The pin from a place and how far it plays; `null` when the longest club does not reach it on the level. */
export function pinPlays(model: Pick<HoleModel, 'hole' | 'player' | 'flights'>, from: Point): Plan['plays'] {
  const distance = Math.hypot(model.hole.pin[0] - from[0], model.hole.pin[1] - from[1])
  const longest = Math.max(...model.player.clubs.map((club) => club.totalMetres))
  return distance > longest ? null : { pin_m: distance, plays_m: playsToPin(model, from, distance) }
}

import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import type { PlanOption } from '#golf/strategy/plan.ts'

/** A club on a line: what can be looked at and dragged, with or without a price. */
export type AimedClub = Pick<PlanOption, 'club' | 'shape' | 'aim' | 'total_m'>

/**
 * What to look at from the markers until a plan is there: the club that is looked at, or else the longest that does not go
 * by the pin, at the pin where it reaches it and along the hole line where not. It is where a hand begins, no advice.
 */
export function firstAim(hole: Hole, player: Player, looked: string | null): AimedClub | null {
  const { clubs } = player
  const [x, y] = hole.pin
  const pinMetres = Math.hypot(x, y)
  const club =
    clubs.find(({ name }) => name === looked) ??
    clubs.find(({ totalMetres }) => totalMetres <= pinMetres) ??
    clubs.at(-1)
  if (club === undefined) return null
  const total = club.totalMetres
  const isInReach = pinMetres - total < PIN_METRES
  const heading = isInReach ? (Math.atan2(x, y) * 180) / Math.PI : 0
  return {
    club: club.name,
    shape: 'stock',
    aim: {
      heading_deg: heading,
      offset_m: total * Math.sin((heading * Math.PI) / 180),
      at_m: total,
      start_deg: heading,
    },
    total_m: total,
  }
}

/** A club that leaves no more than this to the pin is aimed by it, metres: as in a plan's sentence. */
const PIN_METRES = 30

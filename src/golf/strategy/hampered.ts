import type { Crown } from '#golf/course/crown.ts'
import type { Lie } from '#golf/player/player.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import type { Canopy } from './canopy.ts'
import type { CrownRays } from './crown-rays.ts'
import { HAMPERING_DEGREES, HAMPERING_METRES, HAMPERING_SLOPE } from './settings.ts'

/** Whether a piece of crowns is in the way of a usual shot: near, and higher than such a shot rises by then. */
export function isInTheWay(topMetres: number, fromMetres: number): boolean {
  return fromMetres < HAMPERING_METRES && topMetres > HAMPERING_SLOPE * fromMetres
}

/** Whether trees or scrub are in the way of a stroke to the pin or the next bend, radians; NaN = no bend ahead. */
export function isHamperedAt(
  canopy: Canopy,
  rays: CrownRays,
  slot: number,
  lie: Lie,
  ahead: { readonly pin: number; readonly bend: number },
): boolean {
  if (lie === 'trees' || lie === 'scrub') return true
  if (canopy.isEmpty || lie === 'bunker' || lie === 'fringe' || lie === 'tee') return false
  const spread = Math.round((degreesToRadians(HAMPERING_DEGREES) * rays.headings) / (2 * Math.PI))
  return [ahead.pin, ahead.bend].some((direction) => {
    if (Number.isNaN(direction)) return false
    const middle = rays.headingNumber(direction)
    for (let off = -spread; off <= spread; off++) {
      const ray = rays.rayAt(slot, (middle + off + rays.headings) % rays.headings)
      if (ray === 0) continue
      for (let piece = rays.first[ray] as number; piece < (rays.first[ray + 1] as number); piece++) {
        const from = rays.from[piece] as number
        if (from >= HAMPERING_METRES) break
        const { topMetres } = canopy.crowns[rays.crown[piece] as number] as Crown
        if (isInTheWay(topMetres, from)) return true
      }
    }
    return false
  })
}

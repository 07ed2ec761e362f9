import { isLow, isPartial } from '../shots.ts'
import type { Rule } from './rule.ts'
import { cheapest, isAtGreen } from './rule-scene.ts'
import { FULL_CLUB_METRES, FULL_CLUBS } from './settings.ts'

/**
 * "Lay up to a full club": leave the total of the player's shortest full club or of one of the two above it, against
 * going on to where only a part of a swing is left. It speaks where the best stroke is a layup.
 */
export const fullClub: Rule = {
  name: 'full-club',
  hazard: null,
  sort: (scene) => {
    const best = cheapest(scene.options)
    if (best === null || isAtGreen(scene, best)) return null
    const full = scene.options
      .filter(({ shot }) => !isPartial(shot) && !isLow(shot))
      .map(({ shot }) => shot.stock.totalMetres)
    const totals = [...new Set(full)].sort((a, b) => a - b).slice(0, FULL_CLUBS)
    const shortest = totals[0]
    if (shortest === undefined) return null
    return (option) => {
      if (isAtGreen(scene, option)) return 'neither'
      if (option.toPin < shortest - FULL_CLUB_METRES) return 'departs'
      return totals.some((total) => Math.abs(option.toPin - total) <= FULL_CLUB_METRES)
        ? 'follows'
        : 'neither'
    }
  },
}

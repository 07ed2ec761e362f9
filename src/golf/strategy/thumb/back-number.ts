import type { Rule } from './rule.ts'
import { isAtGreen } from './rule-scene.ts'
import { NUMBER_METRES } from './settings.ts'

/**
 * "Play to the back number": the one shot whose usual finish comes nearest to the back edge, against every other that
 * goes for the green. It says nothing where no shot comes near enough to the back edge.
 */
export const backNumber: Rule = {
  name: 'back-number',
  hazard: null,
  sort: (scene) => {
    const { numbers, options } = scene
    const going = options.filter((option) => isAtGreen(scene, option))
    const off = ({ total }: { readonly total: number }): number => Math.abs(total - numbers.back)
    const nearest = going.reduce((best, one) => (best && off(best) <= off(one) ? best : one), going[0])
    if (!nearest || off(nearest) > NUMBER_METRES) return null
    return (option) => {
      if (!isAtGreen(scene, option)) return 'neither'
      return option.shot === nearest.shot ? 'follows' : 'departs'
    }
  },
}

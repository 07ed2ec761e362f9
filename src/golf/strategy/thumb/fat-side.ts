import type { Hole } from '#golf/course/hole.ts'
import { headingCrossings } from '#numbers/geometry/heading-crossings.ts'
import type { Rule } from './rule.ts'
import { isAtGreen, type RuleScene } from './rule-scene.ts'
import { FAT_SIDE_AIM_METRES, FAT_SIDE_MORE_METRES } from './settings.ts'

/**
 * "Miss on the fat side": aim between the pin and the far edge of the side with more green, against aiming at the pin or
 * beyond it to the short side. It says nothing of a pin with about as much green on both sides.
 */
export const fatSide: Rule = {
  name: 'fat-side',
  hazard: null,
  sort: (scene) => {
    const room = roomBeside(scene)
    if (room === null || Math.abs(room.right - room.left) < FAT_SIDE_MORE_METRES) return null
    const fat = room.right > room.left ? 1 : -1
    return (option) => {
      if (!isAtGreen(scene, option)) return 'neither'
      const towardsFat = fat * scene.toPin * Math.tan(option.heading - room.toPin)
      if (towardsFat <= 0) return 'departs'
      return towardsFat >= FAT_SIDE_AIM_METRES ? 'follows' : 'neither'
    }
  },
}

/** Green to both sides of the pin, square to the line from the ball, metres; `null` without a green around the pin. */
function roomBeside({ model, from }: RuleScene): {
  readonly toPin: number
  readonly left: number
  readonly right: number
} | null {
  const { green, pin }: Hole = model.hole
  const toPin = Math.atan2(pin[0] - from[0], pin[1] - from[1])
  const left = green ? headingCrossings(green, pin, toPin - Math.PI / 2)[0] : undefined
  const right = green ? headingCrossings(green, pin, toPin + Math.PI / 2)[0] : undefined
  return left === undefined || right === undefined ? null : { toPin, left, right }
}

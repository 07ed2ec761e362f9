import type { Hole } from '#golf/course/hole.ts'
import { radiansToDegrees } from '#numbers/units/units.ts'
import type { Situation } from './evaluate-stroke.ts'
import type { PlanOption } from './plan.ts'
import type { SentenceLine } from './plan-sentence.ts'

/** A club whose total comes this near to the pin is aimed by the pin and not by the hole line, metres. */
const NEAR_PIN_METRES = 30

/** What a person can see to aim by: the pin when it is in reach or the ball is on its way, else the line from the tee. */
export function sentenceLine(
  hole: Hole,
  situation: Situation,
): (option: Pick<PlanOption, 'total_m'>) => SentenceLine {
  const dx = hole.pin[0] - situation.x
  const dy = hole.pin[1] - situation.y
  const pin: SentenceLine = { words: 'pin', headingDegrees: radiansToDegrees(Math.atan2(dx, dy)) }
  const leg: SentenceLine = {
    words: hole.line.length > 2 ? 'line off the tee' : 'hole line',
    headingDegrees: 0,
  }
  return (option) =>
    situation.lie !== 'tee' || Math.abs(option.total_m - Math.hypot(dx, dy)) < NEAR_PIN_METRES ? pin : leg
}

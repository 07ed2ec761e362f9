import type { HoleMeasures } from '#golf/course/hole-measures.ts'
import { backNumber } from './back-number.ts'
import { fatSide } from './fat-side.ts'
import { fullClub } from './full-club.ts'
import type { Rule } from './rule.ts'
import { watersInPlay } from './short-of-water.ts'

/** The rules that a hole gives reason to think of. */
export function rulesOfHole(measures: HoleMeasures): Rule[] {
  return [...watersInPlay(measures), backNumber, fatSide, fullClub]
}

import { describe, expect, it } from 'vitest'
import type { Hole } from '#golf/course/hole.ts'
import type { PlanOption } from '#golf/strategy/plan.ts'
import { aimWords, linesOf, sideWords } from './aim-words.ts'
import type { Reader } from './desk/desk.ts'

const metres: Reader = { units: 'metres', windUnit: 'm/s', theme: 'day', print: 'usual' }
// The pin stands 3 to the left of straight ahead: a 3-4-5 triangle fifty times over gives whole figures.
const hole = { pin: [-30, 40], line: [[0, 0] as const, [-30, 40] as const] } as unknown as Hole
const toPin = (-Math.atan2(30, 40) * 180) / Math.PI
const lines = linesOf({ x_m: 0, y_m: 0, lie: 'tee' }, hole)
const club = (total: number): PlanOption =>
  ({ total_m: total, aim: { heading_deg: toPin, at_m: 2 * total } }) as unknown as PlanOption

describe('aimWords', () => {
  it('aims by the pin when it is in reach, however far off the first leg it stands', () => {
    expect(aimWords(club(50), toPin, lines(club(50)), metres)).toBe('at the pin, 50 m on')
    expect(aimWords(club(50), toPin - 10, lines(club(50)), metres)).toBe('9 m left of the pin, 50 m on')
  })

  it('aims by the line when the pin is out of reach, at what the club makes today', () => {
    expect(aimWords(club(150), 6, lines(club(150)), metres)).toBe('16 m right at 150 m')
    expect(sideWords(club(150), 0, lines(club(150)), metres)).toBe('on the line')
  })
})

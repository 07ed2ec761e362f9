import { describe, expect, it } from 'vitest'
import { REFERENCE_DAY } from '#golf/course/day.ts'
import { cautionsOf } from './cautions.ts'
import { inventedHole } from './invented-hole.fixture.ts'

const WINDY = { ...REFERENCE_DAY, wind: { speedMetresPerSecond: 5, fromDegrees: 240 } }

describe('cautionsOf', () => {
  it('warns of a wind by the compass where nobody has said which way the hole lies', () => {
    const said = (isBearingInvented: boolean, day = WINDY) =>
      cautionsOf({ ...inventedHole(300), isBearingInvented }, day, new Set(), true).filter((words) =>
        words.includes('laid to the north'),
      ).length
    expect(said(true)).toBe(1)
    expect(said(false)).toBe(0)
    expect(said(true, REFERENCE_DAY)).toBe(0)
  })
})

import { describe, expect, it } from 'vitest'
import { parseRelativeWind } from './parse-relative-wind.ts'

describe('parseRelativeWind', () => {
  it('turns words into a speed and where it comes from', () => {
    expect(parseRelativeWind('into:7', 30)).toEqual({ speedMetresPerSecond: 7, fromDegrees: 30 })
    expect(parseRelativeWind('behind:3.5', 30)).toEqual({ speedMetresPerSecond: 3.5, fromDegrees: 210 })
    expect(parseRelativeWind('left:7', 30)).toEqual({ speedMetresPerSecond: 7, fromDegrees: 300 })
    expect(parseRelativeWind('Right:7', 300)).toEqual({ speedMetresPerSecond: 7, fromDegrees: 30 })
  })

  it('refuses anything else', () => {
    for (const text of ['', 'into', 'into:', 'into:-3', 'into:50', 'up:7', 'into:7mph'])
      expect(() => parseRelativeWind(text, 0)).toThrowError(expect.objectContaining({ code: 'MAR-DAY-006' }))
  })
})

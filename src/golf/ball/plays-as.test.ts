import { describe, expect, it } from 'vitest'
import { type Conditions, windShareOverGrass } from './conditions.ts'
import { REFERENCE_DENSITY } from './flight-settings.ts'
import { flights } from './flights.ts'
import { type LoftedCarry, playsAs } from './plays-as.ts'

const CLUBS: readonly LoftedCarry[] = [
  { carryMetres: 70, loftDegrees: 56 },
  { carryMetres: 200, loftDegrees: 11 },
  { carryMetres: 130, loftDegrees: 35 },
  { carryMetres: 165, loftDegrees: 21 },
]

function plays(metres: number, change: Partial<Conditions> = {}, heading = 0): number {
  const still = { windX: 0, windY: 0, windShare: windShareOverGrass, density: REFERENCE_DENSITY }
  return playsAs(flights({ ...still, risePerMetre: 0, riseHeading: 0, ...change }), CLUBS, metres, heading)
}

/** A rise of so many metres over the shot. */
const rising = (height: number, metres: number): Partial<Conditions> => ({ risePerMetre: height / metres })

describe('playsAs', () => {
  it('is the distance itself on a level reference day', () => {
    for (const metres of [0, 3, 40, 101.5, 163, 240]) expect(plays(metres)).toBeCloseTo(metres, 9)
  })

  it('adds more uphill than it takes off downhill, and grows with the height', () => {
    for (const metres of [110, 150, 190]) {
      const played = [-12, -6, 0, 6, 12].map((height) => plays(metres, rising(height, metres)))
      for (const [index, longer] of played.entries())
        if (index > 0) expect(longer).toBeGreaterThan(played[index - 1] ?? 0)
      const [down12 = 0, down6 = 0, level = 0, up6 = 0, up12 = 0] = played
      expect(up6 - level).toBeGreaterThan(level - down6)
      expect(up12 - level).toBeGreaterThan(level - down12)
      // Common practice: a metre of height is about a metre of distance; a little less for steep landings, more for flat.
      expect((up6 - level) / 6).toBeGreaterThan(0.6)
      expect((up6 - level) / 6).toBeLessThan(1.6)
    }
  })

  it('adds more into the wind than it takes off behind, and grows with the wind', () => {
    const played = [-8, -4, 0, 4, 8].map((windY) => plays(150, { windY: -windY }))
    for (const [index, longer] of played.entries())
      if (index > 0) expect(longer).toBeGreaterThan(played[index - 1] ?? 0)
    const [behind8 = 0, behind4 = 0, calm = 0, into4 = 0, into8 = 0] = played
    expect(into4 - calm).toBeGreaterThan(calm - behind4)
    expect(into8 - calm).toBeGreaterThan(calm - behind8)
  })

  it('takes off in thin air, and is the same to both sides', () => {
    expect(plays(150, { density: 1 })).toBeLessThan(150)
    expect(plays(150, { windX: 6 })).toBeCloseTo(plays(150, { windX: -6 }), 6)
    const slope = { risePerMetre: 0.05, riseHeading: 0.6 }
    expect(plays(150, slope, 0.3)).toBeCloseTo(plays(150, { ...slope, riseHeading: -0.6 }, -0.3), 6)
  })

  it('never plays shorter for a longer shot', () => {
    let before = 0
    for (let metres = 120; metres <= 180; metres += 1.3) {
      const played = plays(metres, { windY: -6, risePerMetre: 0.03 })
      expect(played).toBeGreaterThan(before)
      before = played
    }
  })
})

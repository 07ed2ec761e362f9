import { describe, expect, it } from 'vitest'
import { REFERENCE_DAY } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeConditions } from './hole-conditions.ts'
import { inventedHole, mirrored } from './invented-hole.fixture.ts'
import { type PlayingLength, playingLength } from './playing-length.ts'

const windFrom = (fromDegrees: number, speedMetresPerSecond = 6): typeof REFERENCE_DAY => ({
  ...REFERENCE_DAY,
  wind: { speedMetresPerSecond, fromDegrees },
})
const of = (hole: Hole, day = REFERENCE_DAY): PlayingLength => playingLength(hole, holeConditions(hole, day))

/** 210 m up, then 150 m to the right. */
const bent: Hole = {
  ...inventedHole(360),
  line: [
    [0, 0],
    [0, 210],
    [150, 210],
  ],
  pin: [150, 210],
}

describe('playingLength', () => {
  it('is the length of a level hole on a calm reference day, bends and all', () => {
    for (const hole of [inventedHole(150), inventedHole(473), bent]) {
      const plays = of(hole)
      expect(plays.playsMetres).toBeCloseTo(hole.lengthMetres, 6)
      expect(plays.byHeightMetres).toBeCloseTo(0, 6)
      expect(plays.byWindMetres).toBeCloseTo(0, 6)
      expect(plays.byAirMetres).toBeCloseTo(0, 6)
    }
  })

  it('says what height, wind and air add, each alone', () => {
    const hole = { ...inventedHole(150), riseMetres: 9 }
    const plays = of(hole, { ...windFrom(0), altitudeMetres: 1200, temperatureCelsius: 28 })
    expect(plays.byHeightMetres).toBeGreaterThan(5)
    expect(plays.byHeightMetres).toBeLessThan(14)
    expect(plays.byWindMetres).toBeGreaterThan(5)
    expect(plays.byAirMetres).toBeLessThan(-3)
    expect(of({ ...hole, riseMetres: -9 }).byHeightMetres).toBeGreaterThan(-plays.byHeightMetres)
    expect(of(inventedHole(150), windFrom(180)).byWindMetres).toBeGreaterThan(-plays.byWindMetres)
  })

  it('feels the wind along each leg', () => {
    // Into the first leg it blows across the second, and the other way about.
    const first = of(bent, windFrom(0)).byWindMetres
    const second = of(bent, windFrom(90)).byWindMetres
    expect(first).toBeGreaterThan(second)
    expect(second).toBeGreaterThan(5)
  })

  it('is the same for the mirrored hole in the mirrored wind', () => {
    expect(of(mirrored(bent), windFrom(-50)).playsMetres).toBeCloseTo(of(bent, windFrom(50)).playsMetres, 6)
  })
})

import { describe, expect, it } from 'vitest'
import { feetToMetres } from '#numbers/units/units.ts'
import { puttGivenOutcome } from './putt-given-outcome.ts'
import { puttingValues } from './putting-values.ts'

const putting = { directionSdDegrees: 1.5, distanceSdShare: 0.085 }

describe('a putt given how it ended', () => {
  it('expects before the putt what the putting table does', () => {
    for (const metres of [1, 2.5, 3.7, 8, 14]) {
      const { expected } = puttGivenOutcome(putting, metres, null)
      // Reason: 256 strokes and 64 readings against the panels of the table.
      expect(Math.abs(expected - puttingValues({ putting }).expected(metres)), `${metres} m`).toBeLessThan(
        0.02,
      )
    }
  })

  it('takes a holed putt of 12 ft for a little better struck than most, and for much luck', () => {
    const { expected, asStruck } = puttGivenOutcome(putting, feetToMetres(12), null)
    const gained = expected - 1
    const struck = expected - (asStruck as number)
    expect(struck).toBeGreaterThan(0.02)
    expect(struck).toBeLessThan(gained / 2)
  })

  it('takes a tap-in holed for nearly nothing, and a bad leave for a bad stroke', () => {
    const short = puttGivenOutcome(putting, 0.3, null)
    expect(Math.abs(short.expected - (short.asStruck as number))).toBeLessThan(0.01)
    const near = puttGivenOutcome(putting, 10, 0.5)
    const far = puttGivenOutcome(putting, 10, 3)
    expect(far.asStruck as number).toBeGreaterThan((near.asStruck as number) + 0.05)
  })

  it('says nothing of a putt that this player never leaves so', () => {
    expect(puttGivenOutcome(putting, 1, 30).asStruck).toBeNull()
  })
})

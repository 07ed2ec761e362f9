import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { courseHandicap, playingHandicap, sidePlayingHandicap, type TeeRating } from './course-handicap.ts'
import { HANDICAP_ALLOWANCES } from './handicap-allowances.ts'
import { holeLimit } from './hole-limit.ts'
import { maximumScore } from './maximum-score.ts'

/** Tees on which the course handicap is the index: slope 113, rated at par. */
const level = (index: number): TeeRating => ({
  indexTenths: Math.round(index * 10),
  slopeRating: 113,
  courseRatingTenths: 720,
  par: 72,
})

describe('the one handicap of partners with one ball', () => {
  // Committee guidance of a governing body on handicap competitions (usga.org, LG_R7h5, read in its text): rating 72.3,
  // slope 135, par 72; 25, 20, 15 and 10 % from the lowest to the highest.
  const four = [8.4, 12.6, 23.4, 31.2].map(
    (index): TeeRating => ({
      indexTenths: Math.round(index * 10),
      slopeRating: 135,
      courseRatingTenths: 723,
      par: 72,
    }),
  )

  it('is 14 for the published scramble of four, from course handicaps that were not rounded', () => {
    // The source cuts off after three decimals.
    const cut = four.map((rating) => Math.floor(courseHandicap(rating) * 1000) / 1000)
    expect(cut).toEqual([10.335, 15.353, 28.255, 37.574])
    expect(sidePlayingHandicap(four, HANDICAP_ALLOWANCES['Scramble 4'])).toBe(14)
    // Whoever is named first.
    expect(sidePlayingHandicap(four.toReversed(), HANDICAP_ALLOWANCES['Scramble 4'])).toBe(14)
  })

  // Terms of foursomes matches as clubs publish them under Appendix C: 6 and 10 play off 8, 15 and 20 off 17.5 and so 18.
  it.each([
    [[6, 10], 8],
    [[15, 20], 18],
  ])('is half of the sum in foursomes, halves up: %j play off %i', (indexes, handicap) => {
    expect(sidePlayingHandicap(indexes.map(level), HANDICAP_ALLOWANCES.Foursomes)).toBe(handicap)
  })

  // A club's worked example of 60 and 40 %: 4 and 8 come to 5.6, 6 and 11 to 8.0; rounded by Rule 6.2.
  it.each([
    [[4, 8], 6],
    [[11, 6], 8],
  ])('is 60 %% of the lower and 40 %% of the higher in greensomes: %j play off %i', (indexes, handicap) => {
    expect(sidePlayingHandicap(indexes.map(level), HANDICAP_ALLOWANCES.Greensomes)).toBe(handicap)
  })

  // Appendix C: a plus handicap moves up towards zero, rounding included.
  it('rounds a plus half towards zero', () => {
    expect(sidePlayingHandicap([level(-2), level(-1)], HANDICAP_ALLOWANCES.Foursomes)).toBe(-1)
    expect(sidePlayingHandicap([level(-2), level(5)], HANDICAP_ALLOWANCES.Foursomes)).toBe(2)
  })

  it('is exact where binary fractions are not, and the same as one player’s for one', () => {
    const rating = fc.record({
      indexTenths: fc.integer({ min: -60, max: 540 }),
      slopeRating: fc.integer({ min: 55, max: 155 }),
      courseRatingTenths: fc.integer({ min: 550, max: 780 }),
      par: fc.integer({ min: 60, max: 74 }),
    })
    fc.assert(
      fc.property(rating, rating, fc.integer({ min: 1, max: 100 }), (a, b, percent) => {
        expect(sidePlayingHandicap([a], [percent])).toBe(playingHandicap(a, percent))
        // The nearest whole number to an exact fraction, halves up, in integers of any size.
        const part = (one: TeeRating): bigint =>
          BigInt(one.indexTenths * one.slopeRating + (one.courseRatingTenths - one.par * 10) * 113)
        const twice = part(a) * 50n + part(b) * 50n
        const off = BigInt(sidePlayingHandicap([a, b], [50, 50])) * 113_000n - twice
        expect(2n * off > -113_000n && 2n * off <= 113_000n).toBe(true)
      }),
    )
  })

  it('wants a part for each partner', () => {
    expect(() => sidePlayingHandicap(four, [35, 15])).toThrow(RangeError)
  })
})

// Rules of Golf 2023, 21.2a: the Committee fixes the maximum, as twice par, a number or net double bogey.
describe('the most that counts on a hole', () => {
  it.each([
    [{ kind: 'net-double-bogey' }, 4, 1, 7],
    [{ kind: 'net-double-bogey' }, 5, 2, 9],
    [{ kind: 'double-par' }, 3, 1, 6],
    [{ kind: 'over-par', strokes: 4 }, 5, 0, 9],
    [{ kind: 'strokes', strokes: 8 }, 3, 2, 8],
  ] as const)('%j on a par %i with %i received is %i', (limit, par, received, most) => {
    expect(holeLimit(limit, par, received)).toBe(most)
    expect(maximumScore(null, holeLimit(limit, par, received))).toBe(most)
    expect(maximumScore(most + 3, holeLimit(limit, par, received))).toBe(most)
  })
})

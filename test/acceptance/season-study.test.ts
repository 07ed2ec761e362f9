import { beforeAll, describe, expect, it } from 'vitest'
import { CALM_DAY } from '#golf/strategy/invented-hole.fixture.ts'
import { smallHole, threeClubs } from '#golf/strategy/small-hole.fixture.ts'
import { GOLFERS } from '../../tools/season-study/golfers.ts'
import { firstNamed, type GolferSeasons, playSeasons } from '../../tools/season-study/season-table.ts'
import { type StudyHole, studyHole } from '../../tools/season-study/study-hole.ts'

// The study of docs/recap.md, "How often a season is right", in small: simulated golfers on a short hole played nine times a round.

const ROUNDS = 20
const PLAYED = ['follows the plan', 'aims at every flag', 'three-putts: twice the spread of pace']
let results: readonly GolferSeasons[]
beforeAll(() => {
  const hole = studyHole(smallHole(230, 40), threeClubs(), CALM_DAY)
  const round = Array.from({ length: 9 }, (): StudyHole => hole)
  results = playSeasons(
    round,
    { seasons: 2, rounds: ROUNDS, seed: 4 },
    GOLFERS.filter(({ name }) => PLAYED.includes(name)),
  )
})
const named = (name: string): GolferSeasons =>
  results.find(({ golfer }) => golfer.name.startsWith(name)) as GolferSeasons

describe('seasons of simulated golfers', () => {
  it('add up to the last digit, and no choice is better than the plan', () => {
    expect(results).toHaveLength(PLAYED.length)
    for (const { worstSum, leastDecision } of results) {
      expect(worstSum).toBeLessThan(1e-9)
      expect(leastDecision).toBeGreaterThanOrEqual(0)
    }
  })

  it('cost nothing by choice for who follows the plan, and find nothing wrong with them', () => {
    const { mostDecision, seasons } = named('follows')
    expect(mostDecision).toBe(0)
    for (const season of seasons) {
      expect(season.kept).toBe(season.judged)
      expect(season.findings).toEqual([])
    }
  })

  it('name three-putts of who putts with twice the spread of pace, and nothing of the choices', () => {
    for (const season of named('three-putts').seasons) {
      expect(firstNamed(season)).toBe('three-putts')
      expect(season.decision).toBe(0)
    }
  })

  it('say what aiming at the flag costs, and that it is choosing and not striking', () => {
    for (const season of named('aims').seasons) {
      const [dearest] = season.choosing
      expect(dearest?.way).toBe('toward-flag')
      expect(season.decision).toBeGreaterThan(0.02)
      expect(season.kept).toBeLessThan(season.judged)
    }
  })

  it('split what was struck and what was luck evenly about nought, putts that were only counted among them', () => {
    const seasons = named('follows').seasons
    for (const what of ['execution', 'luck'] as const) {
      const mean = seasons.reduce((sum, season) => sum + season[what], 0) / seasons.length
      // A round of nine holes scatters by about three strokes; its mean over 40 of them by half a stroke.
      expect(Math.abs(mean), what).toBeLessThan(1.5)
    }
  })
})

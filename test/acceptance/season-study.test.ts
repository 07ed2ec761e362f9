import { beforeAll, describe, expect, it } from 'vitest'
import { type HoleRecap, totalOf } from '#golf/round/recap.ts'
import { splitHole } from '#golf/round/recap-hole.ts'
import { recapRound } from '#golf/round/recap-round.ts'
import { CALM_DAY } from '#golf/strategy/invented-hole.fixture.ts'
import { smallHole, threeClubs } from '#golf/strategy/small-hole.fixture.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { GOLFERS, type Golfer } from '../../tools/season-study/golfers.ts'
import { holePlayer } from '../../tools/season-study/play-hole.ts'
import { firstNamed, type GolferSeasons, playSeasons } from '../../tools/season-study/season-table.ts'
import { type StudyHole, studyHole } from '../../tools/season-study/study-hole.ts'

// The study of docs/recap.md, "How often a season is right", in small: simulated golfers on a short hole played nine times a round.

const ROUNDS = 20
const PLAYED = ['follows the plan', 'aims at every flag', 'three-putts: twice the spread of pace']
let hole: StudyHole
let results: readonly GolferSeasons[]
beforeAll(() => {
  hole = studyHole(smallHole(230, 40), threeClubs(), CALM_DAY)
  const round = Array.from({ length: 9 }, (): StudyHole => hole)
  const golfers = GOLFERS.filter(({ name }) => PLAYED.includes(name))
  results = [...playSeasons(round, { seasons: 2, rounds: ROUNDS, seed: 4 }, golfers)]
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
})

describe('rounds of simulated golfers, stroke by stroke', () => {
  const played = (golfer: Golfer, count: number): HoleRecap[] => {
    const [play, random] = [holePlayer(hole), seededGenerator(20)]
    return Array.from({ length: count }, () => splitHole(hole.solved, play(golfer, random), hole.judge))
  }

  it('are struck and lucky as expected when the plan is followed', () => {
    const full = played(GOLFERS[0] as Golfer, 120)
      .flatMap(({ strokes }) => strokes)
      .filter(({ part }) => part === 'tee' || part === 'approach')
    for (const { decision, club, plan, unsplit } of full) {
      expect(decision).toBe(0)
      expect(club).toBe(plan)
      expect(unsplit).not.toContain('line')
    }
    // By the law of large numbers neither execution nor luck of whole shots drifts further than a few standard errors.
    for (const what of ['execution', 'luck'] as const) {
      const all = full.map((stroke) => stroke[what])
      const mean = all.reduce((sum, one) => sum + one, 0) / all.length
      const spread = Math.sqrt(all.reduce((sum, one) => sum + (one - mean) ** 2, 0) / all.length)
      expect(Math.abs(mean), what).toBeLessThan((4 * spread) / Math.sqrt(all.length) + 0.02)
    }
  })

  it('add up for a player who plays anything anyhow, club and line cost what the choice does, and no choice is better than the plan', () => {
    const anyhow: Golfer = {
      ...(GOLFERS[0] as Golfer),
      chooses: ({ menu }, _, __, random) => {
        const { some } = menu()
        return some[Math.floor(random() * some.length)] as (typeof some)[number]
      },
    }
    const round = recapRound(played(anyhow, 18))
    expect(Math.abs(round.addsUp)).toBeLessThan(1e-9)
    expect(round.decision).toBeGreaterThan(1)
    for (const { strokes } of round.holes)
      for (const { used, before, after, decision, execution, luck, choice } of strokes) {
        expect(decision).toBeGreaterThanOrEqual(0)
        expect(Math.abs(used + after - before - decision - execution - luck)).toBeLessThan(1e-9)
        if (choice !== null) expect(choice.club + choice.line).toBeCloseTo(decision, 9)
      }
    const parts = round.parts.reduce((sum, part) => sum + totalOf(part), 0)
    expect(parts).toBeCloseTo(round.score - round.value, 9)
    const costs = round.costly.map(({ stroke }) => stroke.decision)
    expect(costs).toEqual(costs.toSorted((a, b) => b - a))
  })
})

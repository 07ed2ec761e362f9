import { beforeAll, describe, expect, it } from 'vitest'
import type { Player } from '#golf/player/player.ts'
import { area, box, inventedHole } from '#golf/strategy/invented-hole.fixture.ts'
import { threeClubs } from '#golf/strategy/small-hole.fixture.ts'
import { ownPlan } from '../../tools/practice-study/own-plan.ts'
import { verdictOf } from '../../tools/practice-study/practice-table.ts'
import {
  EQUAL_RATES,
  type PracticeTrial,
  practiceTrials,
  studyGrounds,
} from '../../tools/practice-study/practice-trials.ts'
import { simulatedHole } from '../../tools/practice-study/simulated-hole.ts'

// The study of docs/recap.md, "Whether the advice is right", in small: one golfer who putts badly on one short hole without trees.

const ROUNDS = 3000
const grounds = studyGrounds([
  inventedHole(150, [
    area('fairway', box(-13, 13, 20, 140)),
    area('bunker', box(-24, -12, 138, 152)),
    area('penalty-red', box(22, 60, 60, 170)),
    area('out', box(-300, -45, -100, 400)),
  ]),
])
const sound = threeClubs()
const poorPutter: Player = {
  ...sound,
  putting: { ...sound.putting, directionSdDegrees: 2.5 * sound.putting.directionSdDegrees },
}

describe('advice on practice against play', () => {
  let trial: PracticeTrial
  beforeAll(() => {
    const counts = { rounds: ROUNDS, seed: 3, hours: 20, rates: { equal: EQUAL_RATES } }
    ;[trial] = practiceTrials(grounds, { player: poorPutter, fault: null }, counts) as [PracticeTrial]
  })

  it('names the part that saves most when it is played', () => {
    expect(trial.parts[0]?.part).toBe('putting-line')
    expect(verdictOf(trial)).toBe('right')
  })

  it('says about as much as is saved', () => {
    // Reason: what a part saves over twenty hours is no straight line, and 3000 rounds leave an error of 0.1.
    for (const { part, advised, played } of trial.parts)
      expect(Math.abs(played - advised), part).toBeLessThan(0.3 + 0.35 * advised)
  })
})

describe('the simulated hole', () => {
  it('costs what the plan says, though nothing but the plan is shared', () => {
    const [ground] = grounds as readonly [(typeof grounds)[number]]
    const plan = ownPlan(ground.planner, sound)
    const play = simulatedHole(plan, sound, ground.groundUnder)
    const scores = Array.from({ length: ROUNDS }, (_, hole) => play(3, hole))
    const mean = scores.reduce((sum, one) => sum + one, 0) / ROUNDS
    expect(Math.abs(mean - (plan.first[0]?.strokes ?? Number.NaN))).toBeLessThan(0.12)
    // The same hole meets the same luck.
    expect(Array.from({ length: 50 }, (_, hole) => play(3, hole))).toEqual(scores.slice(0, 50))
  })
})

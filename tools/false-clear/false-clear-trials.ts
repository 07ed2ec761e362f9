import { completePlayer } from '../../src/golf/player/complete-player.ts'
import { drawPlayer } from '../../src/golf/player/draw-player.ts'
import type { Player } from '../../src/golf/player/player.ts'
import { holeGround } from '../../src/golf/strategy/hole-model.ts'
import { choiceHole } from './choice-hole.ts'
import { type Called, clubCosts, verdictOn } from './club-costs.ts'
import { learnedPlayer } from './learned-player.ts'

/** One verdict on one profile, beside the truth. */
export interface Trial extends Called {
  readonly shots: number
  /** What the named club truly costs above the truly best one, strokes. */
  readonly trueCost: number
  /** How far the two best clubs truly lie apart, strokes. */
  readonly trueGap: number
}

export interface Study {
  /** True players; each is drawn from what is assumed of a golfer of index 15 before any shot is seen. */
  readonly players: number
  /** Shots with every club from which each is learned. */
  readonly shots: readonly number[]
  readonly draws: number
  readonly cellMetres: number
}

/** From the line to the pond, metres: the long club is dear on the first hole, about even on the second, best on the third. */
const POND_OFFSETS = [4, 10, 16] as const

/** What is assumed of the study's players: index 15, a 5-wood and two irons. */
export function studyPlayer(): Player {
  return completePlayer({
    name: 'study',
    hand: 'right',
    sex: 'male',
    handicapIndex: 15,
    bag: 'as-listed',
    clubs: ['5-wood', '6-iron', '9-iron'].map((name) => ({ name, shots: 0, lies: {} })),
    shortGame: {},
    putting: {},
  })
}

/**
 * Draws true players, lets each hit shots, learns a profile from them, asks for the verdict of its plan, and weighs the
 * clubs again by the true pattern. The same study gives the same trials. `told` hears of each finished player.
 */
export function falseClearTrials(study: Study, told: (players: number) => void = () => undefined): Trial[] {
  const grounds = POND_OFFSETS.map((offset) => holeGround(choiceHole(offset), study.cellMetres))
  const prior = studyPlayer()
  const trials: Trial[] = []
  for (let index = 0; index < study.players; index++) {
    const ground = grounds[index % grounds.length]
    if (!ground) continue
    // Seeds apart from those with which a plan draws its players.
    const truth = drawPlayer(prior, 1_000_000 + index)
    const trueStrokes = clubCosts(ground, truth).best.map(({ shot, strokes }) => ({
      club: shot.club,
      strokes,
    }))
    const [least, second] = trueStrokes.map(({ strokes }) => strokes)
    if (least === undefined || second === undefined) continue
    for (const shots of study.shots) {
      const profile = learnedPlayer(prior, truth, shots, 2_000_000 + index)
      const costs = clubCosts(ground, profile)
      const named = costs.best[0]?.shot.club
      const strokes = trueStrokes.find(({ club }) => club === named)?.strokes ?? Number.NaN
      trials.push({
        shots,
        ...verdictOn(costs, study.draws),
        trueCost: strokes - least,
        trueGap: second - least,
      })
    }
    told(index + 1)
  }
  return trials
}

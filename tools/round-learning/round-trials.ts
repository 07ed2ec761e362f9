import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { learnPlayer } from '#golf/player/learn-player.ts'
import type { Club, Player } from '#golf/player/player.ts'
import type { ShotRecord } from '#golf/player/shot-record.ts'
import type { RecapHole } from '#golf/round/judge-choice.ts'
import type { Judge } from '#golf/round/recap-hole.ts'
import { addShots, type ShotsOfHole, shotsOfHole } from '#golf/round/shots-of-hole.ts'
import { tableFor } from '#golf/strategy/evaluate-stroke.ts'
import { type HoleGround, type HoleModel, holeGround, holeModel } from '#golf/strategy/hole-model.ts'
import { shotsOf } from '#golf/strategy/shots.ts'
import { strikesOf } from '#golf/strategy/strikes.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { type Learned, TRUTH, type Trial } from '../pattern-calibration/calibration-trials.ts'
import { truePlayer } from '../pattern-calibration/true-player.ts'
import { aimFrom, type Logging, playLoggedHole } from './play-logged-hole.ts'

/** What is played. */
export interface RoundStudy {
  readonly holes: readonly Hole[]
  readonly day: Day
  readonly guesses: readonly Player[]
  readonly players: number
  readonly rounds: number
  readonly logging: Logging
  readonly seed: number
}

/** What was learned of one number of one club, from rounds as they are and as if every end were a plain total. */
export interface RoundTrial extends Trial {
  readonly plainError: number
  readonly isInPlainNinety: boolean
}

/**
 * Draws players from what is assumed before any shot, lets them play rounds on a course with everything on it, learns them
 * from the logs, and looks where the truth lies. Beside it the same shots learned as plain totals, those that came to
 * grief left out. Choices are the simulated player's own and are known: what the plan's choice is costs nothing here.
 */
export function roundTrials(
  study: RoundStudy,
  told: (players: number) => void = () => undefined,
): RoundTrial[] {
  const grounds = study.holes.map((hole) => holeGround(hole))
  const trials: RoundTrial[] = []
  for (let player = 0; player < study.players; player++) {
    const guess = study.guesses[player % study.guesses.length] as Player
    const truth = truePlayer(guess, study.seed + player)
    const random = seededGenerator(study.seed + player + 0.3)
    const played = grounds.flatMap((ground) =>
      Array.from({ length: study.rounds }, () =>
        shotsOfSimulated(ground, study.day, { guess, truth }, study.logging, random),
      ),
    )
    const { shots } = addShots(played)
    const plain = shots.flatMap(({ ways: _, ...shot }): ShotRecord[] =>
      shot.totalMetres === null ? [] : [shot],
    )
    const learned = learnPlayer(guess, shots, { seed: player + 1 })
    const fromPlain = learnPlayer(guess, plain, { seed: player + 1 })
    learned.clubs.forEach(({ numbers, shots: count }, club) => {
      for (const number of Object.keys(numbers) as Learned[]) {
        const { half, ninety, draws, after } = numbers[number]
        const value = TRUTH[number](truth.clubs[club] as Club)
        const other = fromPlain.clubs[club]?.numbers[number]
        const isIn = ([low, high]: readonly [number, number]): boolean => value >= low && value <= high
        trials.push({
          player,
          shots: count,
          club,
          number,
          isInHalf: isIn(half),
          isInNinety: isIn(ninety),
          rank: draws.reduce((under, one) => under + Number(one < value), 0) / draws.length,
          error: after / value - 1,
          width: (ninety[1] - ninety[0]) / value,
          plainError: (other?.after ?? Number.NaN) / value - 1,
          isInPlainNinety: other !== undefined && isIn(other.ninety),
        })
      }
    })
    told(player + 1)
  }
  return trials
}

/** A hole of a simulated round, played by `truth` and logged, as learning takes it from who was thought to be `guess`. */
export function shotsOfSimulated(
  ground: HoleGround,
  day: Day,
  { guess, truth }: { readonly guess: Player; readonly truth: Player },
  logging: Logging,
  random: () => number,
): ShotsOfHole {
  const believed = modelOf(ground, guess, day)
  const solved: RecapHole = {
    model: believed,
    shots: shotsOf(guess),
    values: NOTHING,
    quadrature: ONE,
    lineStepDegrees: 1,
  }
  const hole = playLoggedHole(modelOf(ground, truth, day), believed, logging, random)
  return shotsOfHole(solved, believed, { date: null, hole }, judgeOf(believed))
}

/** The hole with a player on it; what was laid out last for the ground and the player is kept, since flights take time. */
function modelOf(ground: HoleGround, player: Player, day: Day): HoleModel {
  const kept = models.get(ground)?.get(player) ?? holeModel(ground, player, day, undefined, null)
  models.set(ground, (models.get(ground) ?? new WeakMap()).set(player, kept))
  return kept
}

const models = new WeakMap<HoleGround, WeakMap<Player, HoleModel>>()

/** The simulated player's own choice from there, as a log with club and line gives it. */
function judgeOf(model: HoleModel): Judge {
  const shots = shotsOf(model.player)
  return (_, from) => {
    const { shot, heading } = aimFrom(model, shots, from)
    const table = tableFor(
      model,
      { x: from.point[0], y: from.point[1], lie: from.lie },
      shot,
      heading,
      strikesOf(ONE),
    )
    const candidate = { shot, heading, table, ends: NO_ENDS, strokes: Number.NaN }
    return { before: Number.NaN, chosen: null, plan: shot.club, choice: null, candidate, unsplit: [] }
  }
}

const ONE = { good: 2, mishit: 2 } as const
const NOTHING = new Float64Array(0)
const NO_ENDS = {
  count: 0,
  outcome: new Int32Array(0),
  weight: NOTHING,
  strike: new Int32Array(0),
  x: NOTHING,
  y: NOTHING,
  isCaught: new Uint8Array(0),
}

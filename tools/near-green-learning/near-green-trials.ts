import { greenSlowing } from '#golf/ball/green-slowing.ts'
import type { Day } from '#golf/course/day.ts'
import { greenSurface } from '#golf/course/green-surface.ts'
import type { Hole } from '#golf/course/hole.ts'
import { learnLoggedNearGreen } from '#golf/player/learn-logged-near-green.ts'
import { PUTTING_PRIOR_SD, SHORT_PRIOR_SD } from '#golf/player/near-green-settings.ts'
import type { Player } from '#golf/player/player.ts'
import type { RecapHole } from '#golf/round/judge-choice.ts'
import { nearGreenOfHole } from '#golf/round/near-green-of-hole.ts'
import { type HoleModel, holeGround, holeModel } from '#golf/strategy/hole-model.ts'
import { COMPARE_QUADRATURE, QUICK } from '#golf/strategy/settings.ts'
import { shortGameEndsInto } from '#golf/strategy/short-game-ends.ts'
import { shotsOf } from '#golf/strategy/shots.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { normals } from '../pattern-calibration/true-player.ts'
import { nearGreenPlayer, type PuttLogging } from './play-near-green.ts'
import { roller } from './roll-putt.ts'

/** What is played. */
export interface NearGreenStudy {
  readonly holes: readonly Hole[]
  readonly day: Day
  readonly guesses: readonly Player[]
  readonly players: number
  /** Holes that each player plays. */
  readonly played: number
  readonly logging: PuttLogging
  readonly seed: number
}

/** The numbers that are learned near the green. */
export const NEAR_NUMBERS = ['directionSdDegrees', 'distanceSdShare', 'strokesLost'] as const
export type NearNumber = (typeof NEAR_NUMBERS)[number]

/** What was learned of one number of one player. */
export interface NearGreenTrial {
  readonly number: NearNumber
  readonly truth: number
  readonly before: number
  readonly after: number
  readonly isInNinety: boolean
  /** Ninety's width as a share of what it was before anything was played. */
  readonly width: number
  readonly putts: number
  readonly strokes: number
  readonly unused: number
}

/** Draws players from what is assumed of their level, lets them play about greens, learns them from the logs. */
export function nearGreenTrials(
  study: NearGreenStudy,
  told: (players: number) => void = () => undefined,
): NearGreenTrial[] {
  const trials: NearGreenTrial[] = []
  const solved = study.guesses.map((guess) => study.holes.map((hole) => believedHole(hole, guess, study.day)))
  for (let player = 0; player < study.players; player++) {
    const number = player % study.guesses.length
    const guess = study.guesses[number] as Player
    const holes = solved[number] as readonly RecapHole[]
    const normal = normals(study.seed + player)
    const truth = drawnNearGreen(guess, normal)
    const random = seededGenerator(study.seed + player + 0.7)
    const players = holes.map((hole) => {
      const { model } = hole
      const green = {
        slopes: greenSurface(model.hole),
        pin: model.hole.pin,
        slowing: greenSlowing(study.day.greenSpeedFeet),
      }
      return nearGreenPlayer(withPlayer(model, truth), roller(green, truth.putting, normal), normal, random)
    })
    const read = Array.from({ length: study.played }, (_, index) => {
      const which = index % holes.length
      const hole = (players[which] as (typeof players)[number])(study.logging)
      return nearGreenOfHole(holes[which] as RecapHole, { hole, date: null })
    })
    const putts = read.flatMap((one) => one.putts)
    const strokes = read.flatMap((one) => one.strokes)
    const unused = read.flatMap((one) => Object.values(one.unused)).reduce((sum, one) => sum + one, 0)
    const [learned, nothing] = [
      { putts, strokes },
      { putts: [], strokes: [] },
    ].map((logged) => learnLoggedNearGreen(guess, logged))
    for (const what of NEAR_NUMBERS) {
      const value = what === 'strokesLost' ? truth.shortGame[what] : truth.putting[what]
      const result = learned?.[what]
      const prior = nothing?.[what]
      if (result === undefined || prior === undefined) continue
      const [low, high] = result.ninety
      trials.push({
        number: what,
        truth: value,
        before: result.before,
        after: result.after,
        isInNinety: value >= low && value <= high,
        width: (high - low) / (prior.ninety[1] - prior.ninety[0]),
        putts: putts.length,
        strokes: strokes.length,
        unused,
      })
    }
    told(player + 1)
  }
  return trials
}

/** The green of a hole as a player is thought to play it: the values of the short game, the full game left out. */
function believedHole(hole: Hole, guess: Player, day: Day): RecapHole {
  return withPlayer(holeModel(holeGround(hole, QUICK.cellMetres), guess, day), guess)
}

function withPlayer(model: HoleModel, player: Player): RecapHole {
  const values = new Float64Array(model.places.count)
  shortGameEndsInto(values, model.places, player, model.nearGreen)
  return {
    model: { ...model, player },
    values,
    shots: shotsOf(player),
    quadrature: COMPARE_QUADRATURE,
    lineStepDegrees: QUICK.strokeLineStepDegrees,
  }
}

/** A player of this level: spreads of putting and strokes lost as they differ between players. */
function drawnNearGreen(guess: Player, normal: () => number): Player {
  const { putting, shortGame } = guess
  const sd = Math.hypot(SHORT_PRIOR_SD.share * shortGame.strokesLost, SHORT_PRIOR_SD.strokes)
  return {
    ...guess,
    putting: {
      directionSdDegrees: putting.directionSdDegrees * Math.exp(PUTTING_PRIOR_SD * normal()),
      distanceSdShare: putting.distanceSdShare * Math.exp(PUTTING_PRIOR_SD * normal()),
    },
    shortGame: { ...shortGame, strokesLost: shortGame.strokesLost + sd * normal() },
  }
}

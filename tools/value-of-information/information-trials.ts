import { REFERENCE_DAY } from '../../src/golf/course/day.ts'
import { groundCode } from '../../src/golf/course/ground.ts'
import type { Hole } from '../../src/golf/course/hole.ts'
import { learnPlayer } from '../../src/golf/player/learn-player.ts'
import type { Player } from '../../src/golf/player/player.ts'
import type { ShotRecord } from '../../src/golf/player/shot-record.ts'
import { holeGround, holeModel } from '../../src/golf/strategy/hole-model.ts'
import { holeProblem } from '../../src/golf/strategy/hole-problem.ts'
import { type Places, placeAt } from '../../src/golf/strategy/places.ts'
import { shotsOf, shotsRedrawn } from '../../src/golf/strategy/shots.ts'
import { solveShortestPath } from '../../src/numbers/solver/solve-shortest-path.ts'
import { hitShots } from '../pattern-calibration/hit-shots.ts'
import { truePlayer } from '../pattern-calibration/true-player.ts'

/** What a plan made from a profile costs its true player, on one hole. */
export interface InformationTrial {
  readonly hole: string
  readonly player: number
  /** Shots with every club that the profile was learned from. */
  readonly shots: number
  /** Expected strokes with the whole plan of the profile, less those with the plan of the truth: from the tee, and in the mean from every place on the fairway that is no short game; `null` on a hole without. */
  readonly fromTee: number
  readonly fromFairway: number | null
}

export interface InformationStudy {
  readonly holes: readonly { readonly ref: string; readonly hole: Hole }[]
  readonly guess: Player
  readonly players: number
  readonly shots: readonly number[]
  readonly cellMetres: number
  readonly quadrature: { readonly good: number; readonly mishit: number }
}

/** Far under what is looked for; strokes. */
const TOLERANCE = 1e-5

/**
 * Draws true players, learns each from so many shots (ten of a club are the first ten of its forty), plans a hole for the profile from every place, and plays that
 * plan with the true pattern: its value by solving with the plan's action alone in each place, the same strikes for
 * all. Putting and the short game are known.
 */
export function informationTrials(
  study: InformationStudy,
  told: (trials: number) => void = () => undefined,
): readonly InformationTrial[] {
  const { guess, quadrature } = study
  const trials: InformationTrial[] = []
  const truths = Array.from({ length: study.players }, (_, player) => {
    const truth = truePlayer(guess, 70_000 + player)
    return { ...truth, putting: guess.putting, shortGame: guess.shortGame }
  })
  const profiles = truths.map((truth, player) => {
    const all = hitShots(truth, guess, Math.max(...study.shots), 80_000 + player)
    return study.shots.map(
      (shots) => learnPlayer(guess, firstOfEachClub(all, shots), { seed: player + 1 }).player,
    )
  })
  for (const { ref, hole } of study.holes) {
    const ground = holeGround(hole, study.cellMetres)
    const first = holeModel(ground, guess, REFERENCE_DAY)
    const tee = placeAt(first.places, 0, 0)
    const fairway = fairwayPlaces(first.places)
    const shots = shotsOf(guess)
    const problemOf = (player: Player, kept?: Int32Array) =>
      holeProblem(holeModel(ground, player, REFERENCE_DAY, first.flights, first.nearGreen), {
        quadrature,
        shots: shotsRedrawn(shots, guess, player),
        ...(kept === undefined ? {} : { kept, tried: 1 }),
      })
    truths.forEach((truth, player) => {
      const best = solveShortestPath(problemOf(truth), { tolerance: TOLERANCE }).values
      profiles[player]?.forEach((profile, index) => {
        const planned = problemOf(profile)
        solveShortestPath(planned, { tolerance: TOLERANCE })
        const played = solveShortestPath(problemOf(truth, planned.kept), {
          start: best,
          keptOnly: true,
          tolerance: TOLERANCE,
        }).values
        const lost = (place: number): number => (played[place] as number) - (best[place] as number)
        trials.push({
          hole: ref,
          player,
          shots: study.shots[index] as number,
          fromTee: lost(tee),
          fromFairway:
            fairway.length === 0
              ? null
              : fairway.reduce((sum, place) => sum + lost(place), 0) / fairway.length,
        })
      })
      told(trials.length)
    })
  }
  return trials
}

/** So many shots with each club, the first that were hit. */
function firstOfEachClub(shots: readonly ShotRecord[], count: number): ShotRecord[] {
  const seen = new Map<string, number>()
  return shots.filter(({ club }) => {
    const before = seen.get(club) ?? 0
    seen.set(club, before + 1)
    return before < count
  })
}

function fairwayPlaces({ coarseCount, ground, isShortGame }: Places): number[] {
  const fairway = groundCode('fairway')
  return Array.from({ length: coarseCount }, (_, place) => place).filter(
    (place) => ground[place] === fairway && isShortGame[place] === 0,
  )
}

import type { Flights } from '#golf/ball/flights.ts'
import type { Day } from '#golf/course/day.ts'
import type { Player } from '#golf/player/player.ts'
import {
  type Candidate,
  type Situation,
  type StrokeEvaluation,
  triedStrokes,
  weighTried,
} from './evaluate-stroke.ts'
import { type HoleGround, holeModel } from './hole-model.ts'
import { type HoleProblem, holeProblem } from './hole-problem.ts'
import type { NearGreenCorrections } from './near-green-corrections.ts'
import {
  COMPARE_LINE_STEP_DEGREES,
  COMPARE_LINES_DEGREES,
  COMPARE_QUADRATURE,
  NEIGHBOUR_ACTIONS,
} from './settings.ts'
import { linesAbout, settleReached } from './settle-reached.ts'
import { type Shot, shotsRedrawn } from './shots.ts'
import { isTriedAlong } from './stroke-tries.ts'

/** A solved problem from which neighbouring ones start. */
export interface SolvedHole {
  readonly ground: HoleGround
  readonly player: Player
  readonly day: Day
  readonly flights: Flights
  readonly nearGreen: NearGreenCorrections | null
  readonly problem: HoleProblem
  readonly values: Float64Array
}

/** What differs in a neighbouring problem; the ground must have the same places. */
export interface Change {
  readonly ground?: HoleGround
  readonly player?: Player
  readonly day?: Day
}

/**
 * Costs of the clubs from a situation when something small has changed: the hole is settled again over the actions
 * that the solved problem kept, and each club is tried on lines about its best line there. With `isOnTheSameLine`
 * the clubs keep their lines.
 */
export function evaluateNeighbour(
  solved: SolvedHole,
  change: Change,
  situation: Situation,
  best: readonly Candidate[],
  isOnTheSameLine: boolean,
): StrokeEvaluation {
  const ground = change.ground ?? solved.ground
  const player = change.player ?? solved.player
  const model = holeModel(
    ground,
    player,
    change.day ?? solved.day,
    change.day ? undefined : solved.flights,
    solved.nearGreen,
  )
  const shots = shotsRedrawn(solved.problem.shots, solved.player, player)
  const problem = holeProblem(model, { kept: solved.problem.kept, tried: NEIGHBOUR_ACTIONS, shots })
  const start = problem.startValues()
  for (const state of solved.ground.states.order) start[state] = solved.values[state] as number
  const shotOf = (candidate: Candidate): Shot =>
    shots[solved.problem.shots.indexOf(candidate.shot)] ?? candidate.shot
  const tried = triedStrokes(model, {
    situation,
    quadrature: COMPARE_QUADRATURE,
    tries: best.map((candidate) => {
      const shot = shotOf(candidate)
      const headings = linesAbout(candidate.heading, COMPARE_LINES_DEGREES, COMPARE_LINE_STEP_DEGREES)
      return {
        shot,
        headings: isOnTheSameLine
          ? [candidate.heading]
          : headings.filter((line) => isTriedAlong(model, situation, shot, line)),
      }
    }),
  })
  const { values } = settleReached(model, problem, tried, start)
  return weighTried(model, values, situation, tried)
}

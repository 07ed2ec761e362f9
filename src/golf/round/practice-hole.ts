import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import { evaluateStroke } from '#golf/strategy/evaluate-stroke.ts'
import { holeGround, holeModel } from '#golf/strategy/hole-model.ts'
import { evaluateNeighbour, type SolvedHole } from '#golf/strategy/neighbour.ts'
import { bestByClub } from '#golf/strategy/plan-options.ts'
import { requireGreen } from '#golf/strategy/require-green.ts'
import { COMPARE_QUADRATURE, QUICK } from '#golf/strategy/settings.ts'
import { situationOf } from '#golf/strategy/situation.ts'
import { solveHole } from '#golf/strategy/solve-hole.ts'
import { strokeTries } from '#golf/strategy/stroke-tries.ts'
import { improvedPlayer, PRACTICE_PARTS, type PracticePart } from './improved-player.ts'
import { PRACTICE_STEP } from './settings.ts'

/** What is asked: a hole, by whom and on what day. */
export interface PracticeQuestion {
  readonly hole: Hole
  readonly player: Player
  readonly day: Day
}

/** What a better part of the profile is worth on one hole. */
export interface PracticeHole {
  readonly ref: string
  /** Expected strokes from the tee by quick settings. */
  readonly value: number
  /** Strokes fewer for each part when it is wholly better: its derivative, by a step of {@link PRACTICE_STEP}. */
  readonly slopes: Readonly<Record<PracticePart, number>>
}

/**
 * Derivative of a hole's expected score by each part of the profile. The hole is solved once by quick settings; each better
 * player plays it anew from there, so that the plan may change with the player. Throws a Failure when the survey lacks the green.
 */
export function practiceHole({ hole, player, day }: PracticeQuestion): PracticeHole {
  requireGreen(hole)
  const ground = holeGround(hole, QUICK.cellMetres)
  const model = holeModel(ground, player, day)
  const { problem, values } = solveHole(model, QUICK.quadrature, QUICK.aboutPinDegrees)
  const situation = situationOf({}, ground.places)
  const best = bestByClub(
    evaluateStroke(model, values, {
      situation,
      quadrature: COMPARE_QUADRATURE,
      tries: strokeTries(model, problem.shots, situation, QUICK.strokeLineStepDegrees),
    }),
  )
  const { flights, nearGreen } = model
  const solved: SolvedHole = { ground, player, day, flights, nearGreen, problem, values }
  const expectedOf = (other: Player): number =>
    evaluateNeighbour(solved, { player: other }, situation, best, false).value
  const value = expectedOf(player)
  const slope = (part: PracticePart): number =>
    (value - expectedOf(improvedPlayer(player, part, PRACTICE_STEP))) / PRACTICE_STEP
  const slopes = Object.fromEntries(PRACTICE_PARTS.map((part) => [part, slope(part)]))
  return { ref: hole.ref, value, slopes: slopes as Record<PracticePart, number> }
}

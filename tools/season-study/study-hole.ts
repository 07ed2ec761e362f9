import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import type { Spot } from '#golf/round/follow-hole.ts'
import { type JudgedChoice, judgeChoice, type RecapHole } from '#golf/round/judge-choice.ts'
import type { Judge } from '#golf/round/recap-hole.ts'
import type { RoundStroke } from '#golf/round/round.ts'
import { holeGround, holeModel } from '#golf/strategy/hole-model.ts'
import { QUICK } from '#golf/strategy/settings.ts'
import { solveHole } from '#golf/strategy/solve-hole.ts'

/** Strikes and lines of one stroke of the study: fewer than a recap's, so that thousands of rounds can be played. */
const STUDY_QUADRATURE = { good: 24, mishit: 8 } as const
const STUDY_LINE_STEP_DEGREES = 2

/** A hole that is played many times: balls lie at the middles of its places, so every choice from there is judged once and kept. */
export interface StudyHole {
  readonly solved: RecapHole
  /** As a recap judges, from memory where it can. */
  readonly judge: Judge
}

/** Solves a hole for the study. */
export function studyHole(hole: Hole, player: Player, day: Day): StudyHole {
  const model = holeModel(holeGround(hole, QUICK.cellMetres), player, day)
  const { problem, values } = solveHole(model, QUICK.quadrature, QUICK.aboutPinDegrees)
  const kept = new Map<string, JudgedChoice>()
  const solved: RecapHole = {
    model,
    values,
    shots: problem.shots,
    quadrature: STUDY_QUADRATURE,
    lineStepDegrees: STUDY_LINE_STEP_DEGREES,
  }
  const judge: Judge = (_, from, stroke) => {
    const key = keyOf(from, stroke)
    const known = kept.get(key)
    if (known !== undefined) return known
    const judged = judgeChoice(solved, from, stroke)
    kept.set(key, judged)
    return judged
  }
  return { solved, judge }
}

function keyOf({ point, lie }: Spot, { club, aimOffsetMetres, isAsPlanned }: RoundStroke): string {
  return [point[0], point[1], lie, ...(isAsPlanned ? [] : [club, aimOffsetMetres])].join(' ')
}

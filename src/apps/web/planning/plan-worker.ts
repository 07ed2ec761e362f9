import { Failure } from '#faults/failure.ts'
import type { Hole } from '#golf/course/hole.ts'
import { finishesOf } from '#golf/strategy/finishes.ts'
import { type HoleGround, holeGround } from '#golf/strategy/hole-model.ts'
import { planHole } from '#golf/strategy/plan-hole.ts'
import { DESK_SETTINGS } from '../settings.ts'
import type { Answered, Asked, Question } from './questions.ts'

declare const self: DedicatedWorkerGlobalScope

/** The worker's one job: a question in, an answer out, so that the page never waits. */
self.onmessage = ({ data: { id, question } }: MessageEvent<Asked>): void => {
  try {
    self.postMessage({ id, ...answer(question) } satisfies Answered)
  } catch (error) {
    const fault =
      error instanceof Failure
        ? { code: error.code, message: error.message, where: error.where }
        : { code: '', message: error instanceof Error ? error.message : String(error), where: '' }
    self.postMessage({ id, fault } satisfies Answered)
  }
}

/** The ground of the last hole asked about: one dragged aim asks for many lines of one hole. */
let laidOut: { readonly key: string; readonly ground: HoleGround } | null = null

function groundOf(hole: Hole): HoleGround {
  const key = JSON.stringify(hole)
  if (laidOut?.key !== key) laidOut = { key, ground: holeGround(hole) }
  return laidOut.ground
}

function answer(question: Question): Omit<Answered, 'id'> {
  if (question.kind === 'finishes') {
    const { hole, player, day, club, headingDegrees } = question
    const ground = groundOf(hole)
    const finishes = finishesOf({ hole, player, day, club, headingDegrees, ground })
    const cellMetres = ground.places.coarse.resolution
    return { finishes: { club, headingDegrees, cellMetres, ...finishes } }
  }
  const { courseName, hole, player, day, club, units, isFirst } = question
  const pace = isFirst
    ? {
        draws: 0,
        cellMetres: DESK_SETTINGS.firstCellMetres,
        quadrature: DESK_SETTINGS.firstQuadrature,
        flips: false,
      }
    : {}
  return {
    plan: planHole({ courseName, hole, player, day, units, ...pace, ...(club === null ? {} : { club }) }),
  }
}

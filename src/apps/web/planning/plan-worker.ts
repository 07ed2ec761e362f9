import { Failure } from '#faults/failure.ts'
import { finishesOf } from '#golf/strategy/finishes.ts'
import { keptGround } from '#golf/strategy/kept-ground.ts'
import { type LayGround, workPlan } from '#golf/strategy/plan-hole.ts'
import { planNearby } from '#golf/strategy/plan-nearby.ts'
import { watchedGround } from '#golf/strategy/watched-ground.ts'
import { serveTasks } from '#outside/workers/serve-tasks.ts'
import type { Answered, Question } from './questions.ts'

declare const self: DedicatedWorkerGlobalScope

/** One dragged aim asks for many lines of one hole, and the next plan is most often of the same hole. */
const layGround = keptGround()

/** The worker's one job: a question in, an answer out, so that the page never waits; stopped when a newer one comes. */
serveTasks(self, (question: Question, lookUp): Answered => {
  try {
    return answer(question, lookUp)
  } catch (error) {
    if (!(error instanceof Failure)) throw error
    return { fault: { code: error.code, message: error.message, where: error.where } }
  }
})

function answer(question: Question, lookUp: () => void): Answered {
  if (question.kind === 'finishes') {
    const { hole, player, day, club, headingDegrees } = question
    const ground = layGround(hole)
    const finishes = finishesOf({ hole, player, day, club, headingDegrees, ground })
    const cellMetres = ground.places.coarse.resolution
    return { finishes: { club, headingDegrees, cellMetres, ...finishes } }
  }
  const { courseName, hole, player, day, club, units, isFirst, near } = question
  const asked = { courseName, hole, player, day, units, ...(club === null ? {} : { club }) }
  const watched: LayGround = (...of) => watchedGround(layGround(...of), lookUp)
  if (!isFirst) return workPlan(asked, watched)
  const nearby = near && planNearby(asked, near, watched)
  if (nearby) return nearby
  return workPlan({ ...asked, isQuick: true }, watched)
}

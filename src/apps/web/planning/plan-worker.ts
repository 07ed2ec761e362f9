import { answered } from '#faults/answered.ts'
import type { Lie } from '#golf/player/player.ts'
import { alternateShot } from '#golf/strategy/alternate-shot.ts'
import { objectiveOf } from '#golf/strategy/asked-objective.ts'
import { finishesOf } from '#golf/strategy/finishes.ts'
import type { HoleGround, LayGround } from '#golf/strategy/hole-model.ts'
import { keptGround } from '#golf/strategy/kept-ground.ts'
import type { Objective } from '#golf/strategy/objective.ts'
import { workPlan } from '#golf/strategy/plan-hole.ts'
import { planNearby } from '#golf/strategy/plan-nearby.ts'
import { reliefOfBall } from '#golf/strategy/relief-of-ball.ts'
import { rulesOfThumb } from '#golf/strategy/rules-of-thumb.ts'
import { QUICK } from '#golf/strategy/settings.ts'
import { situationOf } from '#golf/strategy/situation.ts'
import { watchedGround } from '#golf/strategy/watched-ground.ts'
import { serveTasks } from '#outside/workers/serve-tasks.ts'
import type { Ball } from '../desk/desk.ts'
import type { Answered, PlanQuestion, Question } from './questions.ts'

declare const self: DedicatedWorkerGlobalScope

/** One dragged aim asks for many lines of one hole, and the next plan is most often of the same hole. */
const layGround = keptGround()

/** The worker's one job: a question in, an answer out, so that the page never waits; stopped when a newer one comes. */
serveTasks(self, (question: Question, lookUp): Answered => answered(() => answer(question, lookUp)))

function answer(question: Question, lookUp: () => void): Answered {
  if (question.kind === 'finishes') {
    const { hole, player, day, ball, club, headingDegrees } = question
    const ground = layGround(hole)
    const finishes = finishesOf({ hole, player, day, club, headingDegrees, ground, ...lieOf(ball, ground) })
    const cellMetres = ground.places.coarse.resolution
    return { finishes: { club, headingDegrees, cellMetres, ...finishes } }
  }
  const watched: LayGround = (...of) => watchedGround(layGround(...of), lookUp)
  const rough = { cellMetres: QUICK.cellMetres, quadrature: QUICK.quadrature }
  if (question.kind === 'thumb') {
    const { kind: _, isFirst, lie, ...asked } = question
    return { thumb: rulesOfThumb({ ...asked, lies: [lie], ...(isFirst ? rough : {}) }, watched) }
  }
  if (question.kind === 'pair') return { pair: alternateShot(question, watched).turns }
  if (question.kind === 'relief') {
    const { courseName, hole, player, day, ball, isFirst } = question
    const said = ball.said === 'lost' ? { said: ball.said } : {}
    const asked = { courseName, hole, player, day, from: ball.from, ball: ball.at, ...said }
    return { relief: reliefOfBall({ ...asked, ...(isFirst ? rough : {}) }, watched) }
  }
  const { courseName, hole, player, day, ball, club, units, isFirst, near, hasFlips = true } = question
  const asked = {
    courseName,
    hole,
    player,
    day,
    units,
    flips: hasFlips,
    ...placeOf(ball),
    ...(club === null ? {} : { club }),
  }
  if (!isFirst) return workPlan({ ...asked, ...objectiveFor(question, watched) }, watched)
  const nearby = near && planNearby(asked, near, watched)
  if (nearby) return nearby
  return workPlan({ ...asked, isQuick: true }, watched)
}

/** An opponent and later holes take long to work out, and most questions are of the same ones as before. */
let keptObjective: { readonly key: string; readonly objective: Objective } | null = null

function objectiveFor(
  { format, hole, player, day }: PlanQuestion,
  layGround: LayGround,
): { readonly objective?: Objective } {
  if (format === null) return {}
  const { asked, ...card } = format
  const key = JSON.stringify([format, hole, player, day])
  if (keptObjective?.key !== key) {
    const objective = objectiveOf(asked, { ...card, hole, player, day, options: { layGround } })
    keptObjective = { key, objective }
  }
  return { objective: keptObjective.objective }
}

/** Where a question is asked from. */
function placeOf(ball: Ball | null): { readonly from?: Ball['at']; readonly lie?: Lie } {
  if (ball === null) return {}
  return ball.lie === null ? { from: ball.at } : { from: ball.at, lie: ball.lie }
}

/** The same with the lie of the ground where none was told. */
function lieOf(
  ball: Ball | null,
  { places }: HoleGround,
): { readonly from?: Ball['at']; readonly lie?: Lie } {
  if (ball === null) return {}
  return { from: ball.at, lie: situationOf(placeOf(ball), places).lie }
}

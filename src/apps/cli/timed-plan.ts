import { performance } from 'node:perf_hooks'
import { keptGround } from '#golf/strategy/kept-ground.ts'
import type { Plan } from '#golf/strategy/plan.ts'
import { type PlanQuestion, planHole } from '#golf/strategy/plan-hole.ts'

const layGround = keptGround()

/** Plans a hole, with the time it took in the plan; the ground of the last hole is kept. Throws what planning throws. */
export function timedPlan(question: PlanQuestion): Plan {
  const started = performance.now()
  const plan = planHole(question, layGround)
  const milliseconds = Math.round(performance.now() - started)
  return { ...plan, method: { ...plan.method, milliseconds } }
}

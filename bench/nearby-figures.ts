import type { Hole } from '../src/golf/course/hole.ts'
import { keptGround } from '../src/golf/strategy/kept-ground.ts'
import type { NearbyStart } from '../src/golf/strategy/nearby-start.ts'
import { type PlanQuestion, planHole, workPlan } from '../src/golf/strategy/plan-hole.ts'
import { planNearby } from '../src/golf/strategy/plan-nearby.ts'
import type { Point } from '../src/numbers/geometry/point.ts'
import type { Figure } from './measure.ts'

const EDITS = 12

/** An edit of the desk, a little further each time. */
type Edit = (question: PlanQuestion, step: number) => PlanQuestion

const EDITS_OF: Readonly<Record<string, Edit>> = {
  'the pin a metre on': (question, step) => ({ ...question, hole: withPin(question.hole, step) }),
  'the hazards 5 m on': (question, step) => ({ ...question, hole: withHazards(question.hole, 5 * step) }),
  'the wind 1 m/s up': ({ day, ...question }, step) => ({
    ...question,
    day: { ...day, wind: { ...day.wind, speedMetresPerSecond: day.wind.speedMetresPerSecond + step } },
  }),
}

/** How long a plan takes that starts from one of nearly the same, and how far it is from the plan made anew. */
export function nearbyFigures(asked: PlanQuestion): Figure[] {
  const question: PlanQuestion = { ...asked, draws: 0, flips: false }
  const layGround = keptGround()
  const begin = performance.now()
  const start = workPlan(question, layGround).start as NearbyStart
  const anew: Figure = {
    name: 'plan made anew, no draws, no flips',
    unit: 'ms',
    median: performance.now() - begin,
    ratio: null,
    against: null,
  }
  return [
    anew,
    ...Object.entries(EDITS_OF).flatMap(([name, edit]) => {
      const times: number[] = []
      let [near, of] = [question, question]
      for (let step = 1; step <= EDITS; step++) {
        of = edit(question, (step - EDITS / 2) / 2)
        const before = performance.now()
        const worked = planNearby(of, start, layGround)
        times.push(performance.now() - before)
        if (worked === null) throw new Error('there is nothing to start from')
        if (step === EDITS - 2) near = of
      }
      times.sort((a, b) => a - b)
      const [middle, late] = [times[Math.floor(EDITS / 2)], times[Math.floor(0.95 * EDITS)]] as [
        number,
        number,
      ]
      const figure = (
        what: string,
        unit: Figure['unit'],
        median: number,
        against: Figure | null,
      ): Figure => ({
        name: `plan near it, ${name}${what}`,
        unit,
        median,
        ratio: against ? median / against.median : null,
        against: against?.name ?? null,
      })
      return [
        figure('', 'ms', middle, anew),
        figure(', 95th percentile', 'ms', late, anew),
        figure(', off the plan made anew', 'thousandths of a stroke', 1000 * furthestOff(near, start), null),
      ]
    }),
  ]
}

/** Largest difference of any club's cost from the plan made anew, strokes. */
function furthestOff(question: PlanQuestion, start: NearbyStart): number {
  const near = planNearby(question, start)?.plan.options ?? []
  return Math.max(
    ...planHole(question).options.map(({ club, strokes }) =>
      Math.abs(strokes - (near.find((option) => option.club === club)?.strokes ?? Number.NaN)),
    ),
  )
}

function withPin(hole: Hole, by: number): Hole {
  const pin: Point = [hole.pin[0] + by / 2, hole.pin[1] + by]
  return { ...hole, pin, line: [...hole.line.slice(0, -1), pin] }
}

function withHazards(hole: Hole, by: number): Hole {
  const areas = hole.areas.map((area) =>
    ['penalty-red', 'penalty-yellow', 'bunker'].includes(area.ground)
      ? { ...area, polygon: area.polygon.map((ring) => ring.map(([x, y]): Point => [x, y + by])) }
      : area,
  )
  return { ...hole, areas }
}

import type { Hole } from '#golf/course/hole.ts'
import {
  type Situation,
  type StrokeQuestion,
  type TriedStroke,
  triedStrokes,
  weighTried,
} from './evaluate-stroke.ts'
import { type HoleModel, holeGround, holeModel, type LayGround } from './hole-model.ts'
import { holeProblem } from './hole-problem.ts'
import { carriedOver } from './kept-nearby.ts'
import type { NearGreenCorrections } from './near-green-corrections.ts'
import { linesOf, type NearbyStart, shotName } from './nearby-start.ts'
import type { PlanQuestion, WorkedPlan } from './plan-hole.ts'
import { isNearGreen } from './plan-near-green.ts'
import { bestByClub } from './plan-options.ts'
import { reportPlan } from './report-plan.ts'
import { type ScoreChances, scoreChances } from './score-distribution.ts'
import {
  AIM_COSTS_DEGREES,
  COMPARE_QUADRATURE,
  LINE_STEP_DEGREES,
  NEARBY_ACTIONS,
  NEARBY_LINES_DEGREES,
  NEARBY_STROKES,
  QUICK,
  SOLVE_QUADRATURE,
  STROKE_LINE_STEP_DEGREES,
  STROKE_QUADRATURE,
} from './settings.ts'
import { linesAbout, settleReached } from './settle-reached.ts'
import { type Shot, shotsOf } from './shots.ts'
import { situationOf } from './situation.ts'
import { isTriedAlong, strokeTries } from './stroke-tries.ts'

/**
 * The plan of a stroke on a hole of which nearly the same was planned before: another pin, a hazard moved, other wind,
 * another number of the player's, the ball somewhere else. Only places that balls come to are settled, over the actions
 * that the start kept; from the markers each shot is tried about its last best line, from elsewhere on every line. `null`
 * when the start is of another hole, tee or player or the ball lies near the green; then a plan is worked out anew.
 */
export function planNearby(
  question: PlanQuestion,
  start: NearbyStart,
  layGround: LayGround = holeGround,
): WorkedPlan | null {
  const { hole, player, day } = question
  if (hole.green === null || question.objective) return null
  if (frameOf(hole) !== frameOf(start.hole) || player.name !== start.player.name) return null
  const shots = shotsOf(player)
  const ground = layGround(hole, start.frame.resolution)
  const situation = situationOf(question, ground.places)
  const isElsewhere = question.from !== undefined
  if (isElsewhere && isNearGreen(situation, hole)) return null
  const model = holeModel(ground, player, day, undefined, nearGreenOf(question, start))
  const { kept, from } = carriedOver(start, model, shots)
  const tries = isElsewhere
    ? { close: strokeTries(model, shots, situation, QUICK.strokeLineStepDegrees), wide: [] }
    : triesOf(model, situation, start, shots)
  if (tries.close.length === 0) return null
  const problem = holeProblem(model, { kept, tried: NEARBY_ACTIONS, shots })
  const before = problem.startValues()
  for (const state of ground.states.order) {
    const known = start.coarseValues[from[state] as number] as number
    if (Number.isFinite(known)) before[state] = known
  }
  const { close, wide } = tries
  const quadrature = isElsewhere ? COMPARE_QUADRATURE : STROKE_QUADRATURE
  const tried = triedStrokes(model, { situation, quadrature, tries: close })
  const solution = settleReached(model, problem, isElsewhere ? tried : playedOn(start, tried), before)
  const { states, sweeps, residual, tolerance, converged } = solution
  const values = Float64Array.from(solution.values)
  for (const state of ground.states.order) {
    const was = start.values[from[state] as number] as number
    // Few strikes are too hopeful before and after alike: only what has changed by them is added.
    if (Number.isFinite(was)) values[state] = was + (values[state] as number) - (before[state] as number)
  }
  const evaluation = weighTried(model, values, situation, [
    ...tried,
    ...triedStrokes(model, { situation, quadrature: COMPARE_QUADRATURE, tries: wide }),
  ])
  const chances = scoreChances(model, problem, values, {
    states,
    before: chancesCarried(model, start, from),
  })
  const best = bestByClub(evaluation)
  const plan = reportPlan({
    question,
    model,
    situation,
    evaluation,
    best,
    values,
    chances,
    after: problem,
    doubt: null,
    format: null,
    flipsOf: () => [],
    method: {
      cell_m: ground.places.coarse.resolution,
      states: states.length,
      quadrature: SOLVE_QUADRATURE.good + SOLVE_QUADRATURE.mishit,
      refined_quadrature: null,
      sweeps,
      residual,
      tolerance,
      converged,
      draws: 0,
      milliseconds: 0,
    },
  })
  return { plan, start: isElsewhere ? start : { ...start, lines: linesOf(best) } }
}

/** Each shot of the start about its line: close lines, and wide ones for the price of aiming elsewhere. */
function triesOf(
  model: HoleModel,
  situation: Situation,
  start: NearbyStart,
  shots: readonly Shot[],
): Record<'close' | 'wide', StrokeQuestion['tries']> {
  const headings = new Map(start.lines.map(({ shot, heading }) => [shot, heading]))
  const triedOn = (linesOf: (heading: number) => readonly number[]): StrokeQuestion['tries'] =>
    shots.flatMap((shot) => {
      const last = headings.get(shotName(shot))
      if (last === undefined) return []
      const lines = linesOf(last).filter((line) => isTriedAlong(model, situation, shot, line))
      return lines.length === 0 ? [] : [{ shot, headings: lines }]
    })
  const close = (heading: number): number[] =>
    linesAbout(heading, NEARBY_LINES_DEGREES, STROKE_LINE_STEP_DEGREES)
  const wide = (heading: number): number[] => linesAbout(heading, AIM_COSTS_DEGREES, LINE_STEP_DEGREES)
  return {
    close: triedOn(close),
    wide: triedOn((heading) => wide(heading).filter((line) => line !== heading)),
  }
}

/** The strokes that may be the plan, by what their shots cost before. */
function playedOn({ lines }: NearbyStart, tried: readonly TriedStroke[]): readonly TriedStroke[] {
  const costs = new Map(lines.map(({ shot, cost }) => [shot, cost]))
  return tried.filter(({ shot }) => (costs.get(shotName(shot)) as number) < NEARBY_STROKES)
}

/** What must be the same for places to lie where they lay: all of a hole's line but the pin. */
function frameOf({ ref, bearingDegrees, line }: Hole): string {
  return JSON.stringify([ref, bearingDegrees, line.slice(0, -1)])
}

/** What the green's slopes add, where they add the same as before; a bunker moved beside it is taken to change that little. */
function nearGreenOf(
  { hole, player, day }: PlanQuestion,
  start: NearbyStart,
): NearGreenCorrections | null | undefined {
  const ofGreen = (of: Pick<PlanQuestion, 'hole' | 'player' | 'day'>): string =>
    JSON.stringify([
      of.hole.line,
      of.hole.pin,
      of.hole.green,
      of.hole.greenFallPercent,
      of.hole.greenFallTowardDegrees,
      of.hole.greenHeights,
      of.player.shortGame,
      of.player.putting,
      of.day.greenSpeedFeet,
    ])
  return ofGreen({ hole, player, day }) === ofGreen(start) ? start.nearGreen : undefined
}

/** Chances of the start, by the places of now. */
function chancesCarried({ places }: HoleModel, start: NearbyStart, from: Int32Array): ScoreChances {
  return start.chances.map((old) => {
    const now = new Float64Array(places.count)
    for (let cell = 0; cell < places.coarseCount; cell++) now[cell] = old[from[cell] as number] as number
    return now
  })
}

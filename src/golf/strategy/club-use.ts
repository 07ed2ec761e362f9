import { Failure } from '#faults/failure.ts'
import { evaluateStroke } from './evaluate-stroke.ts'
import { holeModel } from './hole-model.ts'
import { type HoleProblem, holeProblem } from './hole-problem.ts'
import { keptGround } from './kept-ground.ts'
import type { PlanQuestion } from './plan-hole.ts'
import { bestByClub } from './plan-options.ts'
import { COMPARE_QUADRATURE, QUICK, TOO_CLOSE_STROKES } from './settings.ts'
import { situationOf } from './situation.ts'
import { solveHole } from './solve-hole.ts'
import { strokeTries } from './stroke-tries.ts'
import { type WalkedStroke, walkOfPlan } from './walk-of-plan.ts'

/** What one club is for on one hole; strokes of the full game each time the hole is played. */
export interface ClubUse {
  readonly club: string
  /** With this club by the plan, whole swings, partial and low ones together. */
  readonly strokes: number
  /** Where it costs less than {@link TOO_CLOSE_STROKES} more than the plan, the plan's own included. */
  readonly near: number
  /** Off the tee by the plan. */
  readonly tee: number
  /**
   * Without the club the hole costs at most so much more, strokes: the sum of what the next best club costs more wherever
   * balls come to when it is played instead.
   */
  readonly worth: number
}

/** What every club of a bag is for on one hole, in the order of the bag. */
export interface HoleUse {
  readonly ref: string
  readonly clubs: readonly ClubUse[]
}

const layGround = keptGround()

/** The plan of one club alone from everywhere: what the best stroke with it costs, followed by the best plan. */
interface OneClub {
  readonly club: string
  readonly costs: Float64Array
  readonly strokeFrom: HoleProblem['rowsFrom']
  /** The same off the tee: infinite when it is not played there. */
  readonly teeCost: number
  readonly tee: WalkedStroke | null
}

/**
 * How often the plan of a hole asks for each club, from the tee to the short game, and what the hole costs without it. The
 * hole is solved by quick settings; then each club is weighed alone from every place against those values, and the balls are
 * followed by the cheapest. Throws a Failure when the survey has no green.
 */
export function clubUse({
  hole,
  player,
  day,
  cellMetres = QUICK.cellMetres,
}: Pick<PlanQuestion, 'hole' | 'player' | 'day' | 'cellMetres'>): HoleUse {
  if (hole.green === null)
    throw new Failure(
      'MAR-PLAN-001',
      `Hole ${hole.ref} cannot be planned: the survey has no green for it. Draw or type the green first.`,
      `hole ${hole.ref}`,
    )
  const { quadrature, aboutPinDegrees, strokeLineStepDegrees } = QUICK
  const model = holeModel(layGround(hole, cellMetres), player, day)
  const { problem, values } = solveHole(model, quadrature, aboutPinDegrees)
  const situation = situationOf({}, model.places)
  const evaluation = evaluateStroke(model, values, {
    situation,
    quadrature: COMPARE_QUADRATURE,
    tries: strokeTries(model, problem.shots, situation, strokeLineStepDegrees),
  })
  const off = new Map(bestByClub(evaluation).map((candidate) => [candidate.shot.club, candidate]))
  const alone = player.clubs.map(({ name }): OneClub => {
    const shots = problem.shots.filter(({ club }) => club === name)
    const one = holeProblem(model, { shots, quadrature, aboutPinDegrees })
    const costs = Float64Array.from(values)
    one.improve(costs)
    const candidate = off.get(name)
    return {
      club: name,
      costs,
      strokeFrom: one.rowsFrom,
      teeCost: candidate?.strokes ?? Number.POSITIVE_INFINITY,
      tee: candidate?.ends ?? null,
    }
  })
  const plan = walked(alone, null)
  return {
    ref: hole.ref,
    clubs: alone.map(({ club }) => ({
      club,
      strokes: plan.strokes.get(club) ?? 0,
      near: plan.near.get(club) ?? 0,
      tee: plan.first === club ? plan.tries : 0,
      worth: (plan.near.get(club) ?? 0) === 0 ? 0 : walked(alone, club).dearer,
    })),
  }

  /** Plays the hole by the cheapest club everywhere, one left out, and counts. */
  function walked(
    clubs: readonly OneClub[],
    without: string | null,
  ): {
    readonly strokes: Map<string, number>
    readonly near: Map<string, number>
    readonly first: string | null
    readonly tries: number
    readonly dearer: number
  } {
    const bag = clubs.filter(({ club }) => club !== without)
    const strokes = new Map<string, number>()
    const near = new Map<string, number>()
    const count = (counts: Map<string, number>, club: string, more: number): void =>
      void counts.set(club, (counts.get(club) ?? 0) + more)
    const cheapest = (costOf: (one: OneClub) => number): OneClub | null =>
      bag.reduce<OneClub | null>(
        (best, one) =>
          Number.isFinite(costOf(one)) && costOf(one) < (best ? costOf(best) : Infinity) ? one : best,
        null,
      )
    const tee = cheapest(({ teeCost }) => teeCost)
    if (tee?.tee == null) return { strokes, near, first: null, tries: 0, dearer: 0 }
    let dearer = 0
    const tries = walkOfPlan(
      model,
      values,
      tee.tee,
      evaluation.value,
      (state) => cheapest(({ costs }) => costs[state] as number)?.strokeFrom(state)[0] ?? null,
      (state, arrivals, played) => {
        const best = cheapest(({ costs }) => costs[state] as number) as OneClub
        const cost = best.costs[state] as number
        count(strokes, best.club, played)
        // One club weighed alone may come out a rounding under the value of the solve.
        dearer += arrivals * Math.max(0, cost - (values[state] as number))
        for (const { club, costs } of bag)
          if ((costs[state] as number) - cost < TOO_CLOSE_STROKES) count(near, club, played)
      },
    )
    count(strokes, tee.club, tries)
    for (const { club, teeCost } of bag)
      if (teeCost - tee.teeCost < TOO_CLOSE_STROKES) count(near, club, tries)
    return {
      strokes,
      near,
      first: tee.club,
      tries,
      dearer: dearer + tries * (tee.teeCost - evaluation.value),
    }
  }
}

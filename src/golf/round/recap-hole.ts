import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { clubWords } from '#golf/player/club-words.ts'
import type { Player } from '#golf/player/player.ts'
import { puttGivenOutcome } from '#golf/player/putt-given-outcome.ts'
import { struckGivenCount } from '#golf/player/putts-given-count.ts'
import { holeGround, holeModel } from '#golf/strategy/hole-model.ts'
import { IN_RED, IN_YELLOW } from '#golf/strategy/outcome.ts'
import { placeAt } from '#golf/strategy/places.ts'
import { isNearGreen } from '#golf/strategy/plan-near-green.ts'
import { reliefPlaces } from '#golf/strategy/relief-places.ts'
import { requireGreen } from '#golf/strategy/require-green.ts'
import {
  COMPARE_QUADRATURE,
  QUICK,
  STROKE_LINE_STEP_DEGREES,
  STROKE_QUADRATURE,
} from '#golf/strategy/settings.ts'
import { solveHole } from '#golf/strategy/solve-hole.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { asStruck } from './as-struck.ts'
import { type DropFrom, followHole, type Spot, type Stretch } from './follow-hole.ts'
import { type JudgedChoice, judgeChoice, type RecapHole } from './judge-choice.ts'
import { type GamePart, type HoleRecap, type StrokeSplit, sumOf, totalOf, type Unsplit } from './recap.ts'
import { type RoundHole, type RoundStroke, scoreOf } from './round.ts'

/** What is asked: a hole as it was played, by whom and on what day. */
export interface RecapQuestion {
  readonly hole: Hole
  readonly player: Player
  readonly day: Day
  readonly logged: RoundHole
  /** A rough answer, soon: the settings of a quick plan. */
  readonly isQuick?: boolean
}

/**
 * Splits a hole into decision, execution and luck against the plan of its player and day. Throws a Failure when the survey
 * lacks the green, or the hole was not played out.
 */
export function recapHole({ logged, ...question }: RecapQuestion): HoleRecap {
  requireGreen(question.hole)
  requirePlayed(logged)
  return splitHole(solveForRecap(question), logged)
}

/**
 * The same for a hole that was played several times on days alike: it is solved once. A Failure stands in the place of what
 * was not played out. Throws one when the survey lacks the green.
 */
export function recapHoles({
  logged,
  ...question
}: Omit<RecapQuestion, 'logged'> & { readonly logged: readonly RoundHole[] }): (HoleRecap | Failure)[] {
  requireGreen(question.hole)
  const solved = solveForRecap(question)
  return logged.map((one) => {
    try {
      requirePlayed(one)
      return splitHole(solved, one)
    } catch (error) {
      if (error instanceof Failure) return error
      throw error
    }
  })
}

/** Solves the hole of a question as a recap does. */
export function solveForRecap({ hole, player, day, isQuick }: Omit<RecapQuestion, 'logged'>): RecapHole {
  const model = holeModel(holeGround(hole, isQuick ? QUICK.cellMetres : undefined), player, day)
  const { problem, values } = isQuick
    ? solveHole(model, QUICK.quadrature, QUICK.aboutPinDegrees)
    : solveHole(model)
  return {
    model,
    values,
    shots: problem.shots,
    quadrature: isQuick ? COMPARE_QUADRATURE : STROKE_QUADRATURE,
    lineStepDegrees: isQuick ? QUICK.strokeLineStepDegrees : STROKE_LINE_STEP_DEGREES,
  }
}

/** How a choice is judged: by {@link judgeChoice}, or by what somebody has kept of its answers. */
export type Judge = (solved: RecapHole, from: Spot, stroke: RoundStroke) => JudgedChoice

/** The same for a hole that is solved already. */
export function splitHole(solved: RecapHole, logged: RoundHole, judge: Judge = judgeChoice): HoleRecap {
  const { hole } = solved.model
  const { stretches, faults } = followHole(hole, logged, cheapestDrop(solved))
  const judged = stretches.map((stretch) => ({
    stretch,
    // The first stroke of a stretch is judged; what was chosen between unknown places is not known.
    choice: judge(solved, stretch.from, stretch.strokes[0] as RoundStroke),
  }))
  const strokes = judged.map(({ stretch, choice }, index) =>
    splitStretch(solved, stretch, choice, judged[index + 1]?.choice.before ?? 0),
  )
  const score = scoreOf(logged)
  const value = judged[0]?.choice.before ?? 0
  const split = sumOf(strokes)
  return {
    ref: hole.ref,
    par: hole.par,
    score,
    value,
    ...split,
    addsUp: score - value - totalOf(split),
    strokes,
    faults: [...faults, ...judged.flatMap(({ stretch, choice }) => otherThanPlanned(hole, stretch, choice))],
  }
}

/** A stroke that is said to be the card's and names another club: the club counts, and that is told. */
function otherThanPlanned(hole: Hole, { from, strokes }: Stretch, { plan, chosen }: JudgedChoice): Fault[] {
  const [stroke] = strokes
  // On the green no club is judged.
  if (!stroke?.isAsPlanned || from.lie === 'green') return []
  if (stroke.club === null || plan === null || stroke.club === plan) return []
  const counts = chosen === null ? 'is not in the bag there' : 'counts, on its best line'
  return [
    {
      severity: 'warning',
      code: 'MAR-ROUND-012',
      message: `The ${clubWords(stroke.club)} is logged as the card's club; the plan from there is the ${clubWords(plan)}. The ${clubWords(stroke.club)} ${counts}.`,
      place: `hole ${hole.ref}, ${stroke.place}`,
      advice: 'Take out the = where another club was played than the card says.',
    },
  ]
}

function requirePlayed({ ref, strokes, putts, isPickedUp }: RoundHole): void {
  const why = isPickedUp
    ? 'the ball was picked up, so there is no score to split'
    : strokes.length === 0
      ? `only ${putts === 0 ? 'its name' : 'its putts'} was logged`
      : null
  if (why !== null) throw new Failure('MAR-ROUND-011', `Hole ${ref} is left out: ${why}.`, `hole ${ref}`)
}

function splitStretch(solved: RecapHole, stretch: Stretch, choice: JudgedChoice, after: number): StrokeSplit {
  const { from, to, strokes, used, penalty } = stretch
  const { before, chosen } = choice
  const isOne = strokes.length === 1
  const struck =
    chosen === null ? null : isOne ? struckAs(solved, stretch, choice) : countedPutts(solved, stretch)
  const decision = chosen === null ? 0 : chosen - before
  const rest = used + after - before - decision
  // What nobody can tell apart stays in execution.
  const execution = struck?.over ?? rest
  const unsplit = new Set<Unsplit>(choice.unsplit)
  if (!isOne) unsplit.add('places')
  if (struck === null) unsplit.add('luck')
  return {
    number: stretch.first,
    count: strokes.length,
    used,
    penalty,
    part: partOf(solved, stretch),
    club: strokes[0]?.club ?? null,
    from,
    pinMetres: distance(from.point, solved.model.hole.pin),
    to,
    before,
    chosen,
    after,
    choice: choice.choice,
    decision,
    execution,
    executionVariance: struck?.variance ?? null,
    luck: rest - execution,
    plan: choice.plan,
    unsplit: [...unsplit],
  }
}

/** How much worse than expected strokes were struck, and how much that varies for a player of this profile; `null` = not known. */
interface Struck {
  readonly over: number
  readonly variance: number | null
}

/** The same of putts of which only the number is known; `null` where that is not what they are. */
function countedPutts({ model }: RecapHole, { from, to, strokes, penalty }: Stretch): Struck | null {
  if (from.lie !== 'green' || to !== null || penalty > 0) return null
  const far = distance(from.point, model.hole.pin)
  const over = struckGivenCount(model.player.putting, far, strokes.length)
  return over === null ? null : { over, variance: null }
}

/** How much worse than what was chosen a stroke struck so is on average; `null` where it is not known how it was struck. */
function struckAs(
  { model, values }: RecapHole,
  { from, to, penalty }: Stretch,
  { before, chosen, candidate }: JudgedChoice,
): Struck | null {
  const { pin } = model.hole
  if (from.lie === 'green') {
    if (penalty > 0) return null
    const left = to && distance(to.point, pin)
    const { expected, asStruck: given } = puttGivenOutcome(
      model.player.putting,
      distance(from.point, pin),
      left,
    )
    return given === null ? null : { over: given - expected, variance: null }
  }
  if (candidate === null || chosen === null) return null
  const end = { rest: to?.point ?? pin, hasPenalty: penalty > 0 }
  const given = asStruck(model, values, before, from.point, candidate, end)
  return given === null ? null : { over: given.strokes - chosen, variance: given.variance }
}

function partOf({ model: { hole } }: RecapHole, { from }: Stretch): GamePart {
  const { point, lie } = from
  if (lie === 'green') return 'putting'
  if (isNearGreen({ x: point[0], y: point[1], lie }, hole)) return 'around'
  return lie === 'tee' && hole.par > 3 ? 'tee' : 'approach'
}

/** The cheapest drop for a ball logged in a penalty area, as the plan takes it. */
export function cheapestDrop({ model, values }: RecapHole): DropFrom {
  const { places, hole } = model
  return (point, ground) => {
    const kind = ground === 'penalty-red' ? IN_RED : IN_YELLOW
    const drops = reliefPlaces(places, hole.pin, kind, placeAt(places, point[0], point[1]), hole.localRules)
      .flatMap((relief) => [...relief.places])
      .sort((a, b) => (values[a] as number) - (values[b] as number))
    const drop = drops[0]
    return drop === undefined ? null : ([places.x[drop] as number, places.y[drop] as number] satisfies Point)
  }
}

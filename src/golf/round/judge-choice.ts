import {
  type Candidate,
  evaluateStroke,
  type Situation,
  type StrokeQuestion,
} from '#golf/strategy/evaluate-stroke.ts'
import { calmHeading } from '#golf/strategy/finishes.ts'
import type { HoleModel } from '#golf/strategy/hole-model.ts'
import { nearGreenValue } from '#golf/strategy/near-green-value.ts'
import { isNearGreen } from '#golf/strategy/plan-near-green.ts'
import { aimOf } from '#golf/strategy/plan-options.ts'
import { shortClubCosts } from '#golf/strategy/short-club-costs.ts'
import type { Shot } from '#golf/strategy/shots.ts'
import { strokeTries } from '#golf/strategy/stroke-tries.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import type { Spot } from './follow-hole.ts'
import type { ChoiceCost, Unsplit } from './recap.ts'
import type { RoundStroke } from './round.ts'

/** A hole solved for its player and day, and how finely one stroke of it is weighed. */
export interface RecapHole {
  readonly model: HoleModel
  readonly shots: readonly Shot[]
  readonly values: Float64Array
  readonly quadrature: StrokeQuestion['quadrature']
  readonly lineStepDegrees: number
}

/** What a stroke was worth before it and with what was chosen. */
export interface JudgedChoice {
  readonly before: number
  /** `null` when it is not known what was chosen. */
  readonly chosen: number | null
  readonly plan: string | null
  readonly choice: ChoiceCost | null
  /** The club and line that were played, where the pattern of a whole shot is known. */
  readonly candidate: Candidate | null
  readonly unsplit: readonly Unsplit[]
}

/** Judges the choice of a stroke by the plan's values. The line that was played is among those tried, so no choice is better than the plan. */
export function judgeChoice(solved: RecapHole, from: Spot, stroke: RoundStroke): JudgedChoice {
  const situation: Situation = { x: from.point[0], y: from.point[1], lie: from.lie }
  return isNearGreen(situation, solved.model.hole)
    ? judgeShort(solved, situation, from, stroke)
    : judgeFull(solved, situation, stroke)
}

function judgeShort(
  { model, values }: RecapHole,
  situation: Situation,
  { point, ground, lie }: Spot,
  { club, isAsPlanned }: RoundStroke,
): JudgedChoice {
  const before = nearGreenValue(model, values, point, ground, lie)
  const known = { before, candidate: null }
  // From the green there is nothing but the putter to choose; line and pace of a putt are in no log.
  if (lie === 'green') return { ...known, chosen: before, choice: AS_PLANNED, plan: 'putter', unsplit: [] }
  const costs = shortClubCosts(model, situation)
  const plan = costs[0]?.club ?? null
  if (isAsPlanned && (club === null || club === plan))
    return { ...known, chosen: before, choice: AS_PLANNED, plan, unsplit: ['luck'] }
  const cost = costs.find((one) => one.club === club)?.cost
  if (cost === undefined) return { ...known, chosen: null, choice: null, plan, unsplit: ['club', 'luck'] }
  const choice = { ...AS_PLANNED, club: cost }
  return { ...known, chosen: before + cost, choice, plan, unsplit: ['line', 'luck'] }
}

function judgeFull(solved: RecapHole, situation: Situation, stroke: RoundStroke): JudgedChoice {
  const { model, shots, values, quadrature, lineStepDegrees } = solved
  const { club, aimOffsetMetres, isAsPlanned } = stroke
  const tries = strokeTries(model, shots, situation, lineStepDegrees)
  const aimed = aimOffsetMetres === null ? [] : aimedTries(model, situation, tries, club, aimOffsetMetres)
  const { value, candidates } = evaluateStroke(model, values, {
    situation,
    quadrature,
    tries: [...tries, ...aimed],
  })
  const best = cheapest(candidates)
  const known = { before: value, plan: best?.shot.club ?? null }
  if (best !== null && isAsPlanned && (club === null || club === best.shot.club))
    return { ...known, chosen: value, choice: AS_PLANNED, candidate: best, unsplit: [] }
  const lines = new Set(aimed.flatMap(({ headings }) => headings))
  const ofClub = candidates.filter(({ shot }) => shot.club === club)
  const played = cheapest(ofClub.filter(({ heading }) => aimOffsetMetres === null || lines.has(heading)))
  const bestLine = cheapest(ofClub)
  if (best === null || played === null || bestLine === null)
    return { ...known, chosen: null, choice: null, candidate: null, unsplit: ['club', 'luck'] }
  const chosen = Math.max(value, played.strokes)
  const clubCost = Math.min(chosen - value, Math.max(0, bestLine.strokes - value))
  const offFlag = (one: Candidate): number => angleOffFlag(situation, model.hole.pin, one)
  return {
    ...known,
    chosen,
    choice: {
      club: clubCost,
      line: chosen - value - clubCost,
      longer: best.shot.club === club ? null : played.shot.stock.totalMetres > best.shot.stock.totalMetres,
      towardFlag: played === bestLine ? null : offFlag(played) < offFlag(bestLine),
    },
    candidate: played,
    unsplit: aimOffsetMetres === null ? ['line'] : [],
  }
}

/** The plan's own choice. */
const AS_PLANNED: ChoiceCost = { club: 0, line: 0, longer: null, towardFlag: null }

/** Angle between where a candidate's pattern is aimed and the flag, radians. */
function angleOffFlag(situation: Situation, [pinX, pinY]: Point, candidate: Candidate): number {
  const aimed = degreesToRadians(aimOf(situation, candidate).heading_deg)
  const flag = Math.atan2(pinX - situation.x, pinY - situation.y)
  return Math.acos(Math.max(-1, Math.min(1, Math.cos(aimed - flag))))
}

function cheapest(candidates: readonly Candidate[]): Candidate | null {
  return candidates.reduce<Candidate | null>(
    (best, one) => (best !== null && best.strokes <= one.strokes ? best : one),
    null,
  )
}

/** The shots of a club on the line whose centre passes a point beside the hole line's first leg, as a plan gives its aim. */
function aimedTries(
  model: HoleModel,
  { x, y }: Situation,
  tries: StrokeQuestion['tries'],
  club: string | null,
  offsetMetres: number,
): StrokeQuestion['tries'] {
  const { pin } = model.hole
  return tries
    .filter(({ shot }) => shot.club === club)
    .map(({ shot }) => {
      const across = Math.asin(Math.max(-1, Math.min(1, (offsetMetres - x) / shot.stock.totalMetres)))
      // Two lines pass the point, one up the hole and one back: the one that the pin is on.
      const centre = pin[1] >= y ? across : Math.PI - across
      return { shot, headings: [calmHeading(model, shot, centre)] }
    })
}

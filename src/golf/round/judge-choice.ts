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
import { shortClubCosts } from '#golf/strategy/short-club-costs.ts'
import type { Shot } from '#golf/strategy/shots.ts'
import { strokeTries } from '#golf/strategy/stroke-tries.ts'
import type { Spot } from './follow-hole.ts'
import type { Unsplit } from './recap.ts'
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
  if (lie === 'green') return { ...known, chosen: before, plan: 'putter', unsplit: [] }
  const costs = shortClubCosts(model, situation)
  const plan = costs[0]?.club ?? null
  if (isAsPlanned && (club === null || club === plan))
    return { ...known, chosen: before, plan, unsplit: ['luck'] }
  const cost = costs.find((one) => one.club === club)?.cost
  if (cost === undefined) return { ...known, chosen: null, plan, unsplit: ['club', 'luck'] }
  return { ...known, chosen: before + cost, plan, unsplit: ['line', 'luck'] }
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
    return { ...known, chosen: value, candidate: best, unsplit: [] }
  const lines = new Set(aimed.flatMap(({ headings }) => headings))
  const played = cheapest(
    candidates.filter(
      ({ shot, heading }) => shot.club === club && (aimOffsetMetres === null || lines.has(heading)),
    ),
  )
  if (played === null) return { ...known, chosen: null, candidate: null, unsplit: ['club', 'luck'] }
  return {
    ...known,
    chosen: Math.max(value, played.strokes),
    candidate: played,
    unsplit: aimOffsetMetres === null ? ['line'] : [],
  }
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
